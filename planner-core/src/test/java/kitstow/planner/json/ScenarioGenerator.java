package kitstow.planner.json;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.function.IntFunction;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.Content;
import kitstow.planner.model.Density;
import kitstow.planner.model.Door;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Growth;
import kitstow.planner.model.Item;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.Mark;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.PartState;
import kitstow.planner.model.Person;
import kitstow.planner.model.Pin;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Reach;
import kitstow.planner.model.Regimes;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RoofLimits;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.RuleOverride;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Seat;
import kitstow.planner.model.Settings;
import kitstow.planner.model.Slide;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Stop;
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

/** Makes scenarios out of a seed that a reader must accept, with every feature now and then. */
final class ScenarioGenerator {
  private final Random random;
  private final Settings settings;
  private int nextId;

  ScenarioGenerator(long seed) {
    this.random = new Random(seed);
    this.settings = settings();
  }

  Scenario scenario() {
    boolean tray = chance();
    boolean canopy = tray && chance();
    List<ModuleChoice> modules = list(3, i -> module(i, "ute-bay"));
    List<Tank> moduleTanks = new ArrayList<>();
    modules.forEach(choice -> moduleTanks.addAll(choice.module().tanks()));
    List<Item> items = items(modules.isEmpty() ? "ute-space" : "m0/inside");
    List<Accessory> accessories = list(3, i -> accessory(i, canopy));
    Ute ute = ute(items, accessories);
    List<Trailer> trailers = ute.ball().isPresent() ? list(2, this::trailer) : List.<Trailer>of();
    Scenario scenario =
        new Scenario(
            "generated",
            text(),
            text(),
            settings,
            ute,
            tray ? Optional.of(tray()) : Optional.empty(),
            canopy ? Optional.of(canopy()) : Optional.empty(),
            accessories,
            list(2, i -> hostBay("ub" + i, Zone.CAB)),
            tray ? list(2, i -> hostBay("tb" + i, Zone.TRAY)) : List.of(),
            canopy ? list(2, i -> hostBay("cb" + i, Zone.CANOPY)) : List.of(),
            list(2, i -> hostSpace("us" + i, Zone.CAB)),
            tray ? list(2, i -> hostSpace("ts" + i, Zone.REAR_CARRIER)) : List.of(),
            canopy ? list(2, i -> hostSpace("cs" + i, Zone.CANOPY_ROOF)) : List.of(),
            modules,
            items,
            trailers,
            trip(items, ute, moduleTanks, trailers, canopy));
    return scenario.withOverrides(list(3, i -> override(items))).withStops(list(2, this::stop));
  }

  private Stop stop(int index) {
    Set<Facing> sides = some(Facing.class);
    int belowMm = sides.isEmpty() || chance() ? between(1, 1500) : 0;
    return new Stop("stop-" + index, text(), sides, belowMm, List.of());
  }

  private RuleOverride override(List<Item> items) {
    RuleId rule = one(RuleId.EMERGENCY_REACH, RuleId.GAS_OUTSIDE, RuleId.LEFT_RIGHT);
    List<String> subjects = items.isEmpty() || chance() ? List.of() : List.of(one(items).keyOf(1));
    return new RuleOverride(rule, subjects, text());
  }

  private boolean chance() {
    return random.nextInt(3) > 0;
  }

  private int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  private <E> E one(List<E> values) {
    return values.get(random.nextInt(values.size()));
  }

  @SafeVarargs
  private <E> E one(E... values) {
    return values[random.nextInt(values.length)];
  }

  private <E extends Enum<E>> Set<E> some(Class<E> type) {
    Set<E> some = EnumSet.noneOf(type);
    for (E value : type.getEnumConstants()) {
      if (random.nextInt(4) == 0) {
        some.add(value);
      }
    }
    return some;
  }

  private <T> List<T> list(int most, IntFunction<T> value) {
    List<T> values = new ArrayList<>();
    int count = random.nextInt(most + 1);
    for (int i = 0; i < count; i++) {
      values.add(value.apply(i));
    }
    return values;
  }

  private String text() {
    return "Text "
        + nextId++
        + one("", " with \"quotes\"", " \\ / <b> & '", " 9½ t – Größe 箱", " \u2028");
  }

  private KnownMass mass(int mostG) {
    return new KnownMass(between(1, mostG), one(MassSource.values()), between(0, 5000));
  }

  private SizeMm size(int mostMm) {
    return new SizeMm(between(1, mostMm), between(1, mostMm), between(1, mostMm));
  }

  private SizeMm gearSize() {
    return new SizeMm(between(10, 1500), between(10, 1500), between(10, 1500));
  }

  /** No gear is denser than lead. */
  private static int mostG(List<SizeMm> shapes) {
    int mostG = 60_000;
    for (SizeMm shape : shapes) {
      while (Density.isBeyondLead(mostG, shape)) {
        mostG /= 2;
      }
    }
    return mostG;
  }

  private int coordinate() {
    return between(-3000, 3000);
  }

  private Ratings ratings() {
    long staticG = between(0, 500_000);
    Ratings derated = settings.derated(staticG);
    return switch (random.nextInt(4)) {
      case 0 -> derated;
      case 1 -> new Ratings(staticG, between(0, 500_000), derated.offRoadG(), true);
      case 2 -> new Ratings(staticG, derated.roadG(), between(0, 500_000), true);
      default -> new Ratings(staticG, between(0, 500_000), between(0, 500_000), false);
    };
  }

  private Optional<Ratings> maybeRatings() {
    return chance() ? Optional.of(ratings()) : Optional.empty();
  }

  private Optional<RoofLimits> roof() {
    return chance()
        ? Optional.of(new RoofLimits(between(0, 200_000), between(0, 400_000)))
        : Optional.empty();
  }

  private Settings settings() {
    if (!chance()) {
      return Settings.DEFAULTS;
    }
    return new Settings(
        one(Settings.MassLimits.values()),
        one(Facing.LEFT, Facing.RIGHT),
        between(0, 1000),
        between(0, 50),
        between(0, 1000),
        between(0, 1000),
        between(0, 1000),
        between(0, 90_000),
        between(0, 90_000),
        between(0, 1000),
        between(0, 1000),
        between(0, 1000),
        between(0, 90_000),
        between(0, 100),
        new Regimes(
            between(0, 1000),
            between(0, 1000),
            between(0, 1000),
            one(Regimes.RearOverhang.values())));
  }

  /** Small enough for the inside of the canopy. */
  private LocalBoxMm hostBox() {
    return new LocalBoxMm(between(30, 500), between(-700, -100), between(10, 100), size(700));
  }

  private BaySpec hostBay(String id, Zone zone) {
    return new BaySpec(
        id,
        text(),
        hostBox(),
        one(Facing.values()),
        zone == Zone.CANOPY && chance() ? List.of("door") : List.of(),
        maybeRatings(),
        /* moves= */ false,
        zone,
        some(Environment.class),
        chance(),
        chance());
  }

  private SpaceSpec hostSpace(String id, Zone zone) {
    LocalBoxMm box = hostBox();
    return new SpaceSpec(
        id,
        text(),
        box,
        maybeRatings(),
        one(AccessAxis.ABOVE, AccessAxis.LEFT, AccessAxis.RIGHT, AccessAxis.REAR, AccessAxis.FRONT),
        List.of(),
        /* moves= */ false,
        zone,
        some(Environment.class),
        chance(),
        bars(box));
  }

  private Optional<RoofBars> bars(LocalBoxMm box) {
    if (chance()) {
      return Optional.empty();
    }
    List<RoofBars.Bar> bars = new ArrayList<>();
    bars.add(new RoofBars.Bar("bar-1", 0, ratings()));
    if (chance()) {
      bars.add(new RoofBars.Bar("bar-2", between(1, box.size().lengthMm()), ratings()));
    }
    return Optional.of(
        new RoofBars(bars, chance(), between(0, 300), between(0, 300), between(0, 300)));
  }

  private ModuleChoice module(int index, String bay) {
    String id = "m" + index;
    boolean slides = chance();
    SizeMm size = new SizeMm(between(300, 900), between(300, 900), between(200, 600));
    LocalBoxMm box = new LocalBoxMm(between(0, 20), between(0, 20), between(0, 200), size(250));
    SpaceSpec space =
        new SpaceSpec(
            "inside",
            text(),
            box,
            maybeRatings(),
            one(AccessAxis.FACE, AccessAxis.ABOVE),
            List.of(),
            slides && chance(),
            RegionReader.MODULE_ZONE,
            some(Environment.class),
            chance(),
            bars(box));
    BaySpec deck =
        new BaySpec(
            "deck",
            text(),
            box,
            RegionReader.MODULE_FACING,
            List.of(),
            maybeRatings(),
            slides && chance(),
            RegionReader.MODULE_ZONE,
            some(Environment.class),
            chance(),
            chance());
    KnownMass fixed = new KnownMass(between(0, 50_000), one(MassSource.values()), between(0, 900));
    KnownMass moving =
        slides && chance()
            ? new KnownMass(between(1, 50_000), fixed.source(), between(0, 900))
            : KnownMass.NONE;
    FitOutModule module =
        new FitOutModule(
            id,
            text(),
            /* entryId= */ id,
            text(),
            size,
            fixed,
            moving,
            slides
                ? Optional.of(new Slide(between(1, 900), ratings(), chance(), chance(), chance()))
                : Optional.empty(),
            maybeRatings(),
            List.of(space),
            List.of(deck),
            list(2, i -> tank(id + "/t" + i, one(SupplyKind.WATER, SupplyKind.GAS))));
    Need need = one(Need.values());
    List<String> bays = new ArrayList<>(List.of(bay));
    if (index > 0) {
      bays.add("m" + (index - 1) + "/deck");
    }
    return new ModuleChoice(module, bays, need, value(need));
  }

  private int value(Need need) {
    return chance() ? ChoiceFields.usualValue(need) : between(0, 10_000);
  }

  private Tank tank(String id, SupplyKind kind) {
    long capacityMl = between(1, 90_000);
    return new Tank(
        id,
        text(),
        kind,
        capacityMl,
        between(100, 3000),
        chance() ? KnownMass.NONE : mass(20_000),
        new LocalBoxMm(coordinate(), coordinate(), coordinate(), size(500)),
        chance() ? capacityMl : between(0, (int) capacityMl));
  }

  private List<Item> items(String space) {
    List<Item> items = new ArrayList<>();
    for (Item item : list(6, i -> item("g" + i, "g" + i, space))) {
      items.add(item);
      if (!chance()) {
        items.add(another(item, item.id() + "-again"));
      }
    }
    return items;
  }

  private Item another(Item item, String id) {
    Need need = one(Need.values());
    return new Item(
        id,
        chance() ? item.title() : text(),
        item.entryId(),
        item.source(),
        item.shapes(),
        item.mass(),
        item.content(),
        item.turns(),
        item.bearsG(),
        item.keepClear(),
        item.marks(),
        item.reach(),
        chance() ? Optional.of("group") : Optional.empty(),
        need,
        value(need),
        between(1, 9),
        item.growth(),
        Optional.empty());
  }

  private Item item(String id, String entry, String space) {
    Need need = one(Need.values());
    Set<Turn> turns = some(Turn.class);
    turns.add(Turn.LWH);
    List<SizeMm> shapes = list(2, i -> gearSize());
    shapes.add(gearSize());
    KnownMass mass = mass(mostG(shapes));
    Optional<Content> content =
        chance()
            ? Optional.of(new Content(one(SupplyKind.values()), between(1, (int) mass.massG())))
            : Optional.empty();
    Set<Mark> marks = some(Mark.class);
    content.filter(holds -> holds.kind() == SupplyKind.FUEL).ifPresent(any -> marks.add(Mark.FUEL));
    content.filter(holds -> holds.kind() == SupplyKind.GAS).ifPresent(any -> marks.add(Mark.GAS));
    return new Item(
        id,
        text(),
        entry,
        text(),
        shapes,
        mass,
        content,
        turns,
        between(0, 50_000),
        list(
            3,
            i ->
                chance()
                    ? new KeepClear(
                        one(KeepClear.Face.values()), between(1, 90), KeepClear.Kind.AIR)
                    : new KeepClear(KeepClear.Face.TOP, between(1, 90), KeepClear.Kind.LID)),
        marks,
        one(Reach.values()),
        chance() ? Optional.of("group") : Optional.empty(),
        need,
        value(need),
        /* quantity= */ 1,
        chance() ? Optional.of(new Growth(between(0, 900), between(1, 9000), 0)) : Optional.empty(),
        chance() ? Optional.empty() : Optional.of(pin(space)));
  }

  private Pin pin(String space) {
    return new Pin(
        space,
        chance()
            ? Optional.of(new SpacePointMm(coordinate(), coordinate(), coordinate()))
            : Optional.empty(),
        chance() ? Optional.of(Turn.LWH) : Optional.empty());
  }

  private Accessory accessory(int index, boolean canopy) {
    BoxMm box = BoxMm.at(new PointMm(coordinate(), coordinate(), coordinate()), size(2000));
    Optional<Zone> roof =
        chance() ? Optional.empty() : Optional.of(canopy ? Zone.CANOPY_ROOF : Zone.CAB_ROOF);
    String id = "a" + index;
    return new Accessory(id, text(), /* entryId= */ id, text(), mass(90_000), box, roof);
  }

  private Ute ute(List<Item> items, List<Accessory> accessories) {
    boolean tows = chance();
    List<RemovablePart> parts = list(3, i -> part(i, items));
    List<Seat> seats =
        List.of(
            new Seat("driver", text(), new VehiclePointMm(1500, 400, 900)),
            new Seat("mate", text(), new VehiclePointMm(1500, -400, 900)));
    List<Tank> tanks = List.of(tank("main-tank", SupplyKind.FUEL), tank("long", SupplyKind.FUEL));
    List<String> fitted = new ArrayList<>();
    parts.forEach(part -> fitted.add(part.id()));
    accessories.forEach(accessory -> fitted.add(accessory.id()));
    Map<String, Long> fuel = new HashMap<>();
    fuel.put("main-tank", (long) between(0, (int) tanks.get(0).capacityMl()));
    fuel.put("long", (long) between(0, (int) tanks.get(1).capacityMl()));
    MassSource source = one(MassSource.values());
    EmptyAxleLoads empty =
        new EmptyAxleLoads(
            new KnownMass(between(1, 2_000_000), source, between(0, 9000)),
            new KnownMass(between(1, 2_000_000), source, between(0, 9000)),
            fuel,
            list(2, i -> new EmptyAxleLoads.PersonAboard("mate", between(1, 99_000))),
            Set.copyOf(fitted),
            text(),
            "2024-05");
    UteLimits limits =
        new UteLimits(
            between(1, 9_000_000),
            between(1, 9_000_000),
            between(1, 9_000_000),
            tows ? OptionalLong.of(6_000_001L) : OptionalLong.empty(),
            tows ? OptionalLong.of(3_500_000L) : OptionalLong.empty(),
            tows ? OptionalLong.of(750_500L) : OptionalLong.empty(),
            tows ? OptionalLong.of(350_000L) : OptionalLong.empty(),
            roof());
    return new Ute(
        "ute-1",
        text(),
        text(),
        between(1, 5000),
        between(1, 2000),
        between(1, 2000),
        empty,
        between(1, 2000),
        text(),
        limits,
        new TyreSet(between(100, 130), one(2, 4)),
        new TyreSet(between(100, 130), one(2, 4)),
        seats,
        tanks,
        tows ? Optional.of(new VehiclePointMm(4400, 0, 450)) : Optional.empty(),
        parts,
        chance() ? Optional.of(new Ute.SpringHangers(2500, between(2501, 4000))) : Optional.empty(),
        chance() ? OptionalInt.of(-between(0, 2000)) : OptionalInt.empty(),
        coordinate(),
        between(1, 2500),
        List.of(hostBay("ute-bay", Zone.CAB_ROOF)),
        List.of(hostSpace("ute-space", Zone.CAB)));
  }

  private RemovablePart part(int index, List<Item> items) {
    BoxMm box = BoxMm.at(new PointMm(coordinate(), coordinate(), coordinate()), size(2000));
    PartState state = items.isEmpty() ? one(PartState.ON, PartState.OFF) : one(PartState.values());
    return new RemovablePart(
        "p" + index,
        text(),
        mass(90_000),
        box,
        state,
        state == PartState.STOWED ? Optional.of(one(items).id()) : Optional.empty());
  }

  private Tray tray() {
    return new Tray(
        "tray-1",
        text(),
        text(),
        size(2500),
        mass(300_000),
        maybeRatings(),
        between(0, 1000),
        list(2, i -> hostBay("tray-bay" + i, Zone.UNDER_TRAY)),
        list(2, i -> hostSpace("tray-space" + i, Zone.TRAY)),
        coordinate(),
        between(1, 1200));
  }

  private Canopy canopy() {
    Door door =
        new Door(
            "door",
            text(),
            one(Facing.values()),
            -500,
            500,
            20,
            800,
            list(2, i -> new Door.Strut(i, i + 10, 20, 30)));
    return new Canopy(
        "canopy-1",
        text(),
        text(),
        new SizeMm(1760, 1780, 900),
        mass(300_000),
        new LocalBoxMm(30, -850, 10, new SizeMm(1700, 1700, 860)),
        List.of(door),
        roof(),
        chance(),
        list(2, i -> hostBay("canopy-bay" + i, Zone.CANOPY)),
        list(2, i -> hostSpace("canopy-space" + i, Zone.CANOPY_ROOF)),
        coordinate());
  }

  private Trailer trailer(int index) {
    MassSource source = one(MassSource.values());
    return new Trailer(
        "t" + index,
        text(),
        new KnownMass(between(200_000, 3_000_000), source, between(0, 9000)),
        new KnownMass(between(0, 200_000), source, between(0, 9000)),
        chance(),
        maybe(1, 12_000),
        maybe(1, 4_000));
  }

  private Trip trip(
      List<Item> items, Ute ute, List<Tank> moduleTanks, List<Trailer> trailers, boolean canopy) {
    List<SupplyOrder> orders = new ArrayList<>();
    for (SupplyKind kind : SupplyKind.values()) {
      List<List<String>> groups = groups(kind, items, ute, moduleTanks);
      if (!groups.isEmpty() && chance()) {
        orders.add(new SupplyOrder(kind, groups, one(SupplyOrder.Decant.values())));
      }
    }
    List<Person> people = new ArrayList<>();
    people.add(person("anna", "driver", canopy));
    if (chance()) {
      people.add(person("ben", "mate", canopy));
    }
    List<Leg> legs = list(3, i -> leg(i, orders, ute, trailers));
    legs.add(leg(9, orders, ute, trailers));
    Consumption consumption =
        new Consumption(
            between(0, 30_000),
            between(100, 10_000),
            between(100, 10_000),
            between(0, 9000),
            between(0, 9000),
            between(0, 900));
    return new Trip(people, legs, consumption, orders);
  }

  private static List<List<String>> groups(
      SupplyKind kind, List<Item> items, Ute ute, List<Tank> moduleTanks) {
    List<List<String>> groups = new ArrayList<>();
    List<String> tanks = new ArrayList<>();
    for (Tank tank : ute.fuelTanks()) {
      if (tank.kind() == kind) {
        tanks.add(tank.id());
      }
    }
    for (Tank tank : moduleTanks) {
      if (tank.kind() == kind) {
        tanks.add(tank.id());
      }
    }
    if (!tanks.isEmpty()) {
      groups.add(tanks);
    }
    for (Item item : items) {
      if (item.content().isPresent() && item.content().get().kind() == kind) {
        groups.add(List.of(item.quantity() > 1 ? item.keyOf(2) : item.id()));
      }
    }
    return groups;
  }

  private Person person(String id, String seat, boolean canopy) {
    Optional<Zone> sleepsOn =
        chance() ? Optional.empty() : Optional.of(canopy ? Zone.CANOPY_ROOF : Zone.CAB_ROOF);
    return new Person(id, text(), mass(120_000), seat, sleepsOn);
  }

  private Leg leg(int index, List<SupplyOrder> orders, Ute ute, List<Trailer> trailers) {
    List<Leg.Resupply> resupply = new ArrayList<>();
    for (SupplyOrder order : orders) {
      if (!chance()) {
        OptionalLong addG = chance() ? OptionalLong.of(between(1, 50_000)) : OptionalLong.empty();
        resupply.add(new Leg.Resupply(order.kind(), addG));
      }
    }
    Optional<String> towed =
        trailers.isEmpty() ? Optional.empty() : Optional.of(one(trailers).id());
    return new Leg(
        "leg" + index,
        text(),
        between(0, 2_000_000) / 1000.0,
        between(0, 30_000) / 1000.0,
        one(Surface.values()),
        towed,
        chance(),
        resupply,
        chance(),
        new Leg.Room(
            ute.foremostXMm().isPresent() && !towed.isPresent()
                ? maybe(1, 20_000)
                : OptionalInt.empty(),
            towed.isPresent() ? OptionalInt.empty() : maybe(1, 4_000)));
  }

  private OptionalInt maybe(int least, int most) {
    return chance() ? OptionalInt.of(between(least, most)) : OptionalInt.empty();
  }
}
