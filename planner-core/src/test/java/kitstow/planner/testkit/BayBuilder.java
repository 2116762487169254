package kitstow.planner.testkit;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Facing;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Zone;

/**
 * A bay of a host: at first in the canopy, facing right, without doors, and no space when empty.
 */
public final class BayBuilder {
  private final String id;
  private final LocalBoxMm box;
  private Facing facing = Facing.RIGHT;
  private List<String> doorIds = List.of();
  private Optional<Ratings> ratings = Optional.empty();
  private boolean moves;
  private Zone zone = Zone.CANOPY;
  private Set<Environment> environment = EnumSet.noneOf(Environment.class);
  private boolean spaceWhenEmpty;

  private BayBuilder(String id, LocalBoxMm box) {
    this.id = id;
    this.box = box;
  }

  /** Starts a bay with its lowest corner at a point of the host's frame. */
  public static BayBuilder aBay(String id, int aMm, int bMm, int cMm, SizeMm size) {
    return new BayBuilder(id, new LocalBoxMm(aMm, bMm, cMm, size));
  }

  /** The side it opens to and the doors in front of it. */
  public BayBuilder facing(Facing value, String... doors) {
    facing = value;
    doorIds = List.of(doors);
    return this;
  }

  /** What may stand in it. */
  public BayBuilder ratings(Ratings value) {
    ratings = Optional.of(value);
    return this;
  }

  /** Rides on the moving part of its module. */
  public BayBuilder moves() {
    moves = true;
    return this;
  }

  /** Part of the vehicle. */
  public BayBuilder zone(Zone value) {
    zone = value;
    return this;
  }

  /** Air and walls. */
  public BayBuilder environment(Environment... values) {
    environment = Set.of(values);
    return this;
  }

  /** Gear may stand in it when no module does. */
  public BayBuilder spaceWhenEmpty() {
    spaceWhenEmpty = true;
    return this;
  }

  /** The bay. */
  public BaySpec build() {
    return new BaySpec(
        id,
        id,
        box,
        facing,
        doorIds,
        ratings,
        moves,
        zone,
        environment,
        /* ownAir= */ false,
        spaceWhenEmpty);
  }
}
