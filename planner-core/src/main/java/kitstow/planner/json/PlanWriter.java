package kitstow.planner.json;

import java.util.Map;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Placement;

/** Writes a plan. The same plan always makes the same text; reading it gives the same plan. */
public final class PlanWriter {
  private PlanWriter() {}

  /**
   * Writes a plan.
   *
   * @return JSON text, ended by a line feed; corners in whole millimetres
   */
  public static String write(LoadPlan plan) {
    return Output.text(
        out -> {
          out.whole("schemaVersion", 1);
          out.text("kind", "plan");
          out.text("scenario", plan.scenarioId());
          out.text("packedBy", plan.origin().packedBy());
          out.number("seed", plan.origin().seed(), 0);
          out.number("steps", plan.origin().steps(), 0);
          out.number(
              "momentStepNm", plan.origin().momentStepDeciNm(), Measure.MOMENT_STEP.decimals());
          out.object("modules", fields -> modules(plan.moduleBays(), fields));
          out.listAlways("placements", plan.placements(), placement -> write(placement, out));
        });
  }

  private static void modules(Map<String, String> moduleBays, Output out) {
    moduleBays.forEach(out::text);
  }

  private static void write(Placement placement, Output out) {
    out.text("item", placement.itemId());
    out.whole("unit", placement.unit());
    out.text("space", placement.spaceId());
    if (placement.shape() != 0) {
      out.whole("shape", placement.shape());
    }
    out.word("turn", placement.turn());
    out.point(
        "cornerMm", placement.corner().xMm(), placement.corner().yMm(), placement.corner().zMm());
  }
}
