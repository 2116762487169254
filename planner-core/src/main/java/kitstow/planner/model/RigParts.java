package kitstow.planner.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a rig consists of while it is put together, each by its id. */
final class RigParts {
  final Map<String, Bay> bays = new LinkedHashMap<>();
  final Map<String, FittedModule> modules = new LinkedHashMap<>();
  final Map<String, Space> spaces = new LinkedHashMap<>();
  final Map<String, FittedDoor> doors = new LinkedHashMap<>();
  final Map<String, FittedTank> tanks = new LinkedHashMap<>();

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
