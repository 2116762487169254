package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;

/** A body while it is put together. */
final class Draft {
  private final String key;
  private final String id;
  private final BodyKind kind;
  private final String title;
  private final BoxMm box;
  private final KnownMass mass;
  private int unit;
  private long toleranceG;
  private String toleranceKey;
  private Optional<String> spaceId = Optional.empty();
  private Optional<Zone> zone = Optional.empty();
  private boolean inOverhang = true;
  private List<String> movesWith = List.of();
  private List<String> inModules = List.of();

  /** Something that is a body of its own under its own id. */
  static Draft of(String key, BodyKind kind, String title, BoxMm box, KnownMass mass) {
    return new Draft(key, key, kind, title, box, mass);
  }

  Draft(String key, String id, BodyKind kind, String title, BoxMm box, KnownMass mass) {
    this.key = key;
    this.id = id;
    this.kind = kind;
    this.title = title;
    this.box = box;
    this.mass = mass;
    this.toleranceG = mass.toleranceG();
    this.toleranceKey = key;
  }

  /** Tolerance of its own mass, grams. */
  long ownToleranceG() {
    return mass.toleranceG();
  }

  Draft weighedWithUte() {
    toleranceG = 0L;
    return this;
  }

  Draft unit(int value) {
    unit = value;
    return this;
  }

  Draft toleranceKey(String value) {
    toleranceKey = value;
    return this;
  }

  Draft spaceId(String value) {
    spaceId = Optional.of(value);
    return this;
  }

  Draft zone(Optional<Zone> value) {
    zone = value;
    return this;
  }

  Draft inOverhang(boolean value) {
    inOverhang = value;
    return this;
  }

  Draft movesWith(List<String> value) {
    movesWith = value;
    return this;
  }

  Draft inModules(List<String> value) {
    inModules = value;
    return this;
  }

  Body body() {
    return new Body(
        key,
        id,
        unit,
        kind,
        title,
        spaceId,
        box,
        mass.massG(),
        toleranceG,
        toleranceKey,
        zone,
        inOverhang,
        movesWith,
        inModules);
  }
}
