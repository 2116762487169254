package kitstow.planner.json;

import kitstow.planner.model.Consumption;
import kitstow.planner.model.Leg;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Trip;

/** Writes trailers and the trip. */
final class TripWriter {
  private final Output out;

  TripWriter(Output out) {
    this.out = out;
  }

  void trailer(Trailer trailer) {
    out.text("id", trailer.id());
    out.text("title", trailer.title());
    out.milli("totalKg", trailer.total().massG());
    out.milli("ballKg", trailer.ball().massG());
    out.word("massSource", trailer.total().source());
    out.milli("totalToleranceKg", trailer.total().toleranceG());
    out.milli("ballToleranceKg", trailer.ball().toleranceG());
    out.flag("braked", trailer.braked());
    trailer.behindBallMm().ifPresent(behind -> out.whole("behindBallMm", behind));
    trailer.heightMm().ifPresent(height -> out.whole("heightMm", height));
  }

  void trip(Trip trip) {
    out.listAlways(
        "people",
        trip.people(),
        person -> {
          out.text("id", person.id());
          out.text("title", person.title());
          out.mass(person.mass());
          out.text("seat", person.seatId());
          person.sleepsOn().ifPresent(zone -> out.word("sleepsOn", zone));
        });
    out.object("consumption", fields -> consumption(trip.consumption()));
    out.list("supplies", trip.orders(), this::order);
    out.listAlways("legs", trip.legs(), this::leg);
  }

  private void consumption(Consumption consumption) {
    out.milli("fuelLPer100Km", consumption.fuelMlPer100Km());
    out.milli("offRoadFuelRatio", consumption.offRoadFuelPermille());
    out.milli("towingFuelRatio", consumption.towingFuelPermille());
    out.milli("waterLPerPersonDay", consumption.waterMlPerPersonDay());
    out.milli("foodKgPerPersonDay", consumption.foodGPerPersonDay());
    out.milli("gasKgPerDay", consumption.gasGPerDay());
  }

  private void order(SupplyOrder order) {
    out.word("kind", order.kind());
    out.groups("order", order.groups());
    if (order.decant() != SupplyOrder.Decant.EARLY) {
      out.word("decant", order.decant());
    }
  }

  private void leg(Leg leg) {
    out.text("id", leg.id());
    out.text("title", leg.title());
    out.milli("distanceKm", Math.round(leg.distanceKm() * 1000.0));
    out.milli("days", Math.round(leg.days() * 1000.0));
    out.word("surface", leg.surface());
    out.text("trailer", leg.trailerId());
    out.flagIfSet("wet", leg.wet());
    out.list(
        "resupply",
        leg.resupply(),
        resupply -> {
          out.word("kind", resupply.kind());
          out.number("addKg", resupply.addG(), 3);
        });
    out.flagIfSet("emptyRubbish", leg.emptyRubbish());
    leg.room().lengthMm().ifPresent(most -> out.whole("mostLengthMm", most));
    leg.room().heightMm().ifPresent(most -> out.whole("mostHeightMm", most));
  }
}
