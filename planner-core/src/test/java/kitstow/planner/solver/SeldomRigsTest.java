package kitstow.planner.solver;

import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aModule;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.LoadPlanner;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Content;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Need;
import kitstow.planner.model.Pin;
import kitstow.planner.model.Placement;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.Zone;
import kitstow.planner.report.CheckReport;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import kitstow.planner.testkit.SpaceBuilder;
import org.junit.jupiter.api.Test;

/** Rigs that are seldom, but that somebody may well have. Invented. */
class SeldomRigsTest {
  private static final SizeMm CUBE = new SizeMm(800, 800, 800);

  @Test
  void aThingPinnedToATurnThatLooksLikeAnotherStandsSo() {
    SpacePointMm corner = new SpacePointMm(0, 0, 0);
    RigBuilder rig =
        RigBuilder.aDualCab()
            .items(
                anItem("toilet")
                    .size(400, 400, 140)
                    .turns(Turn.LWH, Turn.values())
                    .pin(new Pin(Rigs.BOX, Optional.of(corner), Optional.of(Turn.HWL))));
    Placement stands = only(plan(rig));
    assertThat(stands.turn()).isEqualTo(Turn.HWL);
    assertThat(stands.corner()).isEqualTo(corner);
  }

  @Test
  void aSoftThingTakesTheShapeThatGoesIn() {
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .canopySpace(aSpace("slot", 100, -400, 50, new SizeMm(600, 400, 200)))
            .items(anItem("bag").shapes(new SizeMm(600, 400, 300), new SizeMm(600, 400, 150)));
    assertThat(only(plan(rig)).shape()).isEqualTo(1);
  }

  @Test
  void withoutAnySpaceAllIsHome() {
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .items(anItem("can").content(new Content(SupplyKind.WATER, Masses.kg(8))));
    assertThat(plan(rig).situation().loading().home()).containsExactly("can");
  }

  @Test
  void whatIsWiderThanTheBarsSticksOutOnEitherSide() {
    RigBuilder rig =
        RigBuilder.aDualCab()
            .items(anItem("board").size(900, 1350, 60).turns(Turn.LWH).marks(Mark.BULKY));
    Placement stands = only(plan(rig));
    assertThat(stands.spaceId()).isEqualTo(Rigs.RACK);
    assertThat(stands.corner().yMm()).isBetween(-100, 1200 + 100 - 1350);
  }

  @Test
  void fuelAndGasInTwoCompartmentsOfOneAirAreKeptApart() {
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .canopyBay(aBay("outside", 1850, -400, 50, CUBE).zone(Zone.REAR_CARRIER))
            .module(
                aModule("locker", 700, 700, 700).space(half("left", 0)).space(half("right", 350)),
                Need.MUST,
                "outside")
            .items(
                anItem("petrol").size(300, 200, 400).marks(Mark.FUEL),
                anItem("spare-petrol").size(300, 200, 400).marks(Mark.FUEL),
                anItem("gas").size(300, 200, 400).turns(Turn.LWH).marks(Mark.GAS));
    CheckReport report = plan(rig);
    assertThat(report.brokenFindings()).isEmpty();
    assertThat(report.situation().loading().placed().keySet())
        .containsExactlyInAnyOrder("petrol", "spare-petrol");
  }

  @Test
  void aModuleIsNotLeftWhereItRunsIntoTheCanopy() {
    RigBuilder rig =
        RigBuilder.aDualCab()
            .canopyBay(aBay("by-the-headboard", 100, 50, 50, CUBE).zone(Zone.TRAY))
            .module(aModule("tank", 300, 300, 300), Need.MUST, "by-the-headboard", Rigs.REAR_BAY);
    CheckReport report = plan(rig);
    assertThat(report.brokenFindings()).isEmpty();
    assertThat(report.situation().loading().plan().moduleBays())
        .containsExactly(Map.entry("tank", Rigs.REAR_BAY));
  }

  @Test
  void aSearchWithoutGearStillChoosesBays() {
    RigBuilder rig =
        RigBuilder.aDualCab()
            .person("driver", Masses.kg(80), "driver")
            .roadDay(10.0)
            .module(
                aModule("tank", 700, 700, 700).massG(Masses.kg(120), 0L),
                Need.MUST,
                Rigs.REAR_BAY,
                Rigs.FRONT_BAY);
    assertThat(plan(rig).situation().loading().plan().moduleBays())
        .containsExactly(Map.entry("tank", Rigs.FRONT_BAY));
  }

  @Test
  void theBayOfAModuleWithoutAChoiceIsNobodyElses() {
    RigBuilder rig =
        RigBuilder.aDualCab()
            .module(aModule("fixed", 300, 300, 300), Need.MUST, Rigs.FRONT_BAY)
            .module(aModule("free", 300, 300, 300), Need.NICE, Rigs.FRONT_BAY, Rigs.REAR_BAY);
    PackingProblem problem = new PackingProblem(rig.scenario());
    List<Map<String, String>> choices =
        problem.bayChoices(PackingProblem.firstBays(problem.scenario()));
    assertThat(choices)
        .hasSizeGreaterThan(1)
        .allSatisfy(bays -> assertThat(bays).containsEntry("fixed", Rigs.FRONT_BAY));
  }

  @Test
  void ranksOfWhatWasGivenUpAreFreeAgain() {
    RigBuilder rig = RigBuilder.aDualCab().items(anItem("tin").quantity(5));
    PackingProblem problem = new PackingProblem(rig.scenario());
    PlanningLoad load = PlanSearch.construct(problem, null);
    List<Integer> all = List.of(0, 1, 2, 3, 4);
    int highest = 0;
    for (int i = 0; i < 100; i++) {
      Packing packing = problem.packingOf(load);
      packing.takeOut(all);
      new Construction(problem).insert(packing, new ArrayList<>(all), new Random(i), 0.0);
      highest = all.stream().mapToInt(packing::rankOf).max().orElse(0);
    }
    assertThat(highest).isBetween(6, 20);
  }

  private static SpaceBuilder half(String id, int acrossMm) {
    return aSpace(id, 0, acrossMm, 0, new SizeMm(700, 350, 700))
        .environment(Environment.VENTED_OUTSIDE);
  }

  private static CheckReport plan(RigBuilder rig) {
    return LoadPlanner.plan(
        new PlanSearch.Request(rig.scenario(), 1L, 200L, 0.0, 1), best -> {}, () -> false);
  }

  private static Placement only(CheckReport report) {
    assertThat(report.brokenFindings()).isEmpty();
    List<Placement> placements = report.situation().loading().plan().placements();
    assertThat(placements).hasSize(1);
    return placements.get(0);
  }
}
