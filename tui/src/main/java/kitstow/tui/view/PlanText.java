package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.Loading;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Mend;
import kitstow.planner.report.Searched;
import kitstow.planner.statics.Bound;

/** A plan that was searched for: how it was found, and the report on it. */
public final class PlanText {
  /** A search ends when its plan is as near the floor as this. */
  private static final double NEAR_PERCENT = 0.5;

  private final CheckReport report;
  private final Searched searched;
  private final List<Mend> mends;
  private final int threads;
  private final Page page;
  private final boolean all;

  /**
   * A plan on a page.
   *
   * @param mends what would put its findings right
   * @param threads searches of which it is the best
   * @param all whether every limit, state and note is listed
   */
  public PlanText(
      CheckReport report,
      Searched searched,
      List<Mend> mends,
      int threads,
      Page page,
      boolean all) {
    this.all = all;
    this.report = report;
    this.searched = searched;
    this.mends = List.copyOf(mends);
    this.threads = threads;
    this.page = page;
  }

  /** The whole text, one line for each line of it. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(search());
    lines.addAll(new ReportText(report, mends, page, all).lines());
    PackText pack = new PackText(LoadPlanner.packList(report), report.situation().loading(), page);
    section(lines, "Pack list", pack.packList());
    section(lines, "Where is what", pack.index());
    Subjects subjects = new Subjects(report.situation().loading());
    StateNames states = new StateNames(report.states());
    section(
        lines,
        "Why it stays home",
        new ReasonsText(searched.reasons(), report.situation().loading(), subjects, states, page)
            .lines());
    section(lines, "Levers", LeversText.lines(report, searched.levers(), subjects, page));
    section(lines, "Room left", RoomText.lines(searched.rooms(), subjects, states, page));
    return lines;
  }

  private void section(List<String> lines, String heading, List<String> text) {
    lines.addAll(page.heading(heading));
    lines.addAll(text);
  }

  /** How the plan was searched for and what it leaves. */
  public List<String> search() {
    Loading loading = report.situation().loading();
    int home = loading.home().size();
    int all = loading.placed().size() + home;
    StringBuilder text = new StringBuilder("seed ").append(searched.seed());
    searched.steps().ifPresent(steps -> text.append(", ").append(steps).append(" steps"));
    searched
        .secondsLimit()
        .ifPresent(
            limit ->
                text.append(", ")
                    .append(
                        limit == Math.rint(limit) ? Figures.near(limit, 0) : String.valueOf(limit))
                    .append(" s"));
    text.append(threads == 1 ? "" : ", the best of " + threads + " searches");
    text.append(": ").append(loading.placed().size()).append(" of ").append(all);
    text.append(" units aboard");
    report
        .worstMoment()
        .ifPresent(
            worst ->
                text.append(", rear overhang moment at most ")
                    .append(Figures.near(Math.ceil(worst.moment().newtonMetres()), 0))
                    .append(" N·m"));
    text.append(". ");
    text.append(home == 0 ? "Nothing stays home." : "Stays home: " + HomeText.inWords(loading));
    List<String> lines = new ArrayList<>(page.paragraph("Search    ", text.toString()));
    searched.bound().ifPresent(bound -> lines.addAll(page.paragraph("Floor     ", inWords(bound))));
    return lines;
  }

  /** How far the plan can be from the best. */
  private static String inWords(Bound bound) {
    return "with these items and the modules where they are no plan has less than "
        + Figures.near(Math.floor(bound.floorNm()), 0)
        + " N·m; this one is at most "
        + Figures.near(Math.ceil(bound.momentNm() - bound.floorNm()), 0)
        + " N·m above it: "
        + Figures.near(Math.ceil(bound.gapPercentOfWhole()), 0)
        + " % of the whole, "
        + Figures.near(Math.ceil(bound.gapMm()), 0)
        + " mm of mean place. "
        + (bound.gapPercentOfWhole() <= NEAR_PERCENT
            ? "That is near enough for a search to end before its time."
            : "The floor pours gear like water; the true best is usually nearer the plan.");
  }
}
