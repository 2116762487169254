package kitstow.planner.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;

/**
 * Makes spaces of bays that are left empty and may be. A bay with smaller ones in it, such as the
 * floor of a whole side, is one space with them as long as no module reaches into it; else each of
 * the smaller ones is a space of its own, but for those on whose floor a module of another bay
 * stands. A space that the host has there anyway stands for the bays in it. On the deck there is
 * none where a canopy stands.
 */
final class EmptyBays {
  private final RigParts parts;
  private final Optional<BoxMm> canopy;
  private final List<Space> there;

  /**
   * Bays of a rig whose modules are in their places.
   *
   * @param canopy the canopy's outside, in the vehicle frame
   */
  EmptyBays(RigParts parts, Optional<BoxMm> canopy) {
    this.parts = parts;
    this.canopy = canopy;
    this.there = new ArrayList<>(parts.spaces.values());
  }

  /** Adds the spaces. */
  void addSpaces() {
    List<Bay> open = new ArrayList<>();
    for (Bay bay : parts.bays.values()) {
      if (bay.spaceWhenEmpty() && !isTaken(bay) && !isCutUp(bay) && !isCovered(bay)) {
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
    for (Bay bay : parts.bays.values()) {
      if (chosen.contains(bay)) {
        addEmptyBay(bay);
      }
    }
  }

  private boolean isCutUp(Bay bay) {
    return hasParts(bay)
        && (isReachedInto(bay) || there.stream().anyMatch(space -> reachesInto(space, bay)));
  }

  private boolean isCovered(Bay bay) {
    return bay.hostId().equals(Rig.TRAY)
        && canopy.filter(outside -> Boxes.overlap(outside, bay.box())).isPresent();
  }

  private boolean isTaken(Bay bay) {
    for (FittedModule module : parts.modules.values()) {
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
    return parts.bays.values().stream()
        .anyMatch(other -> other.spaceWhenEmpty() && isPart(other, bay));
  }

  private boolean isReachedInto(Bay bay) {
    FittedModule host = parts.modules.get(bay.hostId());
    List<String> hosts = host == null ? List.of() : RigParts.chain(true, host, host.inModules());
    for (FittedModule module : parts.modules.values()) {
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
    FittedModule host = parts.modules.get(bay.hostId());
    parts.spaces.put(
        bay.id(),
        new Space(
            bay.id(),
            bay.title(),
            bay.hostId(),
            bay.box(),
            bay.ratings(),
            RigParts.axisOf(bay.facing()),
            bay.doorIds(),
            bay.zone(),
            bay.environment(),
            bay.airId(),
            Optional.empty(),
            host == null ? List.of() : RigParts.chain(bay.moves(), host, host.movesWith()),
            host == null ? List.of() : RigParts.chain(true, host, host.inModules())));
  }
}
