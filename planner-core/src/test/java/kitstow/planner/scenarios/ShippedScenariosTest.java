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
import kitstow.planner.model.Settings;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.report.LimitReading;
import kitstow.planner.statics.Margin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every scenario of the folder reads, and each plan packed by hand is judged as it should be. */
class ShippedScenariosTest {
  private static final String REMOTE = "remote-fortnight";
  private static final String DUAL_CAB = "dual-cab-fortnight";

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

  @Test
  void dualCabHasThePeopleGearAndLegsOfTheSingleCab() {
    Scenario remote = ShippedFiles.scenario(REMOTE);
    Scenario dualCab = ShippedFiles.scenario(DUAL_CAB);
    assertThat(dualCab.items()).isEqualTo(remote.items());
    assertThat(dualCab.trip().people()).isEqualTo(remote.trip().people());
    assertThat(dualCab.trip().legs()).isEqualTo(remote.trip().legs());
    assertThat(dualCab.settings().massLimits()).isEqualTo(Settings.MassLimits.REPORT);
  }

  /**
   * Worked out apart from the planner, from the files alone; rear = mass x place / 3220 mm, each
   * body at the middle of its length, at the start of the trip with everything full:
   *
   * <pre>
   *                                    kg      rear kg
   * ute as weighed, 10 L of fuel     1980.000    800.000
   * 66 L more fuel at x = 2410         55.440     41.494
   * factory spare taken off           -32.000    -39.553
   * tray at x = 3790                  135.000    158.898
   * canopy at x = 3940                128.000    156.621
   * accessories                       318.500    156.914
   * two people at x = 1520            173.000     81.665
   * modules                           208.900    240.703
   * 40 L of water at x = 2990          40.000     37.143
   * 76 units of gear                  758.200    858.831
   * sum                              3765.040   2492.715
   * limit                            3300.000   2000.000
   * over                              465.040    492.715
   * </pre>
   *
   * <p>The rear tyres, two of load index 113, carry 2 x 1150 kg: 192.715 kg over.
   */
  @Test
  void dualCabGoesInButIsOverByTotalRearAxleAndRearTyres() {
    CheckReport report = ShippedFiles.checked(DUAL_CAB);
    assertThat(report.brokenFindings())
        .extracting(Finding::rule)
        .containsExactlyInAnyOrder(
            RuleId.GVM_LIMIT, RuleId.REAR_AXLE_LIMIT, RuleId.REAR_TYRE_LIMIT);
    assertThat(report.brokenFindings()).extracting(Finding::stateId).containsOnly("out-start");
    assertThat(report.verdict().kind()).isEqualTo(Margin.Verdict.OVER);
    assertThat(tightest(report, RuleId.GVM_LIMIT).margin().marginKg())
        .isCloseTo(-465.040, within(0.001));
    assertThat(tightest(report, RuleId.REAR_AXLE_LIMIT).margin().marginKg())
        .isCloseTo(-492.715, within(0.001));
    assertThat(tightest(report, RuleId.REAR_TYRE_LIMIT).margin().marginKg())
        .isCloseTo(-192.715, within(0.001));
    assertThat(stayingHome(DUAL_CAB))
        .containsExactly("camera-case", "water-filter", "firewood", "grill", "fire-pit");
  }

  @Test
  void counterShowsOneCustomersGearInThreeCanopies() {
    Scenario shortest = ShippedFiles.scenario("counter-1000");
    assertThat(shortest.items().stream().mapToInt(Item::quantity).sum()).isEqualTo(38);
    for (String name : List.of("counter-1500", "counter-1700")) {
      Scenario other = ShippedFiles.scenario(name);
      assertThat(other.items()).as(name).isEqualTo(shortest.items());
      assertThat(other.ute()).as(name).isEqualTo(shortest.ute());
      assertThat(other.trip()).as(name).isEqualTo(shortest.trip());
      assertThat(other.canopy()).as(name).isNotEqualTo(shortest.canopy());
    }
  }

  @Test
  void counterGearAllGoesIntoTheCanopyOf1500() {
    CheckReport report = ShippedFiles.checked("counter-1500");
    assertThat(report.brokenFindings()).isEmpty();
    assertThat(stayingHome("counter-1500")).isEmpty();
  }

  /**
   * Gas and fuel may not share the air of a deck, boxes and compressor fill the other deck, and the
   * saw may not ride with heavy tools: so the paint stays, and the rack carries no second ladder.
   */
  @Test
  void workDayIsPackedWithinEveryRule() {
    CheckReport report = ShippedFiles.checked("work-day");
    assertThat(report.brokenFindings()).isEmpty();
    assertThat(stayingHome("work-day"))
        .containsExactly("step-ladder", "paint-pail#1", "paint-pail#2");
  }

  @Test
  void workshopLeavesTheBayOfEveryModuleOpen() {
    assertThat(ShippedFiles.scenario("workshop-drawers").modules())
        .hasSize(5)
        .allSatisfy(choice -> assertThat(choice.bayIds()).hasSizeGreaterThan(1));
  }

  @Test
  void towingWeekLeavesTheTrailerAtCamp() {
    assertThat(ShippedFiles.scenario("towing-week").trip().legs())
        .extracting(leg -> leg.trailerId().isPresent())
        .containsExactly(true, true, false, true);
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
