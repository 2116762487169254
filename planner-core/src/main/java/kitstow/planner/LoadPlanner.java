package kitstow.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import kitstow.planner.advice.HomeReasons;
import kitstow.planner.advice.Levers;
import kitstow.planner.advice.Mends;
import kitstow.planner.advice.PackList;
import kitstow.planner.advice.PlanFigures;
import kitstow.planner.advice.RoomLeft;
import kitstow.planner.advice.Spots;
import kitstow.planner.audit.Audit;
import kitstow.planner.audit.AuditFinding;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.report.HomeReason;
import kitstow.planner.report.Lever;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.Mend;
import kitstow.planner.report.SpaceRoom;
import kitstow.planner.rules.Situation;
import kitstow.planner.solver.Floor;
import kitstow.planner.solver.PlanSearch;
import kitstow.planner.statics.Bound;

/**
 * The door to the planner for screens, the command line and apps: find a plan, judge a plan.
 * Thread-safe; no files, no reflection on its records; the clock is read only to keep a time limit.
 */
public final class LoadPlanner {
  private LoadPlanner() {}

  /**
   * Judges a plan by the rules and, independently, by the audit.
   *
   * @throws IllegalArgumentException if the plan names things the scenario does not have
   * @throws JudgesDifferException if the two judges do not find the same: a fault of ours, not of
   *     the plan
   */
  public static CheckReport check(Scenario scenario, LoadPlan plan) {
    Loading loading = Loading.of(scenario, plan);
    Situation situation = Situation.of(loading);
    CheckReport report = CheckReport.of(situation);
    List<LoadState> judged = new ArrayList<>();
    for (LoadState state : situation.judgedStates()) {
      if (state.kind() != LoadKind.CERTIFICATION) {
        judged.add(state);
      }
    }
    Set<String> byRules = new TreeSet<>();
    for (Finding finding : report.brokenFindings()) {
      byRules.add(finding.key());
    }
    // The audit knows no reasons: what is overridden is broken all the same.
    for (Finding finding : report.overriddenFindings()) {
      if (finding.rule().binding()) {
        byRules.add(finding.key());
      }
    }
    Set<String> byAudit = new TreeSet<>();
    for (AuditFinding finding : Audit.of(loading, judged)) {
      byAudit.add(finding.rule() + " " + String.join(" ", finding.subjectIds()));
    }
    if (!byRules.equals(byAudit)) {
      throw new JudgesDifferException(byRules, byAudit);
    }
    return report;
  }

  /** Why each unit at home goes into no space, all else staying where it is. */
  public static List<HomeReason> homeReasons(CheckReport report) {
    return HomeReasons.of(report.situation());
  }

  /**
   * Where a unit would go, aboard or at home now, everything else staying where it is.
   *
   * @throws IllegalArgumentException if the scenario has no such unit
   */
  public static Spots spots(Scenario scenario, LoadPlan plan, String itemId, int unit) {
    return Spots.of(scenario, plan, itemId, unit);
  }

  /** What still goes into each space. */
  public static List<SpaceRoom> roomLeft(CheckReport report) {
    return RoomLeft.of(report.situation());
  }

  /** What would put each broken rule right: changes that were carried out and judged again. */
  public static List<Mend> mends(CheckReport report) {
    return Mends.of(report);
  }

  /**
   * Which single changes buy the most on the tightest limit, best first; each was carried out and
   * judged again.
   */
  public static List<Lever> levers(CheckReport report) {
    List<LimitReading> tightest = report.tightest();
    return tightest.isEmpty() ? List.of() : Levers.on(report.situation(), tightest.get(0));
  }

  /**
   * How far a judged plan can be from the best possible one for the items it places, its modules
   * where they are; takes about a second. Absent where the plan itself breaks or overrides a rule
   * that the floor counts on.
   */
  public static Optional<Bound> bound(CheckReport report) {
    Settings settings = report.situation().settings();
    List<Finding> notKept = new ArrayList<>(report.brokenFindings());
    notKept.addAll(report.overriddenFindings());
    for (Finding finding : notKept) {
      if (Floor.countsOn(finding.rule(), settings)) {
        return Optional.empty();
      }
    }
    return Optional.of(Floor.of(report.situation().loading(), Floor.USUAL_ITERATIONS));
  }

  /** The figures by which a judged plan is set beside others. */
  public static PlanFigures figures(CheckReport report) {
    return PlanFigures.of(report);
  }

  /** The same plan judged again with nothing on the tow ball. */
  public static CheckReport withoutTrailer(CheckReport report) {
    Loading loading = report.situation().loading();
    return check(PlanFigures.withoutTrailer(loading.scenario()), loading.plan());
  }

  /**
   * The rig of a judged plan judged again on a day at work: fit-out, emergency gear and tanks as
   * they are, the driver alone, no trailer, the trip's other gear left, one day on the road.
   */
  public static CheckReport workDay(CheckReport report) {
    Loading loading = report.situation().loading();
    return check(PlanFigures.workDay(loading.scenario()), PlanFigures.workDay(loading));
  }

  /** In which order a judged plan is packed, and where everything is. */
  public static PackList packList(CheckReport report) {
    return PackList.of(report.situation());
  }

  /**
   * Finds a plan and judges it like any other. What it returns has passed the audit.
   *
   * @param request scenario, seed and limits
   * @param progress told of every better plan, from the searching threads
   * @param cancelled asked a few times a second; when true the best plan so far is returned
   * @throws JudgesDifferException if the two judges of the plan do not agree
   * @throws UnsoundPlanException if the search has made a plan that breaks a rule of place, company
   *     or emergency reach: a fault of ours
   */
  public static CheckReport plan(
      PlanSearch.Request request, PlanSearch.Progress progress, BooleanSupplier cancelled) {
    PlanSearch.Best best = PlanSearch.solve(request, progress, cancelled);
    CheckReport report = check(request.scenario(), best.plan());
    Set<String> withoutGear = brokenWithoutGear(request.scenario(), best.plan());
    Set<String> unsound = new TreeSet<>();
    for (Finding finding : report.brokenFindings()) {
      boolean ofTheSearch =
          switch (finding.rule().kind()) {
            case GEOMETRY, COMPANY, REACH -> true;
            case LIMIT, NEED, PREFERENCE -> false;
          };
      if (ofTheSearch && !withoutGear.contains(finding.key())) {
        unsound.add(finding.key());
      }
    }
    if (!unsound.isEmpty()) {
      throw new UnsoundPlanException(unsound);
    }
    return report;
  }

  /** What is broken by the rig itself: modules that do not fit the only bays they may have. */
  private static Set<String> brokenWithoutGear(Scenario scenario, LoadPlan plan) {
    LoadPlan bare =
        new LoadPlan(plan.scenarioId(), plan.moduleBays(), new ArrayList<>(), plan.origin());
    Set<String> keys = new TreeSet<>();
    for (Finding finding :
        CheckReport.of(Situation.of(Loading.of(scenario, bare))).brokenFindings()) {
      keys.add(finding.key());
    }
    return keys;
  }
}
