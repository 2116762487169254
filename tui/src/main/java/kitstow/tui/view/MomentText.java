package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.StateFigures;
import kitstow.planner.statics.HighestCentre;
import kitstow.planner.trip.AxleKerb;
import kitstow.planner.trip.EmptyUte;

/** What the rear overhang moment means and what it does to the front axle. */
final class MomentText {
  private MomentText() {}

  static List<String> lines(CheckReport report, StateNames names, Page page) {
    List<String> lines = new ArrayList<>();
    lines.addAll(
        page.paragraph(
            "",
            "kg rounded up; Side: the heavier side and by how much. N·m is the rear overhang"
                + " moment: an index to compare plans with, not the frame's bending moment, since"
                + " leaf springs hold the frame at two hangers; the ute's own empty mass is left"
                + " out. A note is judged by no limit."));
    report.worstMoment().ifPresent(worst -> lines.addAll(worst(worst, report, names, page)));
    report.highestCentre().ifPresent(highest -> lines.addAll(highest(highest, names, page)));
    return lines;
  }

  private static List<String> highest(HighestCentre highest, StateNames names, Page page) {
    return page.paragraph(
        "",
        "Highest centre of mass while moving: "
            + Figures.near(Math.ceil(highest.zMm()), 0)
            + " mm above the ground, "
            + (highest.fraction() > 0.0 ? "between " : "in ")
            + names.named(highest.stateId())
            + (highest.fraction() > 0.0 ? " and the next" : "")
            + ".");
  }

  private static List<String> worst(
      StateFigures worst, CheckReport report, StateNames names, Page page) {
    int wheelbaseMm = report.situation().loading().scenario().ute().wheelbaseMm();
    AxleKerb kerb = EmptyUte.kerbOf(report.situation().loading().scenario());
    double kerbKg = kerb.frontG() / 1000.0;
    double changeKg = worst.axles().frontKg() - kerbKg;
    return page.paragraph(
        "",
        "Largest while moving: "
            + Figures.near(Math.ceil(worst.moment().newtonMetres()), 0)
            + " N·m in "
            + names.named(worst.state().id())
            + ". It lifts "
            + Figures.loadKg(worst.moment().liftedOffFrontKg(wheelbaseMm))
            + " kg off the front axle, which then carries "
            + Figures.near(Math.abs(changeKg), 1)
            + " kg "
            + (changeKg < 0.0 ? "less" : "more")
            + " than at kerb ("
            + Figures.near(kerbKg, 1)
            + " kg).");
  }
}
