package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import kitstow.planner.LoadPlanner;
import kitstow.planner.generated.GeneratedScenarios;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Scenario;
import kitstow.planner.statics.Bound;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

/** The floor under the moment of all plans; rigs and gear are invented, the arithmetic is not. */
class FloorTest {
  private static final double G = 9.80665;

  /** A canopy space from 3250 to 3250 + length, so from 250 mm behind the axle at 3000 mm on. */
  private static Scenario scenario(int lengthMm, ItemBuilder... items) {
    return RigBuilder.aBareDualCab()
        .person("driver", Masses.kg(90), "driver")
        .roadDay(10.0)
        .canopySpace(aSpace("bin", 1250, -200, 0, new SizeMm(lengthMm, 400, 300)))
        .items(items)
        .scenario();
  }

  private static ItemBuilder block(String id, int lengthMm, double kg) {
    return anItem(id)
        .size(lengthMm, 400, 300)
        .turns(Turn.LWH)
        .massG(Math.round(kg * 1000.0))
        .bearsG(0L);
  }

  private static LoadPlan solve(Scenario scenario, long seed, long steps) {
    PlanSearch.Request request = new PlanSearch.Request(scenario, seed, steps, 0.0, 1);
    return PlanSearch.solve(request, best -> {}, () -> false).plan();
  }

  private static Bound bound(Scenario scenario, LoadPlan plan, int iterations) {
    return Floor.of(Loading.of(scenario, plan), iterations);
  }

  @Test
  void floorOfOneItemAloneIsItsForemostPlace() {
    Scenario scenario = scenario(500, block("chest", 300, 40.0));

    Bound bound = bound(scenario, solve(scenario, 1L, 20L), 50);

    // 40 kg whose middle is 250 + 300 / 2 mm behind the axle.
    assertThat(bound.floorNm() - bound.fixedNm()).isCloseTo(40.0 * 0.400 * G, within(0.01));
    assertThat(bound.momentNm()).isCloseTo(bound.floorNm(), within(0.01));
    assertThat(bound.gapPercentOfWhole()).isCloseTo(0.0, within(0.001));
  }

  @Test
  void floorOfTwoBlocksThatFillTheSectionNearsTheBetterOrder() {
    Scenario scenario = scenario(500, block("long", 300, 40.0), block("short", 200, 20.0));

    Bound bound = bound(scenario, solve(scenario, 1L, 60L), 2_000);

    // The denser first: 40 kg at 250 + 150 and 20 kg at 250 + 300 + 100 mm behind the axle.
    double best = (40.0 * 0.400 + 20.0 * 0.650) * G;
    assertThat(bound.momentNm() - bound.fixedNm()).isCloseTo(best, within(0.01));
    assertThat(bound.floorNm() - bound.fixedNm()).isLessThanOrEqualTo(best + 1.0e-6);
    assertThat(bound.floorNm() - bound.fixedNm()).isGreaterThan(0.9 * best);
  }

  @Test
  void pricesRaiseTheFloor() {
    Scenario scenario = scenario(500, block("long", 300, 40.0), block("short", 200, 20.0));
    LoadPlan plan = solve(scenario, 1L, 60L);

    assertThat(bound(scenario, plan, 200).floorNm())
        .isGreaterThan(1.01 * bound(scenario, plan, 0).floorNm());
  }

  @Test
  void noPlanOfTheSameItemsIsBelowTheFloorOfAnother() {
    int floors = 0;
    int compared = 0;
    for (int number = 0; number < 16; number++) {
      Scenario scenario = GeneratedScenarios.of(number);
      LoadPlan one = solve(scenario, 1L, 40L);
      if (!LoadPlanner.bound(LoadPlanner.check(scenario, one)).isPresent()) {
        continue;
      }
      floors++;
      Bound floor = bound(scenario, one, 120);
      assertThat(floor.floorNm()).as("rig %d", number).isLessThanOrEqualTo(floor.momentNm());
      assertThat(floor.floorNm()).isGreaterThanOrEqualTo(floor.fixedNm() * (1.0 - 1.0e-6));
      for (long seed = 2L; seed < 8L; seed++) {
        LoadPlan other = solve(scenario, seed, 10L);
        if (items(other).equals(items(one)) && other.moduleBays().equals(one.moduleBays())) {
          compared++;
          double moment = bound(scenario, other, 0).momentNm();
          assertThat(moment)
              .as("rig %d, seed %d", number, seed)
              .isGreaterThanOrEqualTo(floor.floorNm());
        }
      }
    }
    assertThat(floors).isGreaterThanOrEqualTo(5);
    assertThat(compared).isGreaterThanOrEqualTo(3);
  }

  private static Set<String> items(LoadPlan plan) {
    Set<String> items = new HashSet<>();
    for (Placement placement : plan.placements()) {
      items.add(placement.itemId() + " " + placement.unit());
    }
    return items;
  }

  @Test
  void gapsAreSharesOfTheWholeAndOfWhatCanChangeAndMillimetres() {
    Bound bound =
        new Bound(
            /* floorNm= */ 900.0,
            /* momentNm= */ 1000.0,
            /* fixedNm= */ 600.0,
            /* gearKg= */ 100.0);

    assertThat(bound.gapPercentOfWhole()).isCloseTo(10.0, within(1.0e-9));
    assertThat(bound.gapPercentOfChangeable()).isCloseTo(25.0, within(1.0e-9));
    assertThat(bound.gapMm()).isCloseTo(100.0 / G / 100.0 * 1000.0, within(1.0e-9));
  }
}
