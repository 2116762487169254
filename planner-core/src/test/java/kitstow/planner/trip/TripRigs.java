package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.Content;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Growth;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.PartState;
import kitstow.planner.model.Person;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Seat;
import kitstow.planner.model.Settings;
import kitstow.planner.model.Slide;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Trip;
import kitstow.planner.model.TyreSet;
import kitstow.planner.model.Ute;
import kitstow.planner.model.UteLimits;
import kitstow.planner.model.VehiclePointMm;
import kitstow.planner.model.Zone;

/**
 * Builds a five-seat ute with tray and canopy and a trip to try. The canopy has bays {@code left},
 * {@code right} and {@code rear} and a fixed space {@code pantry}; a module {@code m} has a space
 * {@code m/in} and a bay {@code m/top}, both on its slide if it has one.
 */
final class TripRigs {
  static final int WHEELBASE_MM = 3200;
  static final int SPARE_X_MM = 4300;
  private static final Ratings ANY = new Ratings(900_000L, 900_000L, 900_000L, false);

  private long frontG = 1_100_000L;
  private long rearG = 900_000L;
  private final Map<String, Long> weighedFuelMl = new HashMap<>();
  private final List<EmptyAxleLoads.PersonAboard> weighedPeople = new ArrayList<>();
  private final Set<String> weighedFitted = new HashSet<>();
  private final List<Tank> fuelTanks = new ArrayList<>();
  private final List<RemovablePart> parts = new ArrayList<>();
  private final List<Accessory> accessories = new ArrayList<>();
  private final List<Person> people = new ArrayList<>();
  private final Map<String, FitOutModule> modules = new LinkedHashMap<>();
  private final Map<String, String> moduleBays = new LinkedHashMap<>();
  private final List<Item> items = new ArrayList<>();
  private final List<Placement> placements = new ArrayList<>();
  private final List<Trailer> trailers = new ArrayList<>();
  private final List<Leg> legs = new ArrayList<>();
  private final List<SupplyOrder> orders = new ArrayList<>();
  private Consumption consumption = new Consumption(0L, 1000, 1000, 0L, 0L, 0L);

  static KnownMass grams(long massG) {
    return new KnownMass(massG, MassSource.WEIGHED, 0L);
  }

  TripRigs weighed(long front, long rear) {
    frontG = front;
    rearG = rear;
    return this;
  }

  TripRigs weighedWithFuel(String tankId, long ml) {
    weighedFuelMl.put(tankId, ml);
    return this;
  }

  TripRigs weighedWithPerson(String seatId, long massG) {
    weighedPeople.add(new EmptyAxleLoads.PersonAboard(seatId, massG));
    return this;
  }

  TripRigs weighedWithFitted(String... ids) {
    weighedFitted.addAll(Arrays.asList(ids));
    return this;
  }

  TripRigs fuelTank(String id, long capacityMl, long startMl) {
    int x = 1400 + 900 * fuelTanks.size();
    LocalBoxMm box = new LocalBoxMm(x, 100, 400, new SizeMm(800, 500, 300));
    fuelTanks.add(tank(id, SupplyKind.FUEL, capacityMl, 832L, 0L, box, startMl));
    return this;
  }

  static Tank tank(
      String id,
      SupplyKind kind,
      long capacityMl,
      long densityGPerL,
      long emptyG,
      LocalBoxMm box,
      long startMl) {
    return new Tank(id, id, kind, capacityMl, densityGPerL, grams(emptyG), box, startMl);
  }

  TripRigs part(String id, long massG, PartState state) {
    BoxMm box = new BoxMm(SPARE_X_MM - 350, -350, 500, SPARE_X_MM + 350, 350, 700);
    parts.add(new RemovablePart(id, id, grams(massG), box, state, Optional.empty()));
    return this;
  }

  TripRigs accessory(String id, long massG, BoxMm box) {
    accessories.add(new Accessory(id, id, id, "test", grams(massG), box, Optional.empty()));
    return this;
  }

  TripRigs person(String id, long massG, Optional<Zone> sleepsOn) {
    people.add(new Person(id, id, grams(massG), "seat" + (people.size() + 1), sleepsOn));
    return this;
  }

  TripRigs people(int count) {
    for (int i = 1; i <= count; i++) {
      person("p" + i, 80_000L, Optional.empty());
    }
    return this;
  }

  /** A module with a space {@code in} and a bay {@code top}; extension 0 is one without a slide. */
  TripRigs module(
      String id, String bayId, int extensionMm, long fixedG, long movingG, Tank... tanks) {
    boolean slides = extensionMm > 0;
    LocalBoxMm room = new LocalBoxMm(0, 0, 0, new SizeMm(500, 500, 200));
    LocalBoxMm above = new LocalBoxMm(0, 0, 250, new SizeMm(600, 600, 500));
    SpaceSpec space =
        new SpaceSpec(
            "in",
            "in",
            room,
            Optional.of(ANY),
            AccessAxis.ABOVE,
            List.of(),
            slides,
            Zone.CANOPY,
            Set.of(),
            false,
            Optional.empty());
    BaySpec top =
        new BaySpec(
            "top",
            "top",
            above,
            Facing.REAR,
            List.of(),
            Optional.of(ANY),
            slides,
            Zone.CANOPY,
            Set.of(),
            false,
            false);
    Optional<Slide> slide =
        slides ? Optional.of(new Slide(extensionMm, ANY, false, true, true)) : Optional.empty();
    modules.put(
        id,
        new FitOutModule(
            id,
            id,
            id,
            "test",
            new SizeMm(600, 600, 250),
            grams(fixedG),
            grams(movingG),
            slide,
            Optional.of(ANY),
            List.of(space),
            List.of(top),
            Arrays.asList(tanks)));
    moduleBays.put(id, bayId);
    return this;
  }

  TripRigs gear(String id, String spaceId, long massG) {
    return item(id, spaceId, massG, Optional.empty(), 1, Optional.empty());
  }

  TripRigs supply(
      String id, String spaceId, long massG, SupplyKind kind, long contentG, int units) {
    return item(
        id, spaceId, massG, Optional.of(new Content(kind, contentG)), units, Optional.empty());
  }

  TripRigs growing(String id, String spaceId, long massG, Growth growth) {
    return item(id, spaceId, massG, Optional.empty(), 1, Optional.of(growth));
  }

  TripRigs item(
      String id,
      String spaceId,
      long massG,
      Optional<Content> content,
      int units,
      Optional<Growth> growth) {
    items.add(
        new Item(
            id,
            id,
            id,
            "test",
            List.of(new SizeMm(200, 150, 100)),
            grams(massG),
            content,
            Set.of(Turn.LWH),
            0L,
            List.of(),
            Set.of(),
            Reach.RARE,
            Optional.empty(),
            Need.MUST,
            1,
            units,
            growth,
            Optional.empty()));
    for (int unit = 1; unit <= units; unit++) {
      place(id, unit, spaceId, new SpacePointMm(0, 0, 0));
    }
    return this;
  }

  private void place(String id, int unit, String spaceId, SpacePointMm corner) {
    placements.add(new Placement(id, unit, spaceId, 0, Turn.LWH, corner));
  }

  /** Leaves one unit at home. */
  TripRigs home(String id, int unit) {
    placements.removeIf(one -> one.itemId().equals(id) && one.unit() == unit);
    return this;
  }

  TripRigs trailer(String id, long totalG, long ballG) {
    trailers.add(new Trailer(id, id, grams(totalG), grams(ballG), true));
    return this;
  }

  TripRigs fuelUse(long mlPer100Km, int offRoadPermille, int towingPermille) {
    Consumption was = consumption;
    consumption =
        new Consumption(
            mlPer100Km,
            offRoadPermille,
            towingPermille,
            was.waterMlPerPersonDay(),
            was.foodGPerPersonDay(),
            was.gasGPerDay());
    return this;
  }

  TripRigs dailyUse(long waterMl, long foodG, long gasG) {
    Consumption was = consumption;
    consumption =
        new Consumption(
            was.fuelMlPer100Km(),
            was.offRoadFuelPermille(),
            was.towingFuelPermille(),
            waterMl,
            foodG,
            gasG);
    return this;
  }

  /** Groups are separated by a bar, names by a comma. */
  TripRigs order(SupplyKind kind, SupplyOrder.Decant decant, String groups) {
    List<List<String>> parsed = new ArrayList<>();
    for (String group : groups.split("\\|", -1)) {
      parsed.add(group.isEmpty() ? List.of() : Arrays.asList(group.split(",", -1)));
    }
    orders.add(new SupplyOrder(kind, parsed, decant));
    return this;
  }

  TripRigs leg(String id, double km, double days) {
    return leg(plainLeg(id, km, days));
  }

  TripRigs leg(Leg leg) {
    legs.add(leg);
    return this;
  }

  static Leg plainLeg(String id, double km, double days) {
    return new Leg(id, id, km, days, Surface.ROAD, Optional.empty(), false, List.of(), false);
  }

  static Leg.Resupply full(SupplyKind kind) {
    return new Leg.Resupply(kind, OptionalLong.empty());
  }

  static Leg.Resupply add(SupplyKind kind, long grams) {
    return new Leg.Resupply(kind, OptionalLong.of(grams));
  }

  Scenario scenario() {
    List<ModuleChoice> choices = new ArrayList<>();
    for (FitOutModule module : modules.values()) {
      choices.add(new ModuleChoice(module, List.of(moduleBays.get(module.id())), Need.MUST, 1));
    }
    return new Scenario(
        "test",
        "test",
        "",
        Settings.DEFAULTS,
        ute(),
        Optional.of(tray()),
        Optional.of(canopy()),
        accessories,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        choices,
        items,
        trailers,
        new Trip(people, legs, consumption, orders));
  }

  Loading loading() {
    return Loading.of(
        scenario(), new LoadPlan("test", moduleBays, placements, LoadPlan.Origin.HAND));
  }

  Timeline timeline() {
    return Timeline.of(loading());
  }

  private Ute ute() {
    List<Seat> seats = new ArrayList<>();
    for (int i = 1; i <= 5; i++) {
      VehiclePointMm at = new VehiclePointMm(i <= 2 ? 1200 : 2000, 350 * i - 900, 900);
      seats.add(new Seat("seat" + i, "seat " + i, at));
    }
    EmptyAxleLoads empty =
        new EmptyAxleLoads(
            grams(frontG),
            grams(rearG),
            weighedFuelMl,
            weighedPeople,
            weighedFitted,
            "test",
            "today");
    UteLimits limits =
        new UteLimits(
            3_200_000L,
            1_500_000L,
            2_000_000L,
            OptionalLong.empty(),
            OptionalLong.empty(),
            OptionalLong.empty(),
            OptionalLong.empty(),
            Optional.empty());
    TyreSet tyres = new TyreSet(115, 2);
    return new Ute(
        "ute",
        "ute",
        "test",
        WHEELBASE_MM,
        1550,
        1550,
        empty,
        700,
        "test",
        limits,
        tyres,
        tyres,
        seats,
        fuelTanks,
        Optional.of(new VehiclePointMm(4500, 0, 450)),
        parts,
        Optional.empty(),
        OptionalInt.empty(),
        4400,
        1850,
        List.of(),
        List.of());
  }

  private static Tray tray() {
    return new Tray(
        "tray",
        "tray",
        "test",
        new SizeMm(1800, 1850, 200),
        grams(180_000L),
        Optional.empty(),
        0,
        List.of(),
        List.of(),
        2500,
        900);
  }

  private static Canopy canopy() {
    LocalBoxMm inside = new LocalBoxMm(20, -900, 0, new SizeMm(1700, 1800, 850));
    LocalBoxMm pantry = new LocalBoxMm(20, -100, 0, new SizeMm(400, 200, 800));
    SpaceSpec space =
        new SpaceSpec(
            "pantry",
            "pantry",
            pantry,
            Optional.of(ANY),
            AccessAxis.LEFT,
            List.of(),
            false,
            Zone.CANOPY,
            Set.of(),
            false,
            Optional.empty());
    return new Canopy(
        "canopy",
        "canopy",
        "test",
        new SizeMm(1750, 1850, 900),
        grams(150_000L),
        inside,
        List.of(),
        Optional.empty(),
        false,
        List.of(
            bay("left", Facing.LEFT, 20, -900),
            bay("right", Facing.RIGHT, 20, 150),
            bay("rear", Facing.REAR, 950, -350)),
        List.of(space),
        0);
  }

  private static BaySpec bay(String id, Facing facing, int aMm, int bMm) {
    LocalBoxMm box = new LocalBoxMm(aMm, bMm, 0, new SizeMm(750, 750, 800));
    return new BaySpec(
        id,
        id,
        box,
        facing,
        List.of(),
        Optional.of(ANY),
        false,
        Zone.CANOPY,
        Set.of(),
        false,
        true);
  }

  /** The state with an id. */
  static LoadState state(Timeline timeline, String id) {
    for (LoadState state : timeline.states()) {
      if (state.id().equals(id)) {
        return state;
      }
    }
    throw new AssertionError("no state " + id + " in " + ids(timeline));
  }

  static List<String> ids(Timeline timeline) {
    List<String> ids = new ArrayList<>();
    for (LoadState state : timeline.states()) {
      ids.add(state.id());
    }
    return ids;
  }

  static long massG(Loading loading, LoadState state, String key) {
    return state.massG(loading.indexOf(key));
  }

  static long totalG(LoadState state) {
    long sum = 0L;
    for (int i = 0; i < state.size(); i++) {
      sum += state.massG(i);
    }
    return sum;
  }
}
