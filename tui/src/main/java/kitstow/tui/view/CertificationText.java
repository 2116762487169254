package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;

/** The certification case, which decides nothing and is told apart. */
final class CertificationText {
  private CertificationText() {}

  static List<String> lines(
      CheckReport report, Subjects subjects, StateNames names, Page page, boolean all) {
    List<String> lines = new ArrayList<>();
    double seatKg = report.situation().settings().seatAllowanceG() / 1000.0;
    lines.addAll(
        page.paragraph(
            "",
            "The fit-out as built: no gear, tanks full, "
                + Figures.near(seatKg, 1)
                + " kg in every seat. Told apart; it does not change the answer."));
    List<LimitReading> loaded =
        report.certification().stream().filter(one -> one.margin().loadKg() > 0.0).toList();
    lines.addAll(
        loaded.isEmpty()
            ? List.of("No limit applies.")
            : all
                ? LimitsTable.lines(loaded, subjects, names, page)
                : LimitsTable.most(loaded, subjects, names, page));
    return lines;
  }
}
