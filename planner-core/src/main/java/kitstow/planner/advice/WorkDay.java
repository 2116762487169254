package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.Item;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Person;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trip;
import kitstow.planner.packing.Room;

/**
 * The ute of a plan on a day at work: the fit-out as it stands, tanks as the trip starts, the
 * driver alone, no trailer, one day on the road. Of the gear only what is for emergencies stays
 * aboard, with parts of the ute that are stowed as gear; what stood on something else comes down.
 * What is left before a limit is then left for the day's load.
 */
final class WorkDay {
  private static final double DAY_KM = 100.0;

  private WorkDay() {}

  static Scenario scenario(Scenario scenario) {
    Trip trip = scenario.trip();
    Leg day =
        new Leg(
            "work-day",
            "A day at work",
            DAY_KM,
            /* days= */ 1.0,
            Surface.ROAD,
            Optional.empty(),
            /* wet= */ false,
            List.of(),
            /* emptyRubbish= */ false);
    return scenario
        .withItems(staying(scenario))
        .withTrip(
            List.of(),
            new Trip(driver(scenario), List.of(day), onlyFuel(trip.consumption()), trip.orders()));
  }

  /** Food, water and gas of the trip are not what a day at work lives on. */
  private static Consumption onlyFuel(Consumption trip) {
    return new Consumption(
        trip.fuelMlPer100Km(), trip.offRoadFuelPermille(), trip.towingFuelPermille(), 0L, 0L, 0L);
  }

  /** Whoever sits on the first seat of the ute, and sleeps at home. */
  private static List<Person> driver(Scenario scenario) {
    List<Person> driver = new ArrayList<>();
    for (Person person : scenario.trip().people()) {
      if (!scenario.ute().seats().isEmpty()
          && scenario.ute().seats().get(0).id().equals(person.seatId())) {
        driver.add(
            new Person(
                person.id(), person.title(), person.mass(), person.seatId(), Optional.empty()));
      }
    }
    return driver;
  }

  private static List<Item> staying(Scenario scenario) {
    Set<String> stowed = new LinkedHashSet<>();
    for (RemovablePart part : scenario.ute().parts()) {
      part.stowedAsItemId().ifPresent(stowed::add);
    }
    List<Item> staying = new ArrayList<>();
    for (Item item : scenario.items()) {
      if (item.reach() == Reach.EMERGENCY || stowed.contains(item.id())) {
        staying.add(item);
      }
    }
    return staying;
  }

  /** Where what stays aboard is: where it was, or on what is left beneath it. */
  static LoadPlan plan(Loading loading) {
    Set<String> ids = new LinkedHashSet<>();
    staying(loading.scenario()).forEach(item -> ids.add(item.id()));
    List<PlacedItem> upward = new ArrayList<>();
    for (PlacedItem placed : loading.placed().values()) {
      if (ids.contains(placed.item().id())) {
        upward.add(placed);
      }
    }
    upward.sort(Comparator.comparingInt(placed -> placed.box().minZMm()));
    List<BoxMm> down = new ArrayList<>();
    List<Placement> placements = new ArrayList<>();
    for (PlacedItem placed : upward) {
      BoxMm box = comeDown(placed, down);
      down.add(box);
      placements.add(moved(placementOf(loading, placed), box.minZMm() - placed.box().minZMm()));
    }
    LoadPlan plan = loading.plan();
    return new LoadPlan(plan.scenarioId(), plan.moduleBays(), placements, plan.origin());
  }

  private static BoxMm comeDown(PlacedItem placed, List<BoxMm> down) {
    int zMm = Math.min(placed.box().minZMm(), Room.of(placed.space()).minZMm());
    for (BoxMm below : down) {
      if (Boxes.overlapXMm(below, placed.box()) > 0
          && Boxes.overlapYMm(below, placed.box()) > 0
          && below.maxZMm() <= placed.box().minZMm()) {
        zMm = Math.max(zMm, below.maxZMm());
      }
    }
    return placed.box().withHeights(zMm, zMm + placed.box().heightMm());
  }

  private static Placement placementOf(Loading loading, PlacedItem placed) {
    for (Placement placement : loading.plan().placements()) {
      if (placement.itemId().equals(placed.item().id()) && placement.unit() == placed.unit()) {
        return placement;
      }
    }
    throw new IllegalArgumentException("not placed: " + placed.key());
  }

  private static Placement moved(Placement placement, int byZMm) {
    SpacePointMm corner = placement.corner();
    return new Placement(
        placement.itemId(),
        placement.unit(),
        placement.spaceId(),
        placement.shape(),
        placement.turn(),
        new SpacePointMm(corner.xMm(), corner.yMm(), corner.zMm() + byZMm));
  }
}
