package kitstow.tui.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.StateFigures;
import kitstow.planner.statics.HighestCentre;

/**
 * The states that tell a trip: start and end of each leg, the worst of each figure, and every state
 * that another part of the report names.
 */
final class TellingStates {
  private TellingStates() {}

  static List<StateFigures> of(CheckReport report) {
    Set<String> ids = new LinkedHashSet<>(endsOfLegs(report.states()));
    for (Comparator<StateFigures> worst :
        List.<Comparator<StateFigures>>of(
            Comparator.comparingLong(one -> one.axles().totalG()),
            Comparator.comparingDouble(one -> one.axles().frontKg()),
            Comparator.comparingDouble(one -> -one.axles().frontKg()),
            Comparator.comparingDouble(one -> one.axles().rearKg()),
            Comparator.comparingLong(one -> one.moment().halfGMm()))) {
      report.states().stream()
          .filter(StateFigures::moving)
          .reduce((a, b) -> worst.compare(b, a) > 0 ? b : a)
          .ifPresent(one -> ids.add(one.state().id()));
    }
    for (LimitReading reading : report.tightest()) {
      ids.add(reading.state().id());
    }
    for (LimitReading reading : report.certification()) {
      ids.add(reading.state().id());
    }
    for (Finding finding : report.findings()) {
      ids.add(finding.stateId());
    }
    report.highestCentre().map(HighestCentre::stateId).ifPresent(ids::add);
    return report.states().stream().filter(one -> ids.contains(one.state().id())).toList();
  }

  /** The first and the last moving state of each leg. */
  private static List<String> endsOfLegs(List<StateFigures> states) {
    Map<String, StateFigures> first = new LinkedHashMap<>();
    Map<String, StateFigures> last = new LinkedHashMap<>();
    for (StateFigures figures : states) {
      if (figures.moving()) {
        String leg = figures.state().legId().orElse("");
        first.putIfAbsent(leg, figures);
        last.put(leg, figures);
      }
    }
    List<String> ids = new ArrayList<>();
    first.values().forEach(one -> ids.add(one.state().id()));
    last.values().forEach(one -> ids.add(one.state().id()));
    return ids;
  }
}
