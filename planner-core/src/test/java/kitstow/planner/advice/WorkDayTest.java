package kitstow.planner.advice;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static org.assertj.core.api.Assertions.assertThat;

import kitstow.planner.LoadPlanner;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Zone;
import kitstow.planner.report.CheckReport;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.Test;

class WorkDayTest {
  @Test
  void emergencyGearStaysAndComesDownWhereTheRestWas() {
    Loading loading = rig().load();
    Scenario scenario = WorkDay.scenario(loading.scenario());
    LoadPlan plan = WorkDay.plan(loading);

    assertThat(scenario.items()).extracting(item -> item.id()).containsExactly("straps", "kit");
    Loading day = Loading.of(scenario, plan);
    assertThat(day.home()).isEmpty();
    // The trip's crate was 300 mm high; the kit stood on the straps, and still does.
    assertThat(day.placed().get("straps").box().minZMm())
        .isEqualTo(loading.placed().get("crate").box().minZMm());
    assertThat(day.placed().get("kit").box().minZMm())
        .isEqualTo(day.placed().get("straps").box().maxZMm());
    assertThat(LoadPlanner.check(scenario, plan).brokenFindings())
        .as("the kit on the straps was in their way before, too")
        .extracting(finding -> finding.rule())
        .containsOnly(RuleId.EMERGENCY_REACH);
  }

  @Test
  void theDriverIsAloneAndSleepsAtHome() {
    Scenario day = WorkDay.scenario(rig().scenario());
    assertThat(day.trip().people()).hasSize(1);
    assertThat(day.trip().people().get(0).seatId()).isEqualTo("driver");
    assertThat(day.trip().people().get(0).sleepsOn()).isEmpty();
    assertThat(day.trailers()).isEmpty();
    assertThat(day.trip().legs()).hasSize(1);
  }

  @Test
  void shippedPlansAreNoHeavierAtWorkThanOnTheTrip() {
    for (String name : ShippedFiles.plannedNames()) {
      CheckReport trip = ShippedFiles.checked(name);
      CheckReport day = LoadPlanner.workDay(trip);
      assertThat(heaviestG(day)).as(name).isLessThan(heaviestG(trip));
      assertThat(day.situation().loading().rig().modules().keySet())
          .isEqualTo(trip.situation().loading().rig().modules().keySet());
    }
  }

  private static long heaviestG(CheckReport report) {
    return report.states().stream()
        .filter(state -> state.moving())
        .mapToLong(state -> state.axles().totalG())
        .max()
        .orElseThrow();
  }

  private static RigBuilder rig() {
    return RigBuilder.aDualCab()
        .sleeper("one", Masses.kg(90), "driver", Zone.CANOPY_ROOF)
        .person("two", Masses.kg(70), "passenger")
        .items(
            anItem("crate").size(400, 400, 300).massG(9_000L).bearsG(50_000L),
            anItem("straps")
                .size(400, 400, 100)
                .massG(9_000L)
                .bearsG(9_000L)
                .reach(Reach.EMERGENCY),
            anItem("kit").size(300, 300, 100).massG(2_000L).reach(Reach.EMERGENCY))
        .put("crate", Rigs.BOX, 0, 0, 0)
        .put("straps", Rigs.BOX, 0, 0, 300)
        .put("kit", Rigs.BOX, 0, 0, 400);
  }
}
