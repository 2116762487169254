package kitstow.planner.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.RuleKind;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;

class SpotsTest {
  private final CheckReport report = ShippedFiles.checked("remote-fortnight");
  private final Loading loading = report.situation().loading();

  @Test
  void everySpotThatIsFoundBreaksNoRuleOfPlaceThatWasKeptBefore() {
    int tried = 0;
    for (PlacedItem item : List.copyOf(loading.placed().values()).subList(0, 12)) {
      Optional<Placement> best = spots(item).best();
      if (best.isPresent()) {
        tried++;
        CheckReport moved = LoadPlanner.check(loading.scenario(), with(item, best.get()));
        assertThat(ofPlace(moved)).as(item.key()).isSubsetOf(ofPlace(report));
      }
    }
    assertThat(tried).isGreaterThan(5);
  }

  @Test
  void aSpotIsInTheSpaceThatWasAskedFor() {
    PlacedItem item = loading.placed().values().iterator().next();
    assertThat(spots(item).in(item.space().id()).orElseThrow().spaceId())
        .isEqualTo(item.space().id());
    assertThat(spots(item).in("no-such-space")).isEmpty();
  }

  @Test
  void aUnitThatIsNotInTheScenarioIsRefused() {
    assertThatThrownBy(() -> Spots.of(loading.scenario(), loading.plan(), "no-such-item", 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no-such-item");
  }

  private Spots spots(PlacedItem item) {
    return LoadPlanner.spots(loading.scenario(), loading.plan(), item.item().id(), item.unit());
  }

  private LoadPlan with(PlacedItem item, Placement placement) {
    List<Placement> placements = new ArrayList<>(loading.plan().placements());
    placements.remove(item.placement());
    placements.add(placement);
    LoadPlan plan = loading.plan();
    return new LoadPlan(plan.scenarioId(), plan.moduleBays(), placements, plan.origin());
  }

  private static List<String> ofPlace(CheckReport report) {
    List<String> keys = new ArrayList<>();
    for (Finding finding : report.brokenFindings()) {
      if (finding.rule().kind() != RuleKind.LIMIT) {
        keys.add(finding.key());
      }
    }
    return keys;
  }
}
