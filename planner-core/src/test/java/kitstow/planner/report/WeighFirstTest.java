package kitstow.planner.report;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import kitstow.planner.model.RuleId;
import kitstow.planner.rules.Situation;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.Test;

class WeighFirstTest {
  @Test
  void unitsOfOneEntryAreOneWeighingAndTellMore() {
    RigBuilder rig =
        RigBuilder.aDualCab()
            .items(
                anItem("can").size(200, 200, 200).massG(10_000L).toleranceG(2_000L).quantity(2),
                anItem("bag").size(200, 200, 200).massG(20_000L).toleranceG(3_000L))
            .put("can#1", Rigs.PLATFORM, 0, 0, 0)
            .put("can#2", Rigs.PLATFORM, 0, 300, 0)
            .put("bag", Rigs.PLATFORM, 0, 600, 0);
    CheckReport report = CheckReport.of(Situation.of(rig.load()));
    LimitReading roof =
        report.tightest().stream()
            .filter(reading -> reading.rule() == RuleId.CAB_ROOF_LIMIT)
            .findFirst()
            .orElseThrow();
    WeighFirst first = WeighFirst.of(rig.load(), roof).orElseThrow();
    // Two cans are off together: 4 kg, the bag 3 kg. Weighed, 20 kg of cans are off by 0.2 kg.
    assertThat(first.bodyKeys()).isEqualTo(List.of("can#1", "can#2"));
    assertThat(first.kg()).isEqualTo(20.0);
    assertThat(first.bandKg()).isCloseTo(5.0, within(1.0e-9));
    assertThat(first.thenKg()).isCloseTo(Math.hypot(3.0, 0.2), within(1.0e-9));
  }

  @Test
  void noOtherSingleWeighingNarrowsTheTightestMarginOfAShippedPlanMore() {
    for (String name : ShippedFiles.plannedNames()) {
      CheckReport report = ShippedFiles.checked(name);
      for (LimitReading reading : report.tightest()) {
        WeighFirst.of(report.situation().loading(), reading)
            .ifPresent(
                first -> {
                  assertThat(first.bandKg()).isCloseTo(reading.margin().rssKg(), within(1.0e-9));
                  assertThat(first.thenKg()).isLessThan(first.bandKg()).isNotNegative();
                });
      }
      assertThat(
              report
                  .verdict()
                  .tightest()
                  .flatMap(r -> WeighFirst.of(report.situation().loading(), r)))
          .as(name)
          .isPresent();
    }
  }
}
