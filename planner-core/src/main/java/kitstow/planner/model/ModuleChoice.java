package kitstow.planner.model;

import java.util.List;

/**
 * A module of the scenario and the bays it may stand in: one bay fixes it, several leave the choice
 * to the plan. It may be left out only when it is not a must.
 *
 * @param module the module under its scenario id
 * @param bayIds bays it may stand in, at least one
 * @param need must, should or nice
 * @param value what leaving it out costs, like an item's
 */
public record ModuleChoice(FitOutModule module, List<String> bayIds, Need need, int value) {
  /** Copies its collections. */
  public ModuleChoice {
    bayIds = List.copyOf(bayIds);
  }

  /** The same choice for a module with something changed. */
  public ModuleChoice withModule(FitOutModule other) {
    return new ModuleChoice(other, bayIds, need, value);
  }

  /** The same module with other bays it may stand in. */
  public ModuleChoice withBays(List<String> others) {
    return new ModuleChoice(module, others, need, value);
  }
}
