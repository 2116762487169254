package kitstow.planner.generated;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Need;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;
import kitstow.planner.report.CheckReport;
import kitstow.planner.rules.Situation;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a theme promises holds in every scenario of it. */
class ThemeTest {
  @ParameterizedTest
  @EnumSource(names = {"GAS", "FUEL"})
  void fumesHaveToComeAndOnlyACarrierTakesThem(Theme theme) {
    Mark mark = Mark.valueOf(theme.name());

    assertThat(scenarios(theme)).allMatch(scenario -> spaces(scenario).contains(Rigs.CARRIER));
    assertThat(scenarios(theme)).allMatch(ThemeTest::allTooHeavyForARoof);
    assertThat(scenarios(theme)).allMatch(scenario -> marked(scenario, mark).size() > 0);
    assertThat(scenarios(theme))
        .flatExtracting(scenario -> marked(scenario, mark))
        .allMatch(item -> item.need() == Need.MUST);
  }

  @Test
  void allGearIsOfOneOfTwoKindsThatAreStrangers() {
    assertThat(scenarios(Theme.STRANGERS))
        .flatExtracting(Scenario::items)
        .allMatch(item -> anyOf(item, Mark.OIL, Mark.BEDDING, Mark.BULKY));
  }

  @Test
  void dryGearIsLightEnoughForTheRoofThatIsThere() {
    assertThat(scenarios(Theme.DRY)).allMatch(scenario -> marked(scenario, Mark.DRY).size() > 0);
    assertThat(scenarios(Theme.DRY)).allMatch(scenario -> spaces(scenario).contains(Rigs.PLATFORM));
    assertThat(scenarios(Theme.DRY))
        .allMatch(
            scenario ->
                scenario.items().stream()
                    .allMatch(item -> item.mass().massG() <= scenario.settings().roofGearG()));
  }

  @Test
  void heavyGearIsTooHeavyForTheRoofThatIsThere() {
    assertThat(scenarios(Theme.HEAVY)).allMatch(ThemeTest::allTooHeavyForARoof);
    assertThat(scenarios(Theme.HEAVY))
        .allMatch(scenario -> spaces(scenario).contains(Rigs.PLATFORM));
  }

  @Test
  void delicateGearCarriesNextToNothingOrOpensUpwards() {
    assertThat(scenarios(Theme.DELICATE))
        .flatExtracting(Scenario::items)
        .allMatch(item -> item.bearsG() <= 1_000L || !item.keepClear().isEmpty());
  }

  @Test
  void everyThemeMeetsEveryWayOfLimiting() {
    for (int ofFour = 0; ofFour < 4; ofFour++) {
      Set<Theme> met = EnumSet.noneOf(Theme.class);
      for (int number = ofFour; number < GeneratedScenarios.ALL; number += 4) {
        met.add(Theme.of(number));
      }
      assertThat(met).containsExactly(Theme.values());
    }
  }

  @Test
  void whereLimitsAreOnlyToldTheUteKeepsThemWithoutGear() {
    List<Scenario> told =
        numbers()
            .mapToObj(GeneratedScenarios::of)
            .filter(s -> s.settings().massLimits() == Settings.MassLimits.REPORT)
            .collect(Collectors.toList());

    assertThat(told).hasSize(GeneratedScenarios.ALL / 4);
    assertThat(told)
        .allSatisfy(
            scenario ->
                assertThat(brokenWithoutGear(scenario))
                    .doesNotContain(
                        RuleId.GVM_LIMIT,
                        RuleId.FRONT_AXLE_LIMIT,
                        RuleId.REAR_AXLE_LIMIT,
                        RuleId.FRONT_TYRE_LIMIT,
                        RuleId.REAR_TYRE_LIMIT,
                        RuleId.GCM_LIMIT,
                        RuleId.TRAY_RATING));
  }

  private static Set<RuleId> brokenWithoutGear(Scenario scenario) {
    return BindingRules.broken(CheckReport.of(Situation.of(bare(scenario))));
  }

  private static Loading bare(Scenario scenario) {
    return Loading.of(
        scenario,
        new LoadPlan(scenario.id(), RigMaker.firstBays(scenario), List.of(), LoadPlan.Origin.HAND));
  }

  private static IntStream numbers() {
    return IntStream.range(0, GeneratedScenarios.ALL);
  }

  private static List<Scenario> scenarios(Theme theme) {
    Stream<Scenario> all =
        numbers().filter(n -> Theme.of(n) == theme).mapToObj(GeneratedScenarios::of);
    return all.collect(Collectors.toList());
  }

  private static Set<String> spaces(Scenario scenario) {
    return Rig.of(scenario, RigMaker.firstBays(scenario)).spaces().keySet();
  }

  private static List<Item> marked(Scenario scenario, Mark mark) {
    return scenario.items().stream()
        .filter(item -> item.marks().contains(mark))
        .collect(Collectors.toList());
  }

  private static boolean anyOf(Item item, Mark... marks) {
    return Stream.of(marks).anyMatch(item.marks()::contains);
  }

  private static boolean allTooHeavyForARoof(Scenario scenario) {
    return scenario.items().stream()
        .allMatch(item -> item.mass().massG() > scenario.settings().roofGearG());
  }
}
