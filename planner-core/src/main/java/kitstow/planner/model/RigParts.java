package kitstow.planner.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a rig consists of while it is put together, each by its id. */
final class RigParts {
  final Map<String, Bay> bays = new LinkedHashMap<>();
  final Map<String, FittedModule> modules = new LinkedHashMap<>();
  final Map<String, Space> spaces = new LinkedHashMap<>();
  final Map<String, FittedDoor> doors = new LinkedHashMap<>();
  final Map<String, FittedTank> tanks = new LinkedHashMap<>();

  /** Makes spaces of bays that are left empty and may be. */
  void addEmptyBays() {
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
