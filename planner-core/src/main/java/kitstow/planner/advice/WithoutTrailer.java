package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Trip;

/** The same scenario with nothing on the tow ball. */
final class WithoutTrailer {
  private WithoutTrailer() {}

  static Scenario of(Scenario scenario) {
    List<Leg> legs = new ArrayList<>();
    for (Leg leg : scenario.trip().legs()) {
      legs.add(leg.towing(Optional.empty()));
    }
    Trip trip =
        new Trip(
            scenario.trip().people(),
            legs,
            scenario.trip().consumption(),
            scenario.trip().orders());
    return scenario.withTrip(List.of(), trip);
  }
}
