package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Body;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Person;
import kitstow.planner.model.RoofLimits;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Zone;
import kitstow.planner.statics.LoadLine;

/**
 * What the two roof ledgers have in common: racks, tents, gear and, when parked, sleepers count.
 */
final class Roofs {
  private Roofs() {}

  static List<LoadLine> lines(
      RuleId rule,
      String subjectId,
      Zone zone,
      Optional<RoofLimits> limits,
      Loading loading,
      LoadState state) {
    LoadLine.Builder line =
        LoadLine.of(rule, subjectId, limitG(limits, loading, state), /* denominator= */ 1L);
    List<Body> bodies = loading.bodies();
    for (int i = 0; i < bodies.size(); i++) {
      if (bodies.get(i).zone().equals(Optional.of(zone))) {
        line.add(i, 1L);
      }
    }
    if (state.kind() == LoadKind.PARKED) {
      addSleepers(line, zone, loading);
    }
    return line.hasTerms() ? List.of(line.build()) : List.of();
  }

  /** Adds the people who sleep on a roof. */
  static void addSleepers(LoadLine.Builder line, Zone zone, Loading loading) {
    for (String key : sleepers(zone, loading)) {
      line.add(loading.indexOf(key), 1L);
    }
  }

  private static List<String> sleepers(Zone zone, Loading loading) {
    List<String> keys = new ArrayList<>();
    for (Person person : loading.scenario().trip().people()) {
      if (person.sleepsOn().equals(Optional.of(zone))) {
        keys.add(person.id());
      }
    }
    return keys;
  }

  private static long limitG(Optional<RoofLimits> limits, Loading loading, LoadState state) {
    if (!limits.isPresent()) {
      return 0L;
    }
    if (state.kind() == LoadKind.PARKED) {
      return limits.get().parkedG();
    }
    return state.surface() == Surface.ROAD
        ? limits.get().movingG()
        : limits.get().movingG() * loading.scenario().settings().offRoadRoofPermille() / 1000L;
  }
}
