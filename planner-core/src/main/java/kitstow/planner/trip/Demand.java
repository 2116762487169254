package kitstow.planner.trip;

import kitstow.planner.model.Consumption;
import kitstow.planner.model.Leg;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trip;

/** What a leg asks for: millilitres of fuel and water, grams of food and gas. */
final class Demand {
  private Demand() {}

  static double of(SupplyKind kind, Trip trip, Leg leg) {
    Consumption use = trip.consumption();
    double personDays = trip.people().size() * leg.days();
    return switch (kind) {
      case FUEL -> fuelMl(use, leg);
      case WATER -> use.waterMlPerPersonDay() * personDays;
      case FOOD -> use.foodGPerPersonDay() * personDays;
      case GAS -> use.gasGPerDay() * leg.days();
    };
  }

  private static double fuelMl(Consumption use, Leg leg) {
    double offRoad = leg.surface() == Surface.OFF_ROAD ? use.offRoadFuelPermille() / 1000.0 : 1.0;
    double towing = leg.trailerId().isPresent() ? use.towingFuelPermille() / 1000.0 : 1.0;
    return leg.distanceKm() / 100.0 * use.fuelMlPer100Km() * offRoad * towing;
  }
}
