package kitstow.planner.model;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;

/**
 * A module in its bay.
 *
 * @param module the module
 * @param bay the bay it stands in
 * @param box its outside, closed, vehicle frame
 * @param movesWith ids of the modules whose slides carry the whole module, innermost first
 * @param inModules ids of the modules it stands in or on, innermost first
 */
public record FittedModule(
    FitOutModule module, Bay bay, BoxMm box, List<String> movesWith, List<String> inModules) {
  /** Copies its collections. */
  public FittedModule {
    movesWith = List.copyOf(movesWith);
    inModules = List.copyOf(inModules);
  }

  /** Where its moving part goes when pulled out, relative to closed; zero without a slide. */
  public PointMm pullOut() {
    int out = module.slide().isPresent() ? module.slide().get().extensionMm() : 0;
    return switch (bay.facing()) {
      case LEFT -> new PointMm(0, -out, 0);
      case RIGHT -> new PointMm(0, out, 0);
      case REAR -> new PointMm(out, 0, 0);
    };
  }
}
