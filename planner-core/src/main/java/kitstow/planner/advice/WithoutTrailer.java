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

  static Scenario of(Scenario s) {
    List<Leg> legs = new ArrayList<>();
    for (Leg leg : s.trip().legs()) {
      legs.add(
          new Leg(
              leg.id(),
              leg.title(),
              leg.distanceKm(),
              leg.days(),
              leg.surface(),
              Optional.empty(),
              leg.wet(),
              leg.resupply(),
              leg.emptyRubbish()));
    }
    Trip trip = new Trip(s.trip().people(), legs, s.trip().consumption(), s.trip().orders());
    return new Scenario(
        s.id(),
        s.title(),
        s.note(),
        s.settings(),
        s.ute(),
        s.tray(),
        s.canopy(),
        s.accessories(),
        s.uteBays(),
        s.trayBays(),
        s.canopyBays(),
        s.uteSpaces(),
        s.traySpaces(),
        s.canopySpaces(),
        s.modules(),
        s.items(),
        List.of(),
        trip);
  }
}
