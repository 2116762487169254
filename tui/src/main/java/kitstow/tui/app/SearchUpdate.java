package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.StateFigures;
import kitstow.tui.edit.Design;

/** Searching for a plan: start, stop, what is found, and how it ends. */
final class SearchUpdate {
  /** Time of a search. */
  static final double USUAL_SECONDS = 15.0;

  /** Time of a longer one. */
  static final double LONG_SECONDS = 60.0;

  private SearchUpdate() {}

  static Step start(AppState state, Work work, boolean longer) {
    double seconds = longer ? LONG_SECONDS : USUAL_SECONDS;
    boolean fromNothing = longer || work.loading().placed().isEmpty();
    int number = work.past().done().size() + 1;
    Activity.Searching search =
        new Activity.Searching(
            number,
            work.design(),
            seconds,
            /* seconds= */ 0.0,
            /* momentNm= */ 0.0,
            /* unitsHome= */ -1,
            /* stopping= */ false);
    return Step.to(
        state.with(work.with(search)).saying("Searching; s stops it and keeps the best."),
        new Effect.Search(number, work.design(), seconds, fromNothing));
  }

  static Step stop(AppState state, Work work, Activity.Searching search) {
    return Step.to(
        state.with(work.with(search.stopped())).saying("Stopping ..."), new Effect.StopSearch());
  }

  static Step ticked(AppState state, Msg.Ticked ticked) {
    return of(state, ticked.number())
        .map(
            work ->
                Step.to(state.with(work.with(work.searching().orElseThrow().at(ticked.seconds())))))
        .orElse(Step.to(state));
  }

  static Step better(AppState state, Msg.Better better) {
    return of(state, better.number())
        .map(
            work -> {
              Design design = work.design().with(better.plan());
              Activity.Searching search =
                  work.searching().orElseThrow().found(better.momentNm(), better.unitsHome());
              boolean first = work.searching().orElseThrow().unitsHome() < 0;
              AppState told = first ? state.saying("") : state;
              return Step.to(told.with(work.with(search).with(design)), new Effect.Judge(design));
            })
        .orElse(Step.to(state));
  }

  static Step ended(AppState state, Msg.SearchEnded ended) {
    Optional<Work> of = of(state, ended.number());
    if (of.isEmpty()) {
      return Step.to(state);
    }
    Work work = of.get();
    Activity.Searching search = work.searching().orElseThrow();
    Work free = work.with(Activity.NONE);
    CheckReport report = ended.report();
    if (!better(report, ended.before())) {
      Design before = search.before();
      return Step.to(
          state
              .with(free.with(before))
              .saying("Nothing better was found; all stays as it was. s searches on."),
          new Effect.Judge(before));
    }
    Design found = work.design().with(report.situation().loading().plan());
    Work judged =
        free.with(found)
            .with(report)
            .with(work.past().with(new Change("search", search.before(), found)));
    int home = judged.loading().home().size();
    Step step =
        ActionUpdate.advised(
            state
                .with(judged)
                .saying(
                    "Found: "
                        + (home == 0 ? "all is aboard." : home + " at home; 4 says why.")
                        + " s searches on, u goes back."));
    return step.and(new Effect.KeepSafe(work.source(), found)).and(new Effect.FindFloor(report));
  }

  /** Whether a plan is to be preferred to what was there: what broke a rule always gives way. */
  private static boolean better(CheckReport found, CheckReport before) {
    int homeBefore = before.situation().loading().home().size();
    int homeNow = found.situation().loading().home().size();
    if (before.broken() || homeNow != homeBefore) {
      return before.broken() || homeNow < homeBefore;
    }
    return momentNm(found) < momentNm(before);
  }

  private static double momentNm(CheckReport report) {
    return report
        .worstMoment()
        .map(StateFigures::moment)
        .map(one -> one.newtonMetres())
        .orElse(0.0);
  }

  /** The work for which a search of a number goes on. */
  private static Optional<Work> of(AppState state, int number) {
    return state
        .work()
        .filter(work -> work.searching().filter(search -> search.number() == number).isPresent());
  }

  /** Effects that end a search when what it is for is closed. */
  static List<Effect> abandon(Work work) {
    return work.searching().isPresent() ? List.of(new Effect.StopSearch()) : List.of();
  }
}
