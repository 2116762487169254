package kitstow.planner.report;

import java.util.List;
import java.util.Optional;
import kitstow.planner.statics.Margin;

/**
 * The one-line answer on mass limits: within, within on paper only, or over, by the tightest limit.
 *
 * @param kind what it is
 * @param tightest the reading that decides it; absent only where no limit applies
 */
public record Verdict(Margin.Verdict kind, Optional<LimitReading> tightest) {
  /**
   * Verdict over the tightest reading of every limit: the gravest kind, then the smallest margin as
   * a share of its limit.
   */
  static Verdict of(List<LimitReading> tightestFirst) {
    for (Margin.Verdict kind :
        List.of(Margin.Verdict.OVER, Margin.Verdict.ON_PAPER_ONLY, Margin.Verdict.WITHIN)) {
      for (LimitReading reading : tightestFirst) {
        if (reading.margin().verdict() == kind) {
          return new Verdict(kind, Optional.of(reading));
        }
      }
    }
    return new Verdict(Margin.Verdict.WITHIN, Optional.empty());
  }
}
