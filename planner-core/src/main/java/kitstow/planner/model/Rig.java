package kitstow.planner.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;

/**
 * A scenario with its modules in their bays: every bay, module, space, door and tank in its place
 * on the vehicle, everything closed. Depends on the modules' bays only, never on where gear stands.
 *
 * <p>In its bay a module stands at the forward lower corner with its face flush with the door side;
 * on a roof it stands at the forward end. A module's space that is described higher than the module
 * itself (on top of a slide) ends at the top of the bay.
 */
public final class Rig {
  /** Host id of the ute. */
  public static final String UTE = "ute";

  /** Host id of the tray. */
  public static final String TRAY = "tray";

  /** Host id of the canopy. */
  public static final String CANOPY = "canopy";

  private final Scenario scenario;
  private final Map<String, Bay> bays = new LinkedHashMap<>();
  private final Map<String, Bay> baysView = Collections.unmodifiableMap(bays);
  private final Map<String, FittedModule> modules = new LinkedHashMap<>();
  private final Map<String, FittedModule> modulesView = Collections.unmodifiableMap(modules);
  private final Map<String, Space> spaces = new LinkedHashMap<>();
  private final Map<String, Space> spacesView = Collections.unmodifiableMap(spaces);
  private final Map<String, FittedDoor> doors = new LinkedHashMap<>();
  private final Map<String, FittedDoor> doorsView = Collections.unmodifiableMap(doors);
  private final Map<String, FittedTank> tanks = new LinkedHashMap<>();
  private final Map<String, FittedTank> tanksView = Collections.unmodifiableMap(tanks);

  private Rig(Scenario scenario) {
    this.scenario = scenario;
  }

  /**
   * Resolves a scenario.
   *
   * @param moduleBays bay by module id; modules that are not named are left out
   * @throws IllegalArgumentException if a module or bay is unknown, a bay is taken twice, or
   *     modules stand in each other
   */
  public static Rig of(Scenario scenario, Map<String, String> moduleBays) {
    Rig rig = new Rig(scenario);
    rig.addFixedHosts();
    rig.addModules(moduleBays);
    rig.addEmptyBays();
    return rig;
  }

  private void addFixedHosts() {
    HostFrame vehicle = new HostFrame.Moved(0, 0, 0);
    Ute ute = scenario.ute();
    addHost(UTE, vehicle, ute.bays(), ute.spaces());
    addHost(UTE, vehicle, scenario.uteBays(), scenario.uteSpaces());
    for (Tank tank : ute.fuelTanks()) {
      tanks.put(
          tank.id(),
          new FittedTank(
              tank, vehicle.toVehicle(tank.box()), Optional.empty(), List.of(), List.of()));
    }
    scenario.tray().ifPresent(this::addTray);
  }

  private void addTray(Tray tray) {
    HostFrame frame = new HostFrame.Moved(tray.frontXMm(), 0, tray.deckZMm());
    addHost(TRAY, frame, tray.bays(), tray.spaces());
    addHost(TRAY, frame, scenario.trayBays(), scenario.traySpaces());
    scenario.canopy().ifPresent(canopy -> addCanopy(tray, canopy));
  }

  private void addCanopy(Tray tray, Canopy canopy) {
    int frontX = tray.frontXMm() + canopy.fromTrayFrontMm();
    HostFrame frame = new HostFrame.Moved(frontX, 0, tray.deckZMm());
    BoxMm inside = frame.toVehicle(canopy.inside());
    for (Door door : canopy.doors()) {
      int along = door.side() == Facing.REAR ? 0 : frontX;
      List<Door.Strut> struts = new ArrayList<>();
      for (Door.Strut strut : door.struts()) {
        struts.add(
            new Door.Strut(
                strut.fromMm() + along,
                strut.toMm() + along,
                strut.lowerZMm() + tray.deckZMm(),
                strut.upperZMm() + tray.deckZMm()));
      }
      int plane =
          switch (door.side()) {
            case LEFT -> inside.minYMm();
            case RIGHT -> inside.maxYMm();
            case REAR -> inside.maxXMm();
          };
      doors.put(
          door.id(),
          new FittedDoor(
              door,
              door.fromMm() + along,
              door.toMm() + along,
              door.sillZMm() + tray.deckZMm(),
              door.headZMm() + tray.deckZMm(),
              struts,
              plane));
    }
    addHost(CANOPY, frame, canopy.bays(), canopy.spaces());
    addHost(CANOPY, frame, scenario.canopyBays(), scenario.canopySpaces());
  }

  private void addHost(
      String hostId, HostFrame frame, List<BaySpec> baySpecs, List<SpaceSpec> spaceSpecs) {
    for (BaySpec spec : baySpecs) {
      bays.put(
          spec.id(),
          new Bay(
              spec.id(),
              spec.title(),
              hostId,
              frame.toVehicle(spec.box()),
              spec.facing(),
              spec.doorIds(),
              spec.ratings(),
              /* moves= */ false,
              spec.zone(),
              spec.environment(),
              airOf(spec.id(), spec.zone(), spec.environment(), spec.ownAir()),
              spec.spaceWhenEmpty()));
    }
    for (SpaceSpec spec : spaceSpecs) {
      spaces.put(
          spec.id(),
          new Space(
              spec.id(),
              spec.title(),
              hostId,
              frame.toVehicle(spec.box()),
              spec.ratings(),
              spec.access(),
              spec.doorIds(),
              spec.zone(),
              spec.environment(),
              airOf(spec.id(), spec.zone(), spec.environment(), spec.ownAir()),
              spec.bars(),
              List.of(),
              List.of()));
    }
  }

  private static String airOf(String id, Zone zone, Set<Environment> environment, boolean ownAir) {
    if (ownAir || environment.contains(Environment.OPEN_AIR)) {
      return "air:" + id;
    }
    return switch (zone) {
      case CAB -> "air:cab";
      case CANOPY -> "air:canopy";
      case CAB_ROOF, TRAY, UNDER_TRAY, CANOPY_ROOF, REAR_CARRIER -> "air:" + id;
    };
  }

  private void addModules(Map<String, String> moduleBays) {
    Map<String, FitOutModule> waiting = new LinkedHashMap<>();
    for (ModuleChoice choice : scenario.modules()) {
      if (moduleBays.containsKey(choice.module().id())) {
        waiting.put(choice.module().id(), choice.module());
      }
    }
    if (waiting.size() != moduleBays.size()) {
      throw new IllegalArgumentException("unknown module in " + moduleBays.keySet());
    }
    Set<String> taken = new HashSet<>();
    while (!waiting.isEmpty()) {
      boolean placedOne = false;
      for (FitOutModule module : new ArrayList<>(waiting.values())) {
        String bayId = moduleBays.get(module.id());
        Bay bay = bayId == null ? null : bays.get(bayId);
        if (bay != null) {
          if (!taken.add(bay.id())) {
            throw new IllegalArgumentException("bay taken twice: " + bay.id());
          }
          mount(module, bay);
          waiting.remove(module.id());
          placedOne = true;
        }
      }
      if (!placedOne) {
        throw new IllegalArgumentException(
            "no such bay, or modules that stand in each other: " + waiting.keySet());
      }
    }
  }

  private void mount(FitOutModule module, Bay bay) {
    BoxMm outside = outsideIn(bay, module.size());
    HostFrame frame = new HostFrame.Mounted(outside, bay.facing());
    FittedModule host = modules.get(bay.hostId());
    List<String> movesWith = host == null ? List.of() : chain(bay.moves(), host, host.movesWith());
    List<String> inModules = host == null ? List.of() : chain(true, host, host.inModules());
    FittedModule fitted = new FittedModule(module, bay, outside, movesWith, inModules);
    modules.put(module.id(), fitted);
    for (BaySpec spec : module.bays()) {
      String id = module.id() + "/" + spec.id();
      boolean open = bay.environment().contains(Environment.OPEN_AIR);
      Set<Environment> environment = inherited(spec.environment(), spec.ownAir(), open);
      bays.put(
          id,
          new Bay(
              id,
              spec.title(),
              module.id(),
              frame.toVehicle(spec.box()),
              bay.facing(),
              bay.doorIds(),
              spec.ratings(),
              spec.moves(),
              bay.zone(),
              environment,
              spec.ownAir() || open ? "air:" + id : bay.airId(),
              spec.spaceWhenEmpty()));
    }
    for (SpaceSpec spec : module.spaces()) {
      addModuleSpace(fitted, frame, spec);
    }
    for (Tank tank : module.tanks()) {
      tanks.put(
          tank.id(),
          new FittedTank(
              tank,
              frame.toVehicle(tank.box()),
              Optional.of(module.id()),
              movesWith,
              chain(true, fitted, inModules)));
    }
  }

  private void addModuleSpace(FittedModule fitted, HostFrame frame, SpaceSpec spec) {
    Bay bay = fitted.bay();
    String id = fitted.module().id() + "/" + spec.id();
    boolean open = bay.environment().contains(Environment.OPEN_AIR);
    spaces.put(
        id,
        new Space(
            id,
            spec.title(),
            fitted.module().id(),
            openTop(fitted, frame.toVehicle(spec.box())),
            spec.ratings(),
            spec.access() == AccessAxis.FACE ? axisOf(bay.facing()) : spec.access(),
            bay.doorIds(),
            bay.zone(),
            inherited(spec.environment(), spec.ownAir(), open),
            spec.ownAir() || open ? "air:" + id : bay.airId(),
            spec.bars(),
            chain(spec.moves(), fitted, fitted.movesWith()),
            chain(true, fitted, fitted.inModules())));
  }

  /**
   * A space that rises above its module is open to the top of the bay, and ends there; where the
   * module itself reaches that high, nothing is left of it.
   */
  private static BoxMm openTop(FittedModule fitted, BoxMm space) {
    int ceiling = Math.max(space.minZMm(), fitted.bay().box().maxZMm());
    return space.maxZMm() > fitted.box().maxZMm()
        ? space.withHeights(space.minZMm(), Math.min(space.maxZMm(), ceiling))
        : space;
  }

  private static Set<Environment> inherited(
      Set<Environment> own, boolean ownAir, boolean bayIsOpen) {
    if (!bayIsOpen || ownAir) {
      return own;
    }
    Set<Environment> both = new HashSet<>(own);
    both.add(Environment.OPEN_AIR);
    return both;
  }

  private static List<String> chain(boolean include, FittedModule host, List<String> outer) {
    List<String> ids = new ArrayList<>();
    if (include) {
      ids.add(host.module().id());
    }
    ids.addAll(outer);
    return ids;
  }

  private static BoxMm outsideIn(Bay bay, SizeMm size) {
    BoxMm room = bay.box();
    int depth = size.lengthMm();
    int across = size.widthMm();
    int top = room.minZMm() + size.heightMm();
    boolean onRoof = bay.zone() == Zone.CAB_ROOF || bay.zone() == Zone.CANOPY_ROOF;
    return switch (bay.facing()) {
      case LEFT ->
          new BoxMm(
              room.minXMm(),
              room.minYMm(),
              room.minZMm(),
              room.minXMm() + across,
              room.minYMm() + depth,
              top);
      case RIGHT ->
          new BoxMm(
              room.minXMm(),
              room.maxYMm() - depth,
              room.minZMm(),
              room.minXMm() + across,
              room.maxYMm(),
              top);
      case REAR -> {
        int front = onRoof ? room.minXMm() : room.maxXMm() - depth;
        yield new BoxMm(
            front, room.minYMm(), room.minZMm(), front + depth, room.minYMm() + across, top);
      }
    };
  }

  private static AccessAxis axisOf(Facing facing) {
    return switch (facing) {
      case LEFT -> AccessAxis.LEFT;
      case RIGHT -> AccessAxis.RIGHT;
      case REAR -> AccessAxis.REAR;
    };
  }

  private void addEmptyBays() {
    Set<String> taken = new HashSet<>();
    for (FittedModule module : modules.values()) {
      taken.add(module.bay().id());
    }
    for (Bay bay : bays.values()) {
      if (!bay.spaceWhenEmpty() || taken.contains(bay.id())) {
        continue;
      }
      FittedModule host = modules.get(bay.hostId());
      spaces.put(
          bay.id(),
          new Space(
              bay.id(),
              bay.title(),
              bay.hostId(),
              bay.box(),
              bay.ratings(),
              axisOf(bay.facing()),
              bay.doorIds(),
              bay.zone(),
              bay.environment(),
              bay.airId(),
              Optional.empty(),
              host == null ? List.of() : chain(bay.moves(), host, host.movesWith()),
              host == null ? List.of() : chain(true, host, host.inModules())));
    }
  }

  /** The scenario this rig was made of. */
  public Scenario scenario() {
    return scenario;
  }

  /** All bays by id, hosts before the bays on modules. */
  public Map<String, Bay> bays() {
    return baysView;
  }

  /** Modules that are fitted, by id. */
  public Map<String, FittedModule> modules() {
    return modulesView;
  }

  /** All spaces by id. */
  public Map<String, Space> spaces() {
    return spacesView;
  }

  /** Canopy doors by id. */
  public Map<String, FittedDoor> doors() {
    return doorsView;
  }

  /** Tanks by id. */
  public Map<String, FittedTank> tanks() {
    return tanksView;
  }
}
