package kitstow.tui.edit;

import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;

/** Ids that a scenario does not use yet. */
final class Ids {
  /** Before the id of an entry with figures that somebody has typed. */
  static final String OWN = "own-";

  private Ids() {}

  /** The stem itself if it is free, else with the first number that makes it so. */
  static String free(Scenario scenario, String stem) {
    Set<String> taken = taken(scenario);
    String id = stem;
    for (int i = 2; taken.contains(id); i++) {
      id = stem + "-" + i;
    }
    return id;
  }

  private static Set<String> taken(Scenario s) {
    Set<String> taken =
        new TreeSet<>(
            Set.of(
                Loading.UTE_FRONT, Loading.UTE_REAR, Loading.BALL, Rig.UTE, Rig.TRAY, Rig.CANOPY));
    s.items().forEach(item -> taken.add(item.id()));
    s.accessories().forEach(accessory -> taken.add(accessory.id()));
    s.ute().parts().forEach(part -> taken.add(part.id()));
    s.ute()
        .fuelTanks()
        .forEach(
            tank -> {
              taken.add(tank.id());
              taken.add(tank.id() + Loading.LIQUID);
            });
    s.modules()
        .forEach(
            choice -> {
              taken.add(choice.module().id());
              taken.add(choice.module().id() + Loading.MOVING);
            });
    s.trailers().forEach(trailer -> taken.add(trailer.id()));
    s.trip().people().forEach(person -> taken.add(person.id()));
    s.trip().legs().forEach(leg -> taken.add(leg.id()));
    return taken;
  }
}
