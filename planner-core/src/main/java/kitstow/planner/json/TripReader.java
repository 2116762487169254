package kitstow.planner.json;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Person;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trip;
import kitstow.planner.model.Zone;
import kitstow.planner.problem.Code;

/** Reads the trip: who travels, what is used, in which order, over which legs. */
final class TripReader {
  private final Figures figures;
  private final Faults faults;
  private final Known known;
  private final VehicleReader vehicle;
  private final TowingCheck towing;
  private final SizeCheck sizes;

  TripReader(
      Figures figures,
      Faults faults,
      Known known,
      VehicleReader vehicle,
      TowingCheck towing,
      SizeCheck sizes) {
    this.figures = figures;
    this.faults = faults;
    this.known = known;
    this.vehicle = vehicle;
    this.towing = towing;
    this.sizes = sizes;
  }

  Trip read(Fields scenario) {
    Fields fields = scenario.object("trip", "describe people, consumption and legs");
    List<Person> people = people(fields);
    Consumption consumption =
        consumption(fields.object("consumption", "say what is used along the way"));
    List<SupplyOrder> orders = new SupplyReader(faults, known).read(fields);
    List<Leg> legs = legs(fields, orders);
    fields.done();
    return new Trip(people, legs, consumption, orders);
  }

  private List<Person> people(Fields trip) {
    List<Person> people = new ArrayList<>();
    Names taken = new Names(faults, "seats taken");
    for (Fields fields : trip.objects("people", /* least= */ 1, "list who travels")) {
      String id = fields.id("id");
      known.keys.claim(id, fields.place("id"));
      String title = fields.text("title", "name it as it shall be shown");
      KnownMass mass = figures.mass(fields, Measure.PERSON_MASS);
      String seat = fields.name("seat", "name a seat of the ute");
      if (fields.good("seat")) {
        known.seats.check(seat, fields.place("seat"));
        checkSeat(seat, fields, taken);
      }
      Optional<Zone> sleepsOn = fields.wordIfGiven("sleepsOn", Words.ROOF);
      vehicle.checkRoof(fields, "sleepsOn", sleepsOn);
      fields.done();
      people.add(new Person(id, title, mass, seat, sleepsOn));
    }
    return people;
  }

  private static void checkSeat(String seat, Fields fields, Names taken) {
    if (taken.has(seat)) {
      fields.error(
          Code.SEAT_TAKEN,
          "seat",
          "is " + Shown.quoted(seat) + ", where another person sits",
          "give each person a seat of their own");
    }
    taken.add(seat);
  }

  private static Consumption consumption(Fields fields) {
    Consumption consumption =
        new Consumption(
            fields.number("fuelLPer100Km", Measure.LITRES),
            fields.whole("offRoadFuelRatio", Measure.FACTOR),
            fields.whole("towingFuelRatio", Measure.FACTOR),
            fields.number("waterLPerPersonDay", Measure.LITRES),
            fields.number("foodKgPerPersonDay", Measure.MASS_OR_ZERO),
            fields.number("gasKgPerDay", Measure.MASS_OR_ZERO));
    fields.done();
    return consumption;
  }

  private List<Leg> legs(Fields trip, List<SupplyOrder> orders) {
    List<Leg> legs = new ArrayList<>();
    Names ids = new Names(faults, "legs of the trip");
    for (Fields fields : trip.objects("legs", /* least= */ 1, "list at least one leg")) {
      String id = fields.id("id");
      ids.claim(id, fields.place("id"));
      String title = fields.text("title", "name it as it shall be shown");
      double distanceKm = fields.number("distanceKm", Measure.KILOMETRES) / 1000.0;
      double days = fields.number("days", Measure.DAYS) / 1000.0;
      Surface surface = fields.word("surface", Words.SURFACE);
      Optional<String> trailer = fields.textIfGiven("trailer");
      boolean wet = fields.flagOr("wet", false);
      List<Leg.Resupply> resupply = resupply(fields, trip, orders);
      boolean emptyRubbish = fields.flagOr("emptyRubbish", false);
      OptionalInt lengthMm = fields.wholeIfGiven("mostLengthMm", Measure.SIZE);
      OptionalInt heightMm = fields.wholeIfGiven("mostHeightMm", Measure.SIZE);
      fields.done();
      if (trailer.isPresent() && fields.good("trailer")) {
        known.trailers.check(trailer.get(), fields.place("trailer"));
        towing.check(trailer.get(), fields);
      }
      sizes.check(trailer, fields);
      legs.add(
          new Leg(
              id,
              title,
              distanceKm,
              days,
              surface,
              trailer,
              wet,
              resupply,
              emptyRubbish,
              new Leg.Room(lengthMm, heightMm)));
    }
    return legs;
  }

  private List<Leg.Resupply> resupply(Fields leg, Fields trip, List<SupplyOrder> orders) {
    List<Leg.Resupply> resupply = new ArrayList<>();
    Set<SupplyKind> seen = EnumSet.noneOf(SupplyKind.class);
    for (Fields fields : leg.objectsIfGiven("resupply")) {
      SupplyKind kind = fields.word("kind", Words.SUPPLY);
      OptionalLong addG = fields.numberIfGiven("addKg", Measure.MASS);
      fields.done();
      if (fields.good("kind")) {
        checkKind(kind, fields, seen, trip, orders);
      }
      resupply.add(new Leg.Resupply(kind, addG));
    }
    return resupply;
  }

  private static void checkKind(
      SupplyKind kind, Fields fields, Set<SupplyKind> seen, Fields trip, List<SupplyOrder> orders) {
    if (!seen.add(kind)) {
      fields.error(
          Code.LISTED_TWICE,
          "kind",
          "is a second " + Words.of(kind) + " before one leg",
          "list it once");
    }
    boolean ordered = orders.stream().anyMatch(order -> order.kind() == kind);
    if (!ordered && trip.good("supplies")) {
      fields.error(
          Code.UNKNOWN_REFERENCE,
          "kind",
          "is " + Words.of(kind) + ", for which \"supplies\" has no order of use",
          "add the order to \"supplies\", or take this out");
    }
  }
}
