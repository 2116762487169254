package kitstow.tui.edit;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Trip;

/** What is used along the way. */
public final class ConsumptionEditor implements Editor {
  private static final Field.Range CONTENT = new Field.Range(0L, 2_000_000L);
  private static final Field.Range MASS = new Field.Range(0L, 10_000_000L);
  private static final Field.Range FACTOR = new Field.Range(100L, 10_000L);

  private final Consumption used;
  private final Field fuel = litres("Fuel, 100 km by road");
  private final Field offRoad = factor("times, off the road");
  private final Field towing = factor("times, with a trailer");
  private final Field water = litres("Water, person and day");
  private final Field food = mass("Food, person and day");
  private final Field gas = mass("Gas, a day");

  /** An editor of what a scenario uses. */
  public ConsumptionEditor(Scenario scenario) {
    this.used = scenario.trip().consumption();
  }

  private static Field litres(String title) {
    return Field.figure(title, Measures::contentMl, CONTENT, "litres, e.g. 11.5 L");
  }

  private static Field mass(String title) {
    return Field.figure(title, Measures::massG, MASS, "a mass, e.g. 1.5 kg, or 0");
  }

  private static Field factor(String title) {
    return Field.figure(title, Measures::factorPermille, FACTOR, "0.1 to 10, e.g. 1.4 or 140 %");
  }

  @Override
  public String title() {
    return "Used along the way";
  }

  @Override
  public String deed() {
    return "change what is used along the way";
  }

  @Override
  public List<Field> fields() {
    return List.of(fuel, offRoad, towing, water, food, gas);
  }

  @Override
  public List<String> texts() {
    return List.of(
        Words.litres(used.fuelMlPer100Km()),
        Measures.thousandths(used.offRoadFuelPermille()),
        Measures.thousandths(used.towingFuelPermille()),
        Words.litres(used.waterMlPerPersonDay()),
        Words.kg(used.foodGPerPersonDay()),
        Words.kg(used.gasGPerDay()));
  }

  @Override
  public Optional<String> fault(Form form, Field field) {
    return Optional.empty();
  }

  @Override
  public Design after(Design before, Form form) {
    Scenario scenario = before.scenario();
    Trip trip = scenario.trip();
    Consumption changed =
        new Consumption(
            form.value(fuel),
            Math.toIntExact(form.value(offRoad)),
            Math.toIntExact(form.value(towing)),
            form.value(water),
            form.value(food),
            form.value(gas));
    return new Design(
        scenario.withTrip(
            scenario.trailers(), new Trip(trip.people(), trip.legs(), changed, trip.orders())),
        before.plan());
  }
}
