package kitstow.planner.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;

/** Puts modules into their bays, hosts before what stands in or on them. */
final class Mounting {
  private final Scenario scenario;
  private final RigParts parts;

  Mounting(Scenario scenario, RigParts parts) {
    this.scenario = scenario;
    this.parts = parts;
  }

  void addModules(Map<String, String> moduleBays) {
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
        Bay bay = bayId == null ? null : parts.bays.get(bayId);
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
    FittedModule host = parts.modules.get(bay.hostId());
    List<String> movesWith =
        host == null ? List.of() : RigParts.chain(bay.moves(), host, host.movesWith());
    List<String> inModules =
        host == null ? List.of() : RigParts.chain(true, host, host.inModules());
    FittedModule fitted = new FittedModule(module, bay, outside, movesWith, inModules);
    parts.modules.put(module.id(), fitted);
    for (BaySpec spec : module.bays()) {
      String id = module.id() + "/" + spec.id();
      boolean open = bay.environment().contains(Environment.OPEN_AIR);
      Set<Environment> environment = inherited(spec.environment(), spec.ownAir(), open);
      parts.bays.put(
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
      parts.tanks.put(
          tank.id(),
          new FittedTank(
              tank,
              frame.toVehicle(tank.box()),
              Optional.of(module.id()),
              movesWith,
              RigParts.chain(true, fitted, inModules)));
    }
  }

  private void addModuleSpace(FittedModule fitted, HostFrame frame, SpaceSpec spec) {
    Bay bay = fitted.bay();
    String id = fitted.module().id() + "/" + spec.id();
    boolean open = bay.environment().contains(Environment.OPEN_AIR);
    parts.spaces.put(
        id,
        new Space(
            id,
            spec.title(),
            fitted.module().id(),
            openTop(fitted, frame.toVehicle(spec.box())),
            spec.ratings(),
            spec.access() == AccessAxis.FACE ? RigParts.axisOf(bay.facing()) : spec.access(),
            bay.doorIds(),
            bay.zone(),
            inherited(spec.environment(), spec.ownAir(), open),
            spec.ownAir() || open ? "air:" + id : bay.airId(),
            spec.bars(),
            RigParts.chain(spec.moves(), fitted, fitted.movesWith()),
            RigParts.chain(true, fitted, fitted.inModules())));
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
}
