package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Lever;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.Mend;

/** Which single changes buy the most on the tightest limit. */
public final class LeversText {
  private LeversText() {}

  /** The limit, and a row for each lever. */
  public static List<String> lines(
      CheckReport report, List<Lever> levers, Subjects subjects, Page page) {
    if (report.tightest().isEmpty()) {
      return List.of();
    }
    LimitReading tightest = report.tightest().get(0);
    String limit = subjects.limit(tightest.rule(), tightest.subjectId());
    if (levers.isEmpty()) {
      return page.paragraph(
          "", "No single change takes load off " + limit + " without making anything else worse.");
    }
    Table table =
        new Table()
            .figures("Gains kg")
            .figures("Then left")
            .figures("N·m")
            .rest("Need")
            .rest("Change");
    for (Lever lever : levers) {
      table.row(
          Figures.marginKg(lever.gainKg()),
          Figures.marginKg(lever.marginKg()),
          signed(lever.momentChangeNm()),
          need(lever, report.situation().loading()),
          change(lever, subjects));
    }
    List<String> lines =
        new ArrayList<>(
            page.paragraph(
                "",
                "On "
                    + limit
                    + ", "
                    + Figures.marginKg(tightest.margin().marginKg())
                    + " kg left now; each change alone, carried out and judged again, and nothing"
                    + " else breaks or gets worse by it:"));
    lines.add("");
    lines.addAll(table.lines(page));
    return lines;
  }

  /** What it costs to leave a thing: how much it is wanted. */
  private static String need(Lever lever, Loading loading) {
    if (lever.change() instanceof Lever.Repacked repacked
        && repacked.step().what() == Mend.What.LEAVE_HOME) {
      PlacedItem unit = loading.placed().get(repacked.step().key());
      return unit == null
          ? ""
          : unit.item().need().name().toLowerCase(Locale.ROOT) + " " + unit.item().value();
    }
    return "";
  }

  private static String change(Lever lever, Subjects subjects) {
    if (lever.change() instanceof Lever.Repacked repacked) {
      return MendText.step(repacked.step(), subjects);
    }
    if (lever.change() instanceof Lever.Drained drained) {
      return "start with "
          + Figures.near(drained.ml() / 1000.0, 1)
          + " L less in "
          + subjects.any(drained.tankId())
          + " ("
          + Figures.near(drained.kg(), 1)
          + " kg)";
    }
    throw new IllegalStateException("no such change: " + lever.change());
  }

  private static String signed(double newtonMetres) {
    double rounded = Math.rint(newtonMetres);
    return (rounded > 0.0 ? "+" : "") + Figures.near(rounded == 0.0 ? 0.0 : rounded, 0);
  }
}
