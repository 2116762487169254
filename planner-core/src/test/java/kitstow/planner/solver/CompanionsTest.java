package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.model.Pin;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.packing.Wanted;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is taken out for a unit's sake stands where that would rather stand. */
class CompanionsTest {
  private static final int DRAWS = 60;
  private static final int MOST = 3;

  @ParameterizedTest
  @ValueSource(strings = {"counter-1500", "remote-fortnight", "dual-cab-fortnight"})
  void whatIsAheadIsInOneSpaceThatTakesTheUnitAndStandsBetter(String name) {
    Packing packing = byHand(name);
    List<Integer> aboard = aboard(packing);
    Companions companions = new Companions(packing, new Random(5L), aboard);
    int most = 0;
    for (int unit : aboard) {
      Wanted wanted = packing.problem().units().get(unit);
      for (int draw = 0; draw < DRAWS; draw++) {
        List<Integer> ahead = companions.aheadOf(unit, MOST);
        BitSet sites = new BitSet();
        for (int other : ahead) {
          sites.set(packing.siteOf(other));
          assertThat(other).isNotEqualTo(unit);
          assertThat(costMm(packing, other)).isLessThan(costMm(packing, unit));
          assertThat(packing.view().decoder().mayHold(wanted, packing.siteOf(other))).isTrue();
        }
        assertThat(sites.cardinality()).isLessThanOrEqualTo(1);
        most = Math.max(most, ahead.size());
      }
    }
    assertThat(most).as("at times all that is there").isGreaterThan(MOST);
  }

  @ParameterizedTest
  @ValueSource(strings = {"counter-1500", "remote-fortnight"})
  void whatIsAlikeIsLighterAndFurtherForwardInASpaceThatTakesTheUnit(String name) {
    Packing packing = byHand(name);
    List<Integer> aboard = aboard(packing);
    Companions companions = new Companions(packing, new Random(5L), aboard);
    int found = 0;
    for (int unit : aboard) {
      Wanted wanted = packing.problem().units().get(unit);
      PlacedItem at = packing.placeOf(unit);
      for (int other : companions.alikeAheadOf(unit)) {
        PlacedItem there = packing.placeOf(other);
        assertThat(there.item().mass().massG()).isLessThan(at.item().mass().massG());
        assertThat(there.box().minXMm() + there.box().maxXMm())
            .as("centres, doubled")
            .isLessThan(at.box().minXMm() + at.box().maxXMm());
        assertThat((double) there.box().volumeMm3() / at.box().volumeMm3()).isBetween(0.6, 1.8);
        assertThat(packing.view().decoder().mayHold(wanted, packing.siteOf(other))).isTrue();
        found++;
      }
    }
    assertThat(found).isGreaterThan(aboard.size() / 2);
  }

  @Test
  void whatIsDrawnForItsGainActsMostlyFurtherBehindThanAnyDraw() {
    Packing packing = byHand("dual-cab-fortnight");
    Companions companions = new Companions(packing, new Random(5L), aboard(packing));
    double far = 0.0;
    double any = 0.0;
    for (int draw = 0; draw < DRAWS; draw++) {
      far += moment(packing, companions.gainsMost());
      any += moment(packing, companions.any());
    }
    assertThat(far).isGreaterThan(1.5 * any);
  }

  @Test
  void whatIsPinnedFarBehindIsHardlyDrawnForIt() {
    Pin atTheRear = new Pin(Rigs.BOX, Optional.of(new SpacePointMm(700, 0, 0)), Optional.empty());
    RigBuilder rig =
        RigBuilder.aDualCab()
            .items(
                anItem("anvil").size(100, 100, 100).massG(50_000L).pin(atTheRear),
                anItem("left").size(100, 100, 100).massG(1_000L),
                anItem("right").size(100, 100, 100).massG(1_000L))
            .put("anvil", Rigs.BOX, 700, 0, 0)
            .put("left", Rigs.BOX, 500, 0, 0)
            .put("right", Rigs.BOX, 500, 700, 0);
    PackingProblem problem = new PackingProblem(rig.scenario());
    Packing packing = PlanningMapper.toPacking(problem, rig.plan());
    List<Integer> aboard = aboard(packing);
    assertThat(aboard).hasSize(3).allMatch(unit -> moment(packing, unit) > 0.0);
    Companions companions = new Companions(packing, new Random(5L), aboard);

    int pinned = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      pinned += problem.units().get(companions.gainsMost()).item().pin().isPresent() ? 1 : 0;
    }

    assertThat(pinned).as("only where nothing else was drawn").isLessThan(DRAWS / 10);
  }

  private static Packing byHand(String name) {
    Scenario scenario = ShippedFiles.scenario(name);
    return PlanningMapper.toPacking(
        new PackingProblem(scenario), ShippedFiles.plan(name, scenario));
  }

  private static List<Integer> aboard(Packing packing) {
    List<Integer> aboard = new ArrayList<>();
    for (int unit = 0; unit < packing.problem().units().size(); unit++) {
      if (packing.placeOf(unit) != null) {
        aboard.add(unit);
      }
    }
    return aboard;
  }

  private static double moment(Packing packing, int unit) {
    return costMm(packing, unit) * packing.problem().units().get(unit).item().mass().massG();
  }

  private static double costMm(Packing packing, int unit) {
    PlacedItem item = packing.placeOf(unit);
    assertThat(item).isNotNull();
    return packing.view().decoder().cost(item.box(), item.space());
  }
}
