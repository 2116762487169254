package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.FittedTank;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.Lever;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.Mend;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.statics.OverhangMoment;

/**
 * Which single change buys the most on one limit: a unit turned, moved, swapped or left, a module
 * moved, a tank drained by half. The promising ones are carried out and the trip is run again.
 */
public final class Levers {
  private static final int MOST_OF_A_KIND = 4;
  private static final int JUDGED_OF_A_KIND = 8;

  /** What takes off less is no lever. */
  private static final double LEAST_GAIN_KG = 0.05;

  private final Situation situation;
  private final LimitReading limit;
  private final SameMasses sameMasses;
  private final Ledger before;
  private final double marginKg;
  private final double momentNm;

  /** A change, and how far over the limit it leaves the plan at a quick look. */
  private record Look(Change change, double overKg) {}

  private Levers(Situation situation, LimitReading limit, SameMasses sameMasses) {
    this.situation = situation;
    this.limit = limit;
    this.sameMasses = sameMasses;
    this.before = Ledger.of(situation);
    this.marginKg = marginKg(situation);
    this.momentNm = momentNm(situation);
  }

  /**
   * The levers on a limit, those that gain most first.
   *
   * @param limit the limit, in the state where it is tightest
   */
  public static List<Lever> on(Situation situation, LimitReading limit) {
    return SameMasses.of(situation.loading(), limit.state(), limit.rule(), limit.subjectId())
        .map(same -> new Levers(situation, limit, same).all())
        .orElse(List.of());
  }

  private List<Lever> all() {
    Loading loading = situation.loading();
    Changes changes = new Changes(loading);
    List<Change> found = new ArrayList<>();
    for (PlacedItem unit : Movers.mayStayHome(loading, Optional.of(sameMasses))) {
      found.add(Changes.leave(loading, unit));
    }
    if (limit.rule() != RuleId.GVM_LIMIT && limit.rule() != RuleId.GCM_LIMIT) {
      for (PlacedItem unit : Movers.heaviestOn(loading, sameMasses)) {
        found.addAll(changes.movesOf(unit));
        found.addAll(changes.swapsOf(unit, /* lighter= */ true));
      }
      for (FittedModule module : loading.rig().modules().values()) {
        if (sameMasses.loadKg(module.module().id()) > 0.0) {
          found.addAll(changes.movesOf(module));
        }
      }
    }
    List<Lever> levers = judged(found);
    levers.addAll(drains());
    levers.sort(Comparator.comparingDouble(Lever::gainKg).reversed());
    return levers;
  }

  /** The most promising changes of each kind at a quick look, carried out. */
  private List<Lever> judged(List<Change> changes) {
    List<Look> sorted = new ArrayList<>();
    for (Change change : changes) {
      Loading then = Loading.of(situation.loading().scenario(), change.plan());
      sorted.add(new Look(change, sameMasses.overKg(then)));
    }
    sorted.sort(
        Comparator.comparingDouble(Look::overKg)
            .thenComparing(look -> look.change().last().key())
            .thenComparing(look -> look.change().last().to())
            .thenComparing(look -> look.change().last().withKey()));
    Map<Mend.What, Integer> judged = new EnumMap<>(Mend.What.class);
    Map<Mend.What, Integer> kept = new EnumMap<>(Mend.What.class);
    List<String> movedAlready = new ArrayList<>();
    List<Lever> levers = new ArrayList<>();
    for (Look look : sorted) {
      Change change = look.change();
      Mend.What what = change.last().what();
      String unit = what + " " + change.last().key();
      boolean enough =
          judged.getOrDefault(what, 0) >= JUDGED_OF_A_KIND
              || kept.getOrDefault(what, 0) >= MOST_OF_A_KIND
              || movedAlready.contains(unit);
      if (!enough) {
        judged.merge(what, 1, Integer::sum);
        Situation then = Situation.of(Loading.of(situation.loading().scenario(), change.plan()));
        Optional<Lever> lever = lever(then, new Lever.Repacked(change.last(), change.plan()));
        if (lever.isPresent()) {
          levers.add(lever.get());
          movedAlready.add(unit);
          kept.merge(what, 1, Integer::sum);
        }
      }
    }
    return levers;
  }

  private Optional<Lever> lever(Situation then, Lever.Change change) {
    double thenKg = marginKg(then);
    double gainKg = thenKg - marginKg;
    if (gainKg < LEAST_GAIN_KG || !Ledger.of(then).noWorseThan(before, limit.key())) {
      return Optional.empty();
    }
    return Optional.of(new Lever(change, gainKg, thenKg, momentNm(then) - momentNm));
  }

  /** Tanks of modules that start half as full, unless something runs out then that did not. */
  private List<Lever> drains() {
    List<Lever> levers = new ArrayList<>();
    for (FittedTank fitted : situation.loading().rig().tanks().values()) {
      long ml = fitted.tank().startMl() / 2L;
      if (fitted.moduleId().isPresent() && ml > 0L) {
        Situation then =
            Situation.of(
                Loading.of(
                    startingWith(
                        situation.loading().scenario(),
                        fitted.tank().id(),
                        fitted.tank().startMl() - ml),
                    situation.loading().plan()));
        boolean lasts =
            then.timeline().shortfalls().size() <= situation.timeline().shortfalls().size();
        if (lasts) {
          double kg = fitted.tank().massOfG(ml) / 1000.0;
          lever(then, new Lever.Drained(fitted.tank().id(), ml, kg)).ifPresent(levers::add);
        }
      }
    }
    return levers;
  }

  private static Scenario startingWith(Scenario scenario, String tankId, long ml) {
    List<ModuleChoice> modules = new ArrayList<>();
    for (ModuleChoice choice : scenario.modules()) {
      modules.add(choice.withModule(choice.module().startingWith(tankId, ml)));
    }
    return scenario.withModules(modules);
  }

  /** The tightest margin of the limit over all states, kilograms. */
  private double marginKg(Situation in) {
    double least = Double.MAX_VALUE;
    for (LoadState state : in.judgedStates()) {
      if (state.kind() != LoadKind.CERTIFICATION) {
        for (LimitRule rule : RuleBook.LIMITS) {
          if (rule.card().id() == limit.rule()) {
            for (LoadLine line : in.lines(rule, state)) {
              if (line.subjectId().equals(limit.subjectId())) {
                least = Math.min(least, (line.limitG() - line.loadG(state)) / 1000.0);
              }
            }
          }
        }
      }
    }
    return least;
  }

  private static double momentNm(Situation in) {
    double most = 0.0;
    for (LoadState state : in.judgedStates()) {
      if (state.kind() == LoadKind.MOVING) {
        most = Math.max(most, OverhangMoment.of(in.loading(), state).newtonMetres());
      }
    }
    return most;
  }
}
