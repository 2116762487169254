package kitstow.planner.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;

/**
 * A scenario with a plan carried out: every body with mass in its place, everything closed and all
 * tanks full. What each weighs and where it has moved in a moment of the trip is a {@link
 * LoadState}.
 */
public final class Loading {
  /** Key of the empty ute's mass at the front axle line. */
  public static final String UTE_FRONT = "ute-front";

  /** Key of the empty ute's mass at the rear axle line. */
  public static final String UTE_REAR = "ute-rear";

  /** Key of the ball mass. */
  public static final String BALL = "ball";

  /** What is added to a module's id for its moving part. */
  public static final String MOVING = "-moving";

  /** What is added to a tank's id for its liquid. */
  public static final String LIQUID = "-liquid";

  /** What an empty seat's body key starts with; it weighs something in certification only. */
  public static final String SEAT = "seat-";

  private final Scenario scenario;
  private final LoadPlan plan;
  private final Rig rig;
  private final List<Body> bodies = new ArrayList<>();
  private final Map<String, Integer> indexByKey = new LinkedHashMap<>();
  private final Map<Integer, Long> weighedWithUteG = new LinkedHashMap<>();
  private final Map<String, PlacedItem> placed = new LinkedHashMap<>();
  private final Map<String, List<PlacedItem>> bySpace = new LinkedHashMap<>();
  private final Set<String> home = new LinkedHashSet<>();

  private Loading(Scenario scenario, LoadPlan plan) {
    this.scenario = scenario;
    this.plan = plan;
    this.rig = Rig.of(scenario, plan.moduleBays());
  }

  /**
   * Carries out a plan.
   *
   * @throws IllegalArgumentException if the plan names a space, item, unit, shape, module or bay
   *     that does not exist, or places a unit twice
   */
  public static Loading of(Scenario scenario, LoadPlan plan) {
    Loading loading = new Loading(scenario, plan);
    loading.placeItems();
    loading.addVehicle();
    loading.addModulesAndTanks();
    loading.addItems();
    loading.addPeopleAndBall();
    return loading;
  }

  private void placeItems() {
    Map<String, Item> items = new LinkedHashMap<>();
    for (Item item : scenario.items()) {
      items.put(item.id(), item);
      for (int unit = 1; unit <= item.quantity(); unit++) {
        home.add(item.keyOf(unit));
      }
    }
    for (Space space : rig.spaces().values()) {
      bySpace.put(space.id(), new ArrayList<>());
    }
    for (Placement placement : plan.placements()) {
      Item item = items.get(placement.itemId());
      Space space = rig.spaces().get(placement.spaceId());
      List<PlacedItem> there = bySpace.get(placement.spaceId());
      if (item == null || space == null || there == null) {
        throw new IllegalArgumentException("no such item or space: " + placement);
      }
      if (placement.unit() < 1
          || placement.unit() > item.quantity()
          || placement.shape() < 0
          || placement.shape() >= item.shapes().size()
          || !home.remove(item.keyOf(placement.unit()))) {
        throw new IllegalArgumentException("no such unit or shape, or placed twice: " + placement);
      }
      SizeMm size = placement.turn().applyTo(item.shapes().get(placement.shape()));
      SpacePointMm corner = placement.corner();
      BoxMm box =
          BoxMm.at(
              new PointMm(
                  space.box().minXMm() + corner.xMm(),
                  space.box().minYMm() + corner.yMm(),
                  space.box().minZMm() + corner.zMm()),
              size);
      String key = item.keyOf(placement.unit());
      PlacedItem one = new PlacedItem(item, placement.unit(), key, space, placement, box);
      placed.put(key, one);
      there.add(one);
    }
  }

  private void addVehicle() {
    Ute ute = scenario.ute();
    KnownMass front = ute.empty().front();
    KnownMass rear = ute.empty().rear();
    add(
        fixed(UTE_FRONT, BodyKind.UTE, ute.title(), BoxMm.point(0, 0, ute.emptyHeightMm()), front)
            .inOverhang(false));
    add(
        fixed(
                UTE_REAR,
                BodyKind.UTE,
                ute.title(),
                BoxMm.point(ute.wheelbaseMm(), 0, ute.emptyHeightMm()),
                rear)
            .inOverhang(false));
    for (RemovablePart part : ute.parts()) {
      if (part.state() == PartState.ON) {
        addFitted(
            part.id(), fixed(part.id(), BodyKind.PART, part.title(), part.box(), part.mass()));
      }
    }
    for (Accessory accessory : scenario.accessories()) {
      addFitted(
          accessory.id(),
          fixed(
                  accessory.id(),
                  BodyKind.ACCESSORY,
                  accessory.title(),
                  accessory.box(),
                  accessory.mass())
              .toleranceKey("accessory:" + accessory.entryId())
              .zone(accessory.roof()));
    }
    scenario
        .tray()
        .ifPresent(
            tray ->
                addFitted(
                    Rig.TRAY,
                    fixed(Rig.TRAY, BodyKind.TRAY, tray.title(), trayBox(tray), tray.mass())));
    scenario
        .canopy()
        .ifPresent(
            canopy ->
                addFitted(
                    Rig.CANOPY,
                    fixed(
                        Rig.CANOPY,
                        BodyKind.CANOPY,
                        canopy.title(),
                        canopyBox(scenario.tray().get(), canopy),
                        canopy.mass())));
  }

  private static BoxMm trayBox(Tray tray) {
    return BoxMm.at(
        new PointMm(
            tray.frontXMm(), -tray.size().widthMm() / 2, tray.deckZMm() - tray.size().heightMm()),
        tray.size());
  }

  private static BoxMm canopyBox(Tray tray, Canopy canopy) {
    return BoxMm.at(
        new PointMm(
            tray.frontXMm() + canopy.fromTrayFrontMm(),
            -canopy.size().widthMm() / 2,
            tray.deckZMm()),
        canopy.size());
  }

  private void addModulesAndTanks() {
    for (FittedModule fitted : rig.modules().values()) {
      FitOutModule module = fitted.module();
      Optional<Zone> zone = Optional.of(fitted.bay().zone());
      List<String> inside = new ArrayList<>(List.of(module.id()));
      inside.addAll(fitted.inModules());
      add(
          fixed(module.id(), BodyKind.MODULE, module.title(), fitted.box(), module.fixed())
              .toleranceKey("module:" + module.entryId())
              .zone(zone)
              .movesWith(fitted.movesWith())
              .inModules(inside));
      if (module.moving().massG() > 0L) {
        List<String> moves = new ArrayList<>();
        if (module.slide().isPresent()) {
          moves.add(module.id());
        }
        moves.addAll(fitted.movesWith());
        add(
            new Draft(
                    module.id() + MOVING,
                    module.id(),
                    BodyKind.MODULE,
                    module.title() + ", moving part",
                    fitted.box(),
                    module.moving())
                .toleranceKey("module:" + module.entryId())
                .zone(zone)
                .movesWith(moves)
                .inModules(inside));
      }
    }
    for (FittedTank fitted : rig.tanks().values()) {
      Tank tank = fitted.tank();
      Optional<Zone> zone =
          fitted.moduleId().map(rig.modules()::get).map(module -> module.bay().zone());
      if (tank.empty().massG() > 0L) {
        add(
            fixed(tank.id(), BodyKind.TANK, tank.title(), fitted.box(), tank.empty())
                .toleranceKey(toleranceKey(fitted))
                .zone(zone)
                .movesWith(fitted.movesWith())
                .inModules(fitted.inModules()));
      }
      long fullG = tank.massOfG(tank.capacityMl());
      long toleranceG = fullG * scenario.settings().liquidTolerancePermille() / 1000L;
      add(
          new Draft(
                  tank.id() + LIQUID,
                  tank.id(),
                  BodyKind.LIQUID,
                  tank.title() + ", content",
                  fitted.box(),
                  new KnownMass(fullG, MassSource.LABEL, toleranceG))
              .zone(zone)
              .movesWith(fitted.movesWith())
              .inModules(fitted.inModules()));
    }
  }

  /** A tank of a module is the same tank in every module of that entry. */
  private String toleranceKey(FittedTank fitted) {
    String id = fitted.tank().id();
    return fitted
        .moduleId()
        .map(rig.modules()::get)
        .map(host -> "module:" + host.module().entryId() + "/" + id.substring(id.indexOf('/') + 1))
        .orElse(id);
  }

  private void addItems() {
    for (PlacedItem one : placed.values()) {
      Item item = one.item();
      long grownG =
          item.mass().massG()
              + item.growth().map(growth -> growth.upToG() + growth.wetG()).orElse(0L);
      KnownMass mass =
          new KnownMass(
              grownG,
              item.mass().source(),
              item.mass().massG() == 0L
                  ? item.mass().toleranceG()
                  : item.mass().toleranceG() * grownG / item.mass().massG());
      add(
          new Draft(one.key(), item.id(), BodyKind.ITEM, item.title(), one.box(), mass)
              .unit(item.quantity() == 1 ? 0 : one.unit())
              .spaceId(one.space().id())
              .toleranceKey("gear:" + item.entryId())
              .zone(Optional.of(one.space().zone()))
              .movesWith(one.space().movesWith())
              .inModules(one.space().inModules()));
    }
  }

  private void addPeopleAndBall() {
    Map<String, Seat> seats = new LinkedHashMap<>();
    for (Seat seat : scenario.ute().seats()) {
      seats.put(seat.id(), seat);
    }
    for (Person person : scenario.trip().people()) {
      Seat seat = seats.remove(person.seatId());
      if (seat == null) {
        throw new IllegalArgumentException("no such seat, or taken twice: " + person.seatId());
      }
      VehiclePointMm at = seat.place();
      add(
          fixed(
              person.id(),
              BodyKind.PERSON,
              person.title(),
              BoxMm.point(at.xMm(), at.yMm(), at.zMm()),
              person.mass()));
    }
    long allowanceG = scenario.settings().seatAllowanceG();
    for (Seat seat : seats.values()) {
      VehiclePointMm at = seat.place();
      add(
          fixed(
              SEAT + seat.id(),
              BodyKind.PERSON,
              seat.title() + ", empty seat",
              BoxMm.point(at.xMm(), at.yMm(), at.zMm()),
              new KnownMass(allowanceG, MassSource.PLATE, 0L)));
    }
    KnownMass heaviest = KnownMass.NONE;
    for (Trailer trailer : scenario.trailers()) {
      if (trailer.ball().massG() > heaviest.massG()) {
        heaviest = trailer.ball();
      }
    }
    KnownMass ballMass = heaviest;
    scenario
        .ute()
        .ball()
        .ifPresent(
            ball ->
                add(
                    fixed(
                        BALL,
                        BodyKind.BALL,
                        "ball mass",
                        BoxMm.point(ball.xMm(), ball.yMm(), ball.zMm()),
                        ballMass)));
  }

  private static Draft fixed(String key, BodyKind kind, String title, BoxMm box, KnownMass mass) {
    return new Draft(key, key, kind, title, box, mass);
  }

  /**
   * Adds something that may have been on the ute when its axles were weighed. It was on the scale
   * then: {@code EmptyUte} takes it out by its stated mass and a state puts the same mass in again,
   * so that its error cancels and only that of the weighing is left.
   */
  private void addFitted(String fittedId, Draft draft) {
    if (scenario.ute().empty().fitted().contains(fittedId)) {
      weighedWithUteG.put(bodies.size(), draft.mass.toleranceG());
      add(draft.weighedWithUte());
    } else {
      add(draft);
    }
  }

  private void add(Draft draft) {
    Body body = draft.body();
    if (indexByKey.putIfAbsent(body.key(), bodies.size()) != null) {
      throw new IllegalArgumentException("two bodies with one key: " + body.key());
    }
    bodies.add(body);
  }

  /** The scenario. */
  public Scenario scenario() {
    return scenario;
  }

  /** The plan. */
  public LoadPlan plan() {
    return plan;
  }

  /** The rig under the plan's module bays. */
  public Rig rig() {
    return rig;
  }

  /** All bodies; their order is that of the masses in a {@link LoadState}. */
  public List<Body> bodies() {
    return Collections.unmodifiableList(bodies);
  }

  /**
   * Tolerance of a body's own mass, grams. That of a body which was on the ute when it was weighed
   * counts only where the ute does not, on a roof or the tray.
   */
  public long ownToleranceG(int body) {
    return weighedWithUteG.getOrDefault(body, bodies.get(body).toleranceG());
  }

  /** Index of a body, or -1. */
  public int indexOf(String key) {
    return indexByKey.getOrDefault(key, -1);
  }

  /** Placed items by body key, in the order of the plan. */
  public Map<String, PlacedItem> placed() {
    return Collections.unmodifiableMap(placed);
  }

  /** Items in a space, in the order of the plan. */
  public List<PlacedItem> in(String spaceId) {
    return Collections.unmodifiableList(bySpace.getOrDefault(spaceId, List.of()));
  }

  /** Body keys of units that stay home. */
  public Set<String> home() {
    return Collections.unmodifiableSet(home);
  }

  /** A body while it is put together. */
  private static final class Draft {
    private final String key;
    private final String id;
    private final BodyKind kind;
    private final String title;
    private final BoxMm box;
    private final KnownMass mass;
    private int unit;
    private long toleranceG;
    private String toleranceKey;
    private Optional<String> spaceId = Optional.empty();
    private Optional<Zone> zone = Optional.empty();
    private boolean inOverhang = true;
    private List<String> movesWith = List.of();
    private List<String> inModules = List.of();

    Draft(String key, String id, BodyKind kind, String title, BoxMm box, KnownMass mass) {
      this.key = key;
      this.id = id;
      this.kind = kind;
      this.title = title;
      this.box = box;
      this.mass = mass;
      this.toleranceG = mass.toleranceG();
      this.toleranceKey = key;
    }

    Draft weighedWithUte() {
      toleranceG = 0L;
      return this;
    }

    Draft unit(int value) {
      unit = value;
      return this;
    }

    Draft toleranceKey(String value) {
      toleranceKey = value;
      return this;
    }

    Draft spaceId(String value) {
      spaceId = Optional.of(value);
      return this;
    }

    Draft zone(Optional<Zone> value) {
      zone = value;
      return this;
    }

    Draft inOverhang(boolean value) {
      inOverhang = value;
      return this;
    }

    Draft movesWith(List<String> value) {
      movesWith = value;
      return this;
    }

    Draft inModules(List<String> value) {
      inModules = value;
      return this;
    }

    Body body() {
      return new Body(
          key,
          id,
          unit,
          kind,
          title,
          spaceId,
          box,
          mass.massG(),
          toleranceG,
          toleranceKey,
          zone,
          inOverhang,
          movesWith,
          inModules);
    }
  }
}
