package kitstow.planner.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Tank;
import kitstow.planner.problem.Code;

/** Reads empty axle loads and what was aboard when they were taken. */
final class EmptyReader {
  private final Figures figures;
  private final Faults faults;

  EmptyReader(Figures figures, Faults faults) {
    this.figures = figures;
    this.faults = faults;
  }

  /**
   * Reads axle loads of a ute.
   *
   * @param tanks tanks of the ute
   * @param seatIds seats of the ute
   */
  EmptyAxleLoads read(Fields fields, List<Tank> tanks, Names tankIds, Names seatIds) {
    long frontG = fields.number("frontKg", Measure.VEHICLE_LIMIT);
    long rearG = fields.number("rearKg", Measure.VEHICLE_LIMIT);
    MassSource source = Figures.source(fields);
    KnownMass front = figures.known(frontG, source, Figures.tolerance(fields, "frontToleranceKg"));
    KnownMass rear = figures.known(rearG, source, Figures.tolerance(fields, "rearToleranceKg"));
    Map<String, Long> fuelMl =
        fuel(
            fields.object("fuelL", "give litres by tank id, e.g. {\"main-tank\": 80}"),
            tanks,
            tankIds);
    List<EmptyAxleLoads.PersonAboard> people = new ArrayList<>();
    for (Fields person : fields.objects("people", 0, "write [] if nobody sat in it")) {
      String seat = person.name("seat", "name a seat of the ute");
      if (person.good("seat")) {
        seatIds.check(seat, person.place("seat"));
      }
      people.add(
          new EmptyAxleLoads.PersonAboard(seat, person.number("massKg", Measure.PERSON_MASS)));
      person.done();
    }
    Set<String> fitted =
        Set.copyOf(fields.names("fitted", 0, "name what was fitted, or write [] for nothing"));
    String basis = fields.text("source", "name plate, handbook page or weighbridge ticket");
    String date = fields.text("date", "write when it was read or weighed, e.g. 2024-05-01");
    fields.done();
    return new EmptyAxleLoads(front, rear, fuelMl, people, fitted, basis, date);
  }

  private Map<String, Long> fuel(Fields fields, List<Tank> tanks, Names tankIds) {
    Map<String, Long> fuelMl = new LinkedHashMap<>();
    for (Map.Entry<String, Node> member : fields.members().entrySet()) {
      Place place = member.getValue().place();
      long contentMl = Values.number(member.getValue(), Measure.LITRES, faults);
      fuelMl.put(member.getKey(), contentMl);
      tankIds.check(member.getKey(), place);
      for (Tank tank : tanks) {
        if (tank.id().equals(member.getKey())) {
          checkContent(tank, contentMl, place, faults);
        }
      }
    }
    return fuelMl;
  }

  /** Notes more in a tank than it holds. */
  static void checkContent(Tank tank, long contentMl, Place place, Faults faults) {
    if (contentMl > tank.capacityMl() && !faults.anyIn(place)) {
      faults.error(
          Code.ABOVE_CAPACITY,
          place,
          "is "
              + Decimals.text(contentMl, 3)
              + " L, must be within the tank's capacity of "
              + Decimals.text(tank.capacityMl(), 3)
              + " L",
          "give what was really in it");
    }
  }
}
