package kitstow.planner.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.report.Mend;

/** Carries out a mend and lets both judges say whether it does what it says. */
public final class MendCheck {
  private MendCheck() {}

  /** Asserts that the steps lead to the plan of the mend, and that it does what is told. */
  public static void carriedOut(CheckReport report, Mend mend) {
    Loading before = report.situation().loading();
    CheckReport again = LoadPlanner.check(before.scenario(), mend.plan());
    Map<String, String> stands = where(before);
    for (Mend.Step step : mend.steps()) {
      assertThat(stands.getOrDefault(step.key(), "")).isEqualTo(step.from());
      stands.put(step.key(), step.to());
      if (step.what() == Mend.What.SWAP) {
        assertThat(stands.get(step.withKey())).isEqualTo(step.to());
        stands.put(step.withKey(), step.from());
      }
    }
    stands.values().removeIf(String::isEmpty);
    assertThat(where(again.situation().loading())).isEqualTo(stands);

    Map<String, Double> was = amounts(report);
    Map<String, Double> is = amounts(again);
    assertThat(mend.before()).isCloseTo(was.get(mend.findingKey()), within(1.0e-6));
    assertThat(mend.after()).isCloseTo(is.getOrDefault(mend.findingKey(), 0.0), within(1.0e-6));
    if (mend.outcome() == Mend.Outcome.NOT_MENDED) {
      assertThat(is).containsKey(mend.findingKey());
    } else {
      assertThat(is).doesNotContainKey(mend.findingKey());
    }
    is.remove(mend.findingKey());
    Set<String> fresh = new TreeSet<>(is.keySet());
    fresh.removeAll(was.keySet());
    assertThat(fresh).as("broken by the mend").isEmpty();
    is.forEach((key, amount) -> assertThat(amount).isLessThanOrEqualTo(was.get(key) + 1.0e-6));
  }

  private static Map<String, String> where(Loading loading) {
    Map<String, String> where = new LinkedHashMap<>();
    for (PlacedItem unit : loading.placed().values()) {
      where.put(unit.key(), unit.space().id());
    }
    for (FittedModule module : loading.rig().modules().values()) {
      where.put(module.module().id(), module.bay().id());
    }
    return where;
  }

  private static Map<String, Double> amounts(CheckReport report) {
    Map<String, Double> amounts = new LinkedHashMap<>();
    for (Finding finding : report.brokenFindings()) {
      amounts.put(finding.key(), Math.abs(finding.value() - finding.limit()));
    }
    return amounts;
  }
}
