package kitstow.planner.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;

/** Puts the bays, spaces, doors and tanks of ute, tray and canopy in their places. */
final class FixedHosts {
  private final Scenario scenario;
  private final RigParts parts;

  FixedHosts(Scenario scenario, RigParts parts) {
    this.scenario = scenario;
    this.parts = parts;
  }

  void addFixedHosts() {
    HostFrame vehicle = new HostFrame.Moved(0, 0, 0);
    Ute ute = scenario.ute();
    addHost(Rig.UTE, vehicle, ute.bays(), ute.spaces());
    addHost(Rig.UTE, vehicle, scenario.uteBays(), scenario.uteSpaces());
    for (Tank tank : ute.fuelTanks()) {
      parts.tanks.put(
          tank.id(),
          new FittedTank(
              tank, vehicle.toVehicle(tank.box()), Optional.empty(), List.of(), List.of()));
    }
    scenario.tray().ifPresent(this::addTray);
  }

  private void addTray(Tray tray) {
    HostFrame frame = new HostFrame.Moved(tray.frontXMm(), 0, tray.deckZMm());
    addHost(Rig.TRAY, frame, tray.bays(), tray.spaces());
    addHost(Rig.TRAY, frame, scenario.trayBays(), scenario.traySpaces());
    scenario.canopy().ifPresent(canopy -> addCanopy(tray, canopy));
  }

  private void addCanopy(Tray tray, Canopy canopy) {
    int frontX = tray.frontXMm() + canopy.fromTrayFrontMm();
    HostFrame frame = canopy.frameOn(tray);
    BoxMm inside = canopy.insideOn(tray);
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
      parts.doors.put(
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
    addHost(Rig.CANOPY, frame, canopy.bays(), canopy.spaces());
    addHost(Rig.CANOPY, frame, scenario.canopyBays(), scenario.canopySpaces());
  }

  private void addHost(
      String hostId, HostFrame frame, List<BaySpec> baySpecs, List<SpaceSpec> spaceSpecs) {
    for (BaySpec spec : baySpecs) {
      parts.bays.put(
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
      parts.spaces.put(
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
}
