package kitstow.planner.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Need;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every scenario of the folder reads, and each plan packed by hand is judged as it should be. */
class ShippedScenariosTest {
  private static final String REMOTE = "remote-fortnight";

  static List<String> scenarioNames() {
    return ShippedFiles.scenarioNames();
  }

  static List<String> plannedNames() {
    return ShippedFiles.plannedNames();
  }

  @ParameterizedTest
  @MethodSource("scenarioNames")
  void scenarioReadsWithoutFaultsAndSaysThatItIsInvented(String name) {
    Scenario scenario = ShippedFiles.scenario(name);
    assertThat(scenario.id()).isEqualTo(name);
    assertThat(scenario.note()).startsWith("Invented");
    assertThat(scenario.title()).hasSizeLessThan(60);
  }

  @ParameterizedTest
  @MethodSource("plannedNames")
  void planIsJudgedAlikeByBothJudges(String name) {
    assertThat(ShippedFiles.checked(name).states()).isNotEmpty();
  }

  @Test
  void remoteFortnightIsALongTripWithMuchGear() {
    Scenario scenario = ShippedFiles.scenario(REMOTE);
    assertThat(scenario.trip().people()).hasSize(2);
    assertThat(scenario.trip().legs()).hasSize(6);
    assertThat(scenario.trip().legs().stream().mapToDouble(leg -> leg.days()).sum())
        .isCloseTo(14.0, within(1.0e-9));
    assertThat(scenario.items().stream().mapToInt(Item::quantity).sum()).isEqualTo(81);
  }

  @Test
  void remoteFortnightIsPackedWithinEveryRule() {
    CheckReport report = ShippedFiles.checked(REMOTE);
    assertThat(report.brokenFindings()).isEmpty();
    assertThat(stayingHome(REMOTE)).containsExactly("firewood");
    // Total at the start: 4129.7 kg of 4250 kg, the tightest of total and axles.
    assertThat(tightest(report, RuleId.GVM_LIMIT).margin().marginKg())
        .isCloseTo(120.3, within(0.001));
    assertThat(tightest(report, RuleId.REAR_AXLE_LIMIT).margin().marginKg()).isGreaterThan(150.0);
    assertThat(tightest(report, RuleId.FRONT_AXLE_LIMIT).margin().marginKg()).isGreaterThan(150.0);
  }

  private static LimitReading tightest(CheckReport report, RuleId rule) {
    return report.tightest().stream()
        .filter(reading -> reading.rule() == rule)
        .findFirst()
        .orElseThrow();
  }

  /** Keys of all units that are not placed; none of them is a must. */
  private static List<String> stayingHome(String name) {
    Scenario scenario = ShippedFiles.scenario(name);
    LoadPlan plan = ShippedFiles.plan(name, scenario);
    List<String> home = new ArrayList<>();
    for (Item item : scenario.items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        int wanted = unit;
        boolean placed =
            plan.placements().stream()
                .anyMatch(p -> p.itemId().equals(item.id()) && p.unit() == wanted);
        if (!placed) {
          home.add(item.keyOf(unit));
          assertThat(item.need()).as(item.keyOf(unit)).isNotEqualTo(Need.MUST);
        }
      }
    }
    return home;
  }
}
