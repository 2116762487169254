package kitstow.planner.testkit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.Door;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Item;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.Person;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RoofLimits;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Trip;
import kitstow.planner.model.Zone;

/**
 * A ute with tray and canopy, what is fitted to it and where the gear is put.
 *
 * <p>The tray (100 kg) starts 2000 mm behind the front axle, its deck is 900 mm above the ground,
 * and the canopy (150 kg) covers it: 1800 x 1800 x 900 mm outside, from x 2050 to 3750, y -850 to
 * 850 and z 900 to 1750 inside. Its three doors reach from 50 mm above the floor to 800 mm.
 */
public final class RigBuilder {
  private final List<Accessory> accessories = new ArrayList<>();
  private final List<Door> doors = new ArrayList<>();
  private final List<BaySpec> canopyBays = new ArrayList<>();
  private final List<SpaceSpec> uteSpaces = new ArrayList<>();
  private final List<SpaceSpec> traySpaces = new ArrayList<>();
  private final List<SpaceSpec> canopySpaces = new ArrayList<>();
  private final List<ModuleChoice> modules = new ArrayList<>();
  private final List<Item> items = new ArrayList<>();
  private final List<Trailer> trailers = new ArrayList<>();
  private final List<Person> people = new ArrayList<>();
  private final Map<String, String> moduleBays = new LinkedHashMap<>();
  private final List<Placement> placements = new ArrayList<>();
  private final List<Leg> legs = new ArrayList<>();
  private final List<SupplyOrder> orders = new ArrayList<>();
  private final UteBuilder ute = new UteBuilder();
  private Consumption consumption = new Consumption(0L, 1000, 1000, 0L, 0L, 0L);
  private Settings settings = Settings.DEFAULTS;
  private Optional<Ratings> trayRating = Optional.empty();
  private long trayToleranceG;
  private long canopyToleranceG;
  private Optional<RoofLimits> canopyRoof =
      Optional.of(new RoofLimits(Masses.kg(150), Masses.kg(300)));

  private RigBuilder() {}

  /** The rig with tray, canopy and three doors, without a space. */
  public static RigBuilder aBareDualCab() {
    return new RigBuilder()
        .door("left-door", Facing.LEFT, 100, 1700)
        .door("right-door", Facing.RIGHT, 100, 1700)
        .door("rear-door", Facing.REAR, -700, 700);
  }

  /** The rig with the spaces and bays of {@link Rigs}. */
  public static RigBuilder aDualCab() {
    return Rigs.furnish(aBareDualCab());
  }

  /** Changes the ute. */
  public RigBuilder ute(Consumer<UteBuilder> change) {
    change.accept(ute);
    return this;
  }

  /** Other settings. */
  public RigBuilder settings(Settings value) {
    settings = value;
    return this;
  }

  /** By how much the masses of tray and canopy may be off. */
  public RigBuilder bodyToleranceG(long tray, long canopy) {
    trayToleranceG = tray;
    canopyToleranceG = canopy;
    return this;
  }

  /** What the tray may carry. */
  public RigBuilder trayRating(Ratings value) {
    trayRating = Optional.of(value);
    return this;
  }

  /** What the canopy roof may carry. */
  public RigBuilder canopyRoofG(long moving, long parked) {
    canopyRoof = Optional.of(new RoofLimits(moving, parked));
    return this;
  }

  /** A door of the canopy, or another one in place of the one with that id. */
  public RigBuilder door(String id, Facing side, int fromMm, int toMm, Door.Strut... struts) {
    doors.removeIf(door -> door.id().equals(id));
    doors.add(
        new Door(
            id, id, side, fromMm, toMm, /* sillZMm= */ 50, /* headZMm= */ 800, List.of(struts)));
    return this;
  }

  /** An accessory. */
  public RigBuilder accessory(Accessory value) {
    accessories.add(value);
    return this;
  }

  /** A bay in the canopy, or another one in place of the one with that id. */
  public RigBuilder canopyBay(BayBuilder value) {
    BaySpec bay = value.build();
    canopyBays.removeIf(old -> old.id().equals(bay.id()));
    canopyBays.add(bay);
    return this;
  }

  /** A space on the ute, or another one in place of the one with that id. */
  public RigBuilder uteSpace(SpaceBuilder value) {
    return addSpace(uteSpaces, value.build());
  }

  /** A space on the tray, or another one in place of the one with that id. */
  public RigBuilder traySpace(SpaceBuilder value) {
    return addSpace(traySpaces, value.build());
  }

  /** A space in or on the canopy, or another one in place of the one with that id. */
  public RigBuilder canopySpace(SpaceBuilder value) {
    return addSpace(canopySpaces, value.build());
  }

  private RigBuilder addSpace(List<SpaceSpec> spaces, SpaceSpec space) {
    spaces.removeIf(old -> old.id().equals(space.id()));
    spaces.add(space);
    return this;
  }

  /** A module that may be left out. */
  public RigBuilder module(ModuleBuilder value, String bayId) {
    return module(value, Need.NICE, bayId);
  }

  /** A module. */
  public RigBuilder module(ModuleBuilder value, Need need, String... bayIds) {
    modules.add(new ModuleChoice(value.build(), List.of(bayIds), need, /* value= */ 1));
    return this;
  }

  /** A module, fitted to a bay. */
  public RigBuilder fitted(ModuleBuilder value, String bayId) {
    module(value, bayId);
    moduleBays.put(modules.get(modules.size() - 1).module().id(), bayId);
    return this;
  }

  /** Items, as yet at home. */
  public RigBuilder items(ItemBuilder... values) {
    for (ItemBuilder value : values) {
      items.add(value.build());
    }
    return this;
  }

  /** A trailer. */
  public RigBuilder trailer(String id, long totalG, long ballG, boolean braked) {
    trailers.add(new Trailer(id, id, Masses.weighed(totalG), Masses.weighed(ballG), braked));
    return this;
  }

  /** Another trailer. */
  public RigBuilder trailer(Trailer value) {
    trailers.add(value);
    return this;
  }

  /** Someone in a seat. */
  public RigBuilder person(String id, long massG, String seatId) {
    people.add(new Person(id, id, Masses.weighed(massG), seatId, Optional.empty()));
    return this;
  }

  /** Someone in a seat who sleeps on a roof. */
  public RigBuilder sleeper(String id, long massG, String seatId, Zone roof) {
    people.add(new Person(id, id, Masses.weighed(massG), seatId, Optional.of(roof)));
    return this;
  }

  /** Legs of the trip; at first there are none. */
  public RigBuilder legs(Leg... values) {
    legs.addAll(List.of(values));
    return this;
  }

  /** One dry day on roads, without trailer or resupply. */
  public RigBuilder roadDay(double distanceKm) {
    return legs(
        new Leg(
            "out",
            "Out",
            distanceKm,
            /* days= */ 1.0,
            Surface.ROAD,
            /* trailerId= */ Optional.empty(),
            /* wet= */ false,
            List.of(),
            /* emptyRubbish= */ false));
  }

  /** What is used along the way, and in which order; at first nothing. */
  public RigBuilder using(Consumption value, SupplyOrder... inOrder) {
    consumption = value;
    orders.addAll(List.of(inOrder));
    return this;
  }

  /** Puts an item, or {@code item#unit}, as listed. */
  public RigBuilder put(String key, String spaceId, int xMm, int yMm, int zMm) {
    return put(key, spaceId, Turn.LWH, xMm, yMm, zMm);
  }

  /** Puts an item, or {@code item#unit}, turned. */
  public RigBuilder put(String key, String spaceId, Turn turn, int xMm, int yMm, int zMm) {
    int mark = key.indexOf('#');
    placements.add(
        new Placement(
            mark < 0 ? key : key.substring(0, mark),
            mark < 0 ? 1 : Integer.parseInt(key.substring(mark + 1)),
            spaceId,
            /* shape= */ 0,
            turn,
            new SpacePointMm(xMm, yMm, zMm)));
    return this;
  }

  /** The scenario. */
  public Scenario scenario() {
    return new Scenario(
        "test",
        "Test",
        /* note= */ "invented",
        settings,
        ute.build(),
        Optional.of(tray()),
        Optional.of(canopy()),
        accessories,
        /* uteBays= */ List.of(),
        /* trayBays= */ List.of(),
        canopyBays,
        uteSpaces,
        traySpaces,
        canopySpaces,
        modules,
        items,
        trailers,
        new Trip(people, legs, consumption, orders));
  }

  private Tray tray() {
    return new Tray(
        "tray",
        "Tray",
        /* source= */ "test",
        new SizeMm(1800, 1800, 100),
        Masses.weighed(Masses.kg(100), trayToleranceG),
        trayRating,
        /* headboardHeightMm= */ 0,
        /* bays= */ List.of(),
        /* spaces= */ List.of(),
        /* frontXMm= */ 2000,
        /* deckZMm= */ 900);
  }

  private Canopy canopy() {
    return new Canopy(
        "canopy",
        "Canopy",
        /* source= */ "test",
        new SizeMm(1800, 1800, 900),
        Masses.weighed(Masses.kg(150), canopyToleranceG),
        new LocalBoxMm(50, -850, 0, new SizeMm(1700, 1700, 850)),
        doors,
        canopyRoof,
        /* liftOffLegs= */ false,
        /* bays= */ List.of(),
        /* spaces= */ List.of(),
        /* fromTrayFrontMm= */ 0);
  }

  /** The plan. */
  public LoadPlan plan() {
    return new LoadPlan("test", moduleBays, placements, LoadPlan.Origin.HAND);
  }

  /** The loading of scenario and plan. */
  public Loading load() {
    return Loading.of(scenario(), plan());
  }
}
