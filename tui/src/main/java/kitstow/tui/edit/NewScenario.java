package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Leg;
import kitstow.planner.model.PartState;
import kitstow.planner.model.Person;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Trip;
import kitstow.planner.model.Ute;

/**
 * A scenario to begin with: a ute with tray and canopy, one driver, one leg, no fit-out, no gear.
 *
 * @param id its id
 * @param title its title
 * @param ute the ute
 * @param tray the tray in its place
 * @param canopy the canopy in its place
 */
record NewScenario(String id, String title, Ute ute, Optional<Tray> tray, Optional<Canopy> canopy) {
  private static final String NOTE =
      "Made on the screen from the catalogue, whose figures are typical only: weigh and measure.";

  /** A catalogue's name for what a tray takes the place of. */
  private static final String TUB = "tub";

  /** Invented figures to begin with; the page of the trip changes them. */
  private static final Consumption USE =
      new Consumption(
          /* fuelMlPer100Km= */ 11_000L,
          /* offRoadFuelPermille= */ 1_400,
          /* towingFuelPermille= */ 1_300,
          /* waterMlPerPersonDay= */ 6_000L,
          /* foodGPerPersonDay= */ 1_500L,
          /* gasGPerDay= */ 0L);

  Design made(KnownMass driver, double distanceKm) {
    Person person =
        new Person("driver-1", "Driver", driver, ute.seats().get(0).id(), Optional.empty());
    Leg leg =
        new Leg(
            "leg",
            "The trip",
            distanceKm,
            /* days= */ 1.0,
            Surface.ROAD,
            Optional.empty(),
            /* wet= */ false,
            List.of(),
            /* emptyRubbish= */ false);
    Scenario scenario =
        new Scenario(
            id,
            title,
            NOTE,
            Settings.DEFAULTS,
            under(tray, ute),
            tray,
            canopy,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            new Trip(List.of(person), List.of(leg), USE, fuel()));
    return Design.unpacked(scenario);
  }

  /** A ute without its tub where a tray stands in its place. */
  static Ute under(Optional<Tray> tray, Ute ute) {
    List<RemovablePart> parts = new ArrayList<>();
    for (RemovablePart part : ute.parts()) {
      boolean off = tray.isPresent() && part.id().equals(TUB);
      parts.add(off ? PartEditor.with(part, PartState.OFF) : part);
    }
    return ute.withParts(parts);
  }

  private List<SupplyOrder> fuel() {
    List<List<String>> groups = new ArrayList<>();
    for (Tank tank : ute.fuelTanks()) {
      groups.add(List.of(tank.id()));
    }
    return groups.isEmpty()
        ? List.of()
        : List.of(new SupplyOrder(SupplyKind.FUEL, groups, SupplyOrder.Decant.EARLY));
  }

  static Tray at(Tray t, int frontXMm, int deckZMm) {
    return new Tray(
        t.id(),
        t.title(),
        t.source(),
        t.size(),
        t.mass(),
        t.rating(),
        t.headboardHeightMm(),
        t.bays(),
        t.spaces(),
        frontXMm,
        deckZMm);
  }

  static Canopy at(Canopy c, int fromTrayFrontMm) {
    return new Canopy(
        c.id(),
        c.title(),
        c.source(),
        c.size(),
        c.mass(),
        c.inside(),
        c.doors(),
        c.roof(),
        c.liftOffLegs(),
        c.bays(),
        c.spaces(),
        fromTrayFrontMm);
  }
}
