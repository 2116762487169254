package kitstow.planner.rules;

import java.util.List;
import java.util.OptionalLong;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.Lever;
import kitstow.planner.statics.LoadLine;

/** Axle loads as lines: every body counts by its lever. */
final class AxleLines {
  private AxleLines() {}

  /** Card of a rule about the tyres of an axle. */
  static RuleCard tyreCard(RuleId rule, String title) {
    return new RuleCard(
        rule,
        title,
        "UN Regulation 54 Annex 4, read in public charts",
        SourceStatus.READ_SECOND_HAND,
        "",
        /* overridable= */ false);
  }

  static List<LoadLine> rear(
      RuleId rule, String subjectId, OptionalLong limitG, Loading loading, LoadState state) {
    return lines(rule, subjectId, limitG, loading, state, /* rear= */ true);
  }

  static List<LoadLine> front(
      RuleId rule, String subjectId, OptionalLong limitG, Loading loading, LoadState state) {
    return lines(rule, subjectId, limitG, loading, state, /* rear= */ false);
  }

  private static List<LoadLine> lines(
      RuleId rule,
      String subjectId,
      OptionalLong limitG,
      Loading loading,
      LoadState state,
      boolean rear) {
    if (state.kind() == LoadKind.PARKED || !limitG.isPresent()) {
      return List.of();
    }
    int wheelbase = loading.scenario().ute().wheelbaseMm();
    LoadLine.Builder line =
        LoadLine.of(rule, subjectId, limitG.getAsLong(), /* denominator= */ 2L * wheelbase);
    for (int i = 0; i < state.size(); i++) {
      BoxMm box = loading.bodies().get(i).box();
      long centre = (long) box.minXMm() + box.maxXMm() + 2L * state.shift(i).xMm();
      line.add(i, rear ? Lever.rearHalfGMm(1L, centre) : Lever.frontHalfGMm(1L, centre, wheelbase));
    }
    return List.of(line.build());
  }
}
