package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Mend;
import kitstow.planner.report.StateFigures;
import kitstow.planner.statics.CentreOfMass;

/** A report for people: the answer first, the figures behind it, drawings, cautions. */
public final class ReportText {
  private final CheckReport report;
  private final List<Mend> mends;
  private final Loading loading;
  private final Subjects subjects;
  private final StateNames states;
  private final Page page;
  private final boolean all;

  /** A report on a page, its tables and findings cut to what matters most. */
  public ReportText(CheckReport report, Page page) {
    this(report, List.of(), page, /* all= */ false);
  }

  /**
   * A report on a page.
   *
   * @param mends what would put its findings right
   * @param all whether every limit, state and note is listed
   */
  public ReportText(CheckReport report, List<Mend> mends, Page page, boolean all) {
    this.all = all;
    this.mends = List.copyOf(mends);
    this.report = report;
    this.loading = report.situation().loading();
    this.subjects = new Subjects(loading);
    this.states = new StateNames(report.states());
    this.page = page;
  }

  /** The whole report, one line for each line of text. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(title());
    lines.add("");
    lines.addAll(answer());
    section(lines, "Limits, tightest first", limits());
    section(
        lines,
        "Drawers, slides and shelves",
        RatingsText.lines(report.tightest(), loading, subjects, states, page));
    section(lines, "States of the trip", states());
    section(
        lines,
        "Supplies",
        SuppliesText.left(loading, report.situation().timeline().stocks(), page));
    section(lines, "Findings", findings());
    section(lines, "Lifts for two", LiftText.lines(loading, subjects, page, all));
    section(lines, "Stays home", HomeText.lines(loading, subjects, page));
    section(
        lines, "Certification case", CertificationText.lines(report, subjects, states, page, all));
    section(lines, "How well the masses are known", TrustText.lines(report, states, page));
    section(lines, "Where everything is", drawings());
    section(lines, "Cautions", Cautions.lines(page));
    return lines;
  }

  private void section(List<String> lines, String heading, List<String> text) {
    if (!text.isEmpty()) {
      lines.addAll(page.heading(heading));
      lines.addAll(text);
    }
  }

  /** What was judged. */
  public List<String> title() {
    LoadPlan plan = loading.plan();
    int units = loading.placed().size();
    int home = loading.home().size();
    List<String> lines = new ArrayList<>();
    lines.addAll(
        page.paragraph(
            "Scenario  ", loading.scenario().title() + " (" + loading.scenario().id() + ")"));
    if (!loading.scenario().note().isEmpty()) {
      lines.addAll(page.paragraph("          ", loading.scenario().note()));
    }
    lines.addAll(page.paragraph("Vehicle   ", vehicle()));
    lines.addAll(
        page.paragraph(
            "Plan      ",
            "packed by "
                + plan.origin().packedBy()
                + ": "
                + loading.rig().modules().size()
                + " modules fitted, "
                + units
                + " units of gear aboard, "
                + home
                + " at home"));
    return lines;
  }

  private String vehicle() {
    StringBuilder text = new StringBuilder(UteText.of(loading.scenario().ute()));
    loading.scenario().tray().ifPresent(tray -> text.append("; ").append(tray.title()));
    loading.scenario().canopy().ifPresent(canopy -> text.append("; ").append(canopy.title()));
    return text.toString();
  }

  /** The answer in one sentence. */
  public List<String> answer() {
    return Answer.lines(report, subjects, states, page);
  }

  /** The tightest reading of every limit. */
  public List<String> limits() {
    List<String> lines =
        new ArrayList<>(
            all
                ? LimitsTable.lines(report.tightest(), subjects, states, page)
                : LimitsTable.most(report.tightest(), subjects, states, page));
    lines.add("");
    lines.addAll(
        page.paragraph(
            "",
            "kg; loads rounded up, margins down. Band: by how much the masses behind a margin may"
                + " be off, 19 times in 20. State: where the limit is tightest, by its number in"
                + " the next table."));
    return lines;
  }

  /** Figures of every state and what the moment means. */
  public List<String> states() {
    List<StateFigures> shown = all ? report.states() : TellingStates.of(report);
    List<String> lines = new ArrayList<>(StatesTable.lines(shown, states, page));
    int others = report.states().size() - shown.size();
    if (others > 0) {
      lines.addAll(
          page.paragraph(
              "",
              "and "
                  + others
                  + (others == 1 ? " state" : " states")
                  + " in between or less telling (check --all lists them)"));
    }
    lines.add("");
    lines.addAll(MomentText.lines(report, states, page));
    lines.addAll(BallText.lines(loading, page));
    lines.addAll(OutsideText.lines(loading, page));
    lines.addAll(SuppliesText.lines(loading, report.situation().timeline().shortfalls(), page));
    return lines;
  }

  /** What is broken, doubtful or worth knowing. */
  public List<String> findings() {
    return new FindingsText(subjects, states, mends, page, all).lines(report.findings());
  }

  /** Drawings to scale with their legend. */
  public List<String> drawings() {
    Optional<StateFigures> heaviest = TrustText.heaviestMoving(report);
    CentreOfMass centre =
        heaviest.map(StateFigures::centre).orElse(new CentreOfMass(0.0, 0.0, 0.0));
    Drawings drawings = new Drawings(loading, centre, page);
    List<String> lines = new ArrayList<>();
    heaviest.ifPresent(
        figures ->
            lines.addAll(
                page.paragraph(
                    "",
                    "Everything closed; the centre of mass is that of "
                        + states.named(figures.state().id())
                        + ", the heaviest on the move.")));
    lines.addAll(drawings.lines());
    lines.add("");
    lines.addAll(drawings.legend(subjects));
    return lines;
  }
}
