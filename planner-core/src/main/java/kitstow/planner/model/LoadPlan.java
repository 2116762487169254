package kitstow.planner.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * A plan: which bay each module stands in and where each item is. What is not placed stays home.
 *
 * @param scenarioId the scenario it was made for
 * @param moduleBays bay id by module id; a module that is not named is left out
 * @param placements placed units
 * @param origin how it came to be
 */
public record LoadPlan(
    String scenarioId, Map<String, String> moduleBays, List<Placement> placements, Origin origin) {
  /** Copies its collections, keeping their order. */
  public LoadPlan {
    moduleBays = Collections.unmodifiableMap(new LinkedHashMap<>(moduleBays));
    placements = Collections.unmodifiableList(new ArrayList<>(placements));
  }

  /**
   * How a plan came to be; no clock in it.
   *
   * @param packedBy "hand" or "solver"
   * @param seed random seed of the solver
   * @param steps steps the solver took
   * @param momentStepDeciNm step in which the solver compared moments, in tenths of a newton metre
   */
  public record Origin(
      String packedBy, OptionalLong seed, OptionalLong steps, OptionalLong momentStepDeciNm) {
    /** Packed by hand. */
    public static final Origin HAND =
        new Origin("hand", OptionalLong.empty(), OptionalLong.empty(), OptionalLong.empty());
  }
}
