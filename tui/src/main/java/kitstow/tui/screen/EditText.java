package kitstow.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Bay;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Leg;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.PartState;
import kitstow.planner.model.Person;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Seat;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Tray;
import kitstow.tui.app.EditRow;
import kitstow.tui.app.EditRows;
import kitstow.tui.edit.AccessoryEditor;
import kitstow.tui.edit.Bays;
import kitstow.tui.edit.Design;
import kitstow.tui.edit.Measures;

/** What a row of a page of things to edit says: a name and what is known of it. */
record EditText(String name, String facts) {
  /** The text of a row. */
  static EditText of(Design design, EditRow row) {
    if (row.adds()) {
      return new EditText("+ " + row.part().more(), "");
    }
    Scenario scenario = design.scenario();
    return switch (row.part()) {
      case NAME -> new EditText(scenario.title(), scenario.note());
      case PERSON ->
          EditRows.person(scenario, row.id()).map(one -> of(one, scenario)).orElseThrow();
      case LEG -> EditRows.leg(scenario, row.id()).map(one -> of(one, scenario)).orElseThrow();
      case TRAILER ->
          EditRows.trailer(scenario, row.id()).map(one -> of(one, scenario)).orElseThrow();
      case USE -> used(scenario.trip().consumption());
      case VEHICLE -> vehicle(scenario);
      case WEIGHING -> weighed(scenario.ute().empty());
      case PART ->
          EditRows.part(scenario, row.id())
              .map(one -> new EditText(one.title(), kg(one.mass()) + ", " + state(one)))
              .orElseThrow();
      case TANK -> EditRows.tank(scenario, row.id()).map(EditText::of).orElseThrow();
      case MODULE -> EditRows.module(scenario, row.id()).map(one -> of(one, design)).orElseThrow();
      case ACCESSORY ->
          EditRows.accessory(scenario, row.id()).map(one -> of(one, scenario)).orElseThrow();
    };
  }

  private static String kg(KnownMass mass) {
    return Measures.thousandths(mass.massG())
        + " kg ±"
        + Measures.thousandths(mass.toleranceG())
        + ", "
        + FactsView.word(mass.source());
  }

  private static EditText of(Person person, Scenario scenario) {
    String seat =
        scenario.ute().seats().stream()
            .filter(one -> one.id().equals(person.seatId()))
            .findFirst()
            .map(Seat::title)
            .orElse(person.seatId());
    return new EditText(
        person.title(),
        kg(person.mass())
            + "; "
            + seat
            + person.sleepsOn().map(roof -> "; sleeps on the " + FactsView.word(roof)).orElse(""));
  }

  private static EditText of(Leg leg, Scenario scenario) {
    List<String> facts = new ArrayList<>();
    facts.add(Measures.thousandths(Math.round(leg.distanceKm() * 1000.0)) + " km");
    String days = Measures.thousandths(Math.round(leg.days() * 1000.0));
    facts.add(days + (days.equals("1") ? " day" : " days"));
    facts.add(leg.surface() == Surface.ROAD ? "road" : "OFF ROAD");
    leg.trailerId()
        .flatMap(id -> EditRows.trailer(scenario, id))
        .ifPresent(trailer -> facts.add("with " + trailer.title()));
    for (Leg.Resupply one : leg.resupply()) {
      facts.add(
          "fill up "
              + FactsView.word(one.kind())
              + (one.addG().isPresent()
                  ? " by " + Measures.thousandths(one.addG().getAsLong()) + " kg"
                  : ""));
    }
    if (leg.wet()) {
      facts.add("wet");
    }
    if (leg.emptyRubbish()) {
      facts.add("rubbish left");
    }
    return new EditText(leg.title(), String.join(", ", facts));
  }

  private static EditText of(Trailer trailer, Scenario scenario) {
    List<Leg> legs = scenario.trip().legs();
    long on =
        legs.stream()
            .filter(leg -> leg.trailerId().filter(trailer.id()::equals).isPresent())
            .count();
    return new EditText(
        trailer.title(),
        kg(trailer.total())
            + "; "
            + Measures.thousandths(trailer.ball().massG())
            + " kg on the ball; "
            + (trailer.braked() ? "braked" : "no brakes")
            + "; on "
            + on
            + " of "
            + legs.size()
            + " legs");
  }

  private static EditText used(Consumption used) {
    return new EditText(
        Measures.thousandths(used.fuelMlPer100Km()) + " L of fuel for 100 km",
        "x "
            + Measures.thousandths(used.offRoadFuelPermille())
            + " off road, x "
            + Measures.thousandths(used.towingFuelPermille())
            + " towing; each day: water "
            + Measures.thousandths(used.waterMlPerPersonDay())
            + " L and food "
            + Measures.thousandths(used.foodGPerPersonDay())
            + " kg a head, gas "
            + Measures.thousandths(used.gasGPerDay())
            + " kg");
  }

  private static EditText vehicle(Scenario scenario) {
    return new EditText(
        scenario.ute().title(),
        scenario.tray().map(Tray::title).orElse("no tray")
            + "; "
            + scenario.canopy().map(Canopy::title).orElse("no canopy"));
  }

  private static EditText weighed(EmptyAxleLoads empty) {
    return new EditText(
        "Front "
            + Measures.thousandths(empty.front().massG())
            + ", rear "
            + Measures.thousandths(empty.rear().massG())
            + " kg",
        FactsView.word(empty.front().source()) + ", " + empty.date() + ": " + empty.source());
  }

  private static EditText of(Accessory accessory, Scenario scenario) {
    return new EditText(
        accessory.title(),
        kg(accessory.mass())
            + "; middle "
            + AccessoryEditor.place(scenario, accessory)
            + accessory.roof().map(roof -> "; on the " + FactsView.word(roof)).orElse(""));
  }

  private static String state(RemovablePart part) {
    return part.state() == PartState.ON
        ? "on"
        : FactsView.word(part.state()).toUpperCase(Locale.ROOT);
  }

  private static EditText of(Tank tank) {
    return new EditText(
        tank.title(),
        Measures.thousandths(tank.startMl())
            + " of "
            + Measures.thousandths(tank.capacityMl())
            + " L of "
            + FactsView.word(tank.kind())
            + " at the start");
  }

  private static EditText of(ModuleChoice choice, Design design) {
    Bays bays = new Bays(design);
    Optional<Bay> bay = bays.of(choice.module());
    int ways = choice.bayIds().size();
    String where =
        bay.map(one -> bays.name(one.id()))
            .orElse("LEFT OUT, may stand in " + bays.name(choice.bayIds().get(0)));
    return new EditText(
        choice.module().title(),
        where
            + (ways > 1 ? "; a search may use any of " + ways + " bays" : "")
            + "; "
            + (choice.need() == Need.MUST ? "MUST" : FactsView.word(choice.need())));
  }
}
