package kitstow.planner.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;

/** What a rig consists of while it is put together, each by its id. */
final class RigParts {
  final Map<String, Bay> bays = new LinkedHashMap<>();
  final Map<String, FittedModule> modules = new LinkedHashMap<>();
  final Map<String, Space> spaces = new LinkedHashMap<>();
  final Map<String, FittedDoor> doors = new LinkedHashMap<>();
  final Map<String, FittedTank> tanks = new LinkedHashMap<>();

  /**
   * Makes spaces of bays that are left empty and may be. A bay with smaller ones in it, such as the
   * floor of a whole side, is one space with them as long as no module reaches into it; else each
   * of the smaller ones is a space of its own, but for those on whose floor a module of another bay
   * stands. A space that the host has there anyway stands for the bays in it.
   */
  void addEmptyBays() {
    List<Space> there = new ArrayList<>(spaces.values());
    List<Bay> open = new ArrayList<>();
    for (Bay bay : bays.values()) {
      boolean cutUp =
          hasParts(bay)
              && (isReachedInto(bay) || there.stream().anyMatch(space -> reachesInto(space, bay)));
      if (bay.spaceWhenEmpty() && !isTaken(bay) && !cutUp) {
        open.add(bay);
      }
    }
    List<Bay> chosen = new ArrayList<>();
    open.sort(Comparator.comparingLong((Bay bay) -> -bay.box().volumeMm3()));
    for (Bay bay : open) {
      boolean isPart = chosen.stream().anyMatch(whole -> isPart(bay, whole));
      boolean isStoodFor = there.stream().anyMatch(space -> standsFor(space, bay));
      if (!isPart && !isStoodFor) {
        chosen.add(bay);
      }
    }
    for (Bay bay : bays.values()) {
      if (chosen.contains(bay)) {
        addEmptyBay(bay);
      }
    }
  }

  private boolean isTaken(Bay bay) {
    for (FittedModule module : modules.values()) {
      boolean fromElsewhere =
          module.bay().hostId().equals(bay.hostId()) && standsInTheMiddle(module.box(), bay.box());
      if (fromElsewhere || module.bay().id().equals(bay.id())) {
        return true;
      }
    }
    return false;
  }

  private static boolean standsInTheMiddle(BoxMm module, BoxMm bay) {
    return isBetween(bay.minXMm() + bay.maxXMm(), module.minXMm(), module.maxXMm())
        && isBetween(bay.minYMm() + bay.maxYMm(), module.minYMm(), module.maxYMm())
        && module.minZMm() <= bay.minZMm()
        && module.maxZMm() > bay.minZMm();
  }

  private boolean hasParts(Bay bay) {
    return bays.values().stream().anyMatch(other -> other.spaceWhenEmpty() && isPart(other, bay));
  }

  private boolean isReachedInto(Bay bay) {
    FittedModule host = modules.get(bay.hostId());
    List<String> hosts = host == null ? List.of() : chain(true, host, host.inModules());
    for (FittedModule module : modules.values()) {
      if (!hosts.contains(module.module().id()) && Boxes.overlap(module.box(), bay.box())) {
        return true;
      }
    }
    return false;
  }

  private static boolean reachesInto(Space space, Bay bay) {
    return space.hostId().equals(bay.hostId()) && Boxes.overlap(space.box(), bay.box());
  }

  private static boolean standsFor(Space space, Bay bay) {
    return space.hostId().equals(bay.hostId()) && holdsMiddle(space.box(), bay.box());
  }

  /** Whether a bay has its middle in a larger one of the same host. */
  private static boolean isPart(Bay bay, Bay whole) {
    return bay.hostId().equals(whole.hostId())
        && bay.box().volumeMm3() < whole.box().volumeMm3()
        && holdsMiddle(whole.box(), bay.box());
  }

  private static boolean holdsMiddle(BoxMm whole, BoxMm part) {
    return isBetween(part.minXMm() + part.maxXMm(), whole.minXMm(), whole.maxXMm())
        && isBetween(part.minYMm() + part.maxYMm(), whole.minYMm(), whole.maxYMm())
        && isBetween(part.minZMm() + part.maxZMm(), whole.minZMm(), whole.maxZMm());
  }

  private static boolean isBetween(int twice, int from, int to) {
    return twice > 2 * from && twice < 2 * to;
  }

  private void addEmptyBay(Bay bay) {
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

  /** A host, if it counts, and all that it is in or on. */
  static List<String> chain(boolean include, FittedModule host, List<String> outer) {
    List<String> ids = new ArrayList<>();
    if (include) {
      ids.add(host.module().id());
    }
    ids.addAll(outer);
    return ids;
  }

  static AccessAxis axisOf(Facing facing) {
    return switch (facing) {
      case LEFT -> AccessAxis.LEFT;
      case RIGHT -> AccessAxis.RIGHT;
      case REAR -> AccessAxis.REAR;
    };
  }
}
