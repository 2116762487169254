package kitstow.planner.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Tank;

/** Reads what tanks hold when the trip starts; a tank that is not listed is full. */
final class TankStarts {
  private TankStarts() {}

  /** Millilitres by tank id. */
  static Map<String, Long> read(Fields scenario, Known known, Faults faults) {
    Map<String, Long> startMl = new HashMap<>();
    Names listed = new Names(faults, "tanks listed here");
    for (Fields fields : scenario.objectsIfGiven("tanks")) {
      String id = fields.name("id", "name a tank, e.g. main-tank or water-module/tank");
      long contentMl = fields.number("startL", Measure.LITRES);
      fields.done();
      if (fields.good("id") && known.tanks.check(id, fields.place("id"))) {
        listed.claim(id, fields.place("id"));
      }
      Optional<Tank> tank = Optional.ofNullable(known.tankById.get(id));
      if (tank.isPresent() && fields.good("startL")) {
        EmptyReader.checkContent(tank.get(), contentMl, fields.place("startL"), faults);
      }
      startMl.put(id, contentMl);
    }
    return startMl;
  }

  /** The tanks with what they start with. */
  static List<Tank> apply(List<Tank> tanks, Map<String, Long> startMl) {
    List<Tank> started = new ArrayList<>();
    for (Tank tank : tanks) {
      started.add(
          new Tank(
              tank.id(),
              tank.title(),
              tank.kind(),
              tank.capacityMl(),
              tank.densityGPerL(),
              tank.empty(),
              tank.box(),
              startMl.getOrDefault(tank.id(), tank.startMl())));
    }
    return started;
  }
}
