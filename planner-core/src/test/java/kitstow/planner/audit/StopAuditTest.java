package kitstow.planner.audit;

import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.CARRIER;
import static kitstow.planner.testkit.Rigs.FRONT_BAY;
import static kitstow.planner.testkit.Rigs.PLATFORM;
import static kitstow.planner.testkit.Rigs.SHELF;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Stop;
import kitstow.planner.model.Zone;
import kitstow.planner.rules.Breach;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.trip.Timeline;
import org.junit.jupiter.api.Test;

/** Where doors stay shut; the rule and the audit, each asked by itself, must say the same. */
class StopAuditTest {
  @Test
  void withoutAStopEverythingOpens() {
    assertThat(shutIn(in(SHELF))).isEmpty();
  }

  @Test
  void aDoorOnAShutSideLetsNothingOut() {
    assertThat(shutIn(in(SHELF), side(Facing.LEFT))).containsExactly("STOP_REACH kit here");
    assertThat(shutIn(in(SHELF), side(Facing.RIGHT), side(Facing.REAR))).isEmpty();
  }

  @Test
  void aDoorThatIsNamedStaysShut() {
    Stop left = new Stop("here", "here", Set.of(), 0, List.of("left-door"));
    Stop rear = new Stop("here", "here", Set.of(), 0, List.of("rear-door"));
    assertThat(shutIn(in(SHELF), left)).containsExactly("STOP_REACH kit here");
    assertThat(shutIn(in(SHELF), rear)).isEmpty();
  }

  @Test
  void theSillDecidesHowLowADoorOpens() {
    // The sill is 50 mm above the canopy floor, which is 900 mm above the ground.
    assertThat(shutIn(in(SHELF), below(950))).isEmpty();
    assertThat(shutIn(in(SHELF), below(951))).containsExactly("STOP_REACH kit here");
  }

  @Test
  void onlyEmergencyGearIsAskedFor() {
    RigBuilder rig =
        aDualCab()
            .items(anItem("kit").size(300, 200, 200).reach(Reach.MANY_A_DAY))
            .put("kit", SHELF, 0, 0, 0);
    assertThat(shutIn(rig, side(Facing.LEFT))).isEmpty();
  }

  @Test
  void oneOpenDoorOfSeveralIsEnoughIfTheThingPassesIt() {
    RigBuilder narrow =
        aDualCab()
            .door("left-hatch", Facing.LEFT, 100, 409)
            .canopySpace(
                aSpace(SHELF, 100, -850, 50, new SizeMm(800, 800, 700))
                    .access(AccessAxis.LEFT, "left-door", "left-hatch"));
    Stop door = new Stop("here", "here", Set.of(), 0, List.of("left-door"));
    // 300 mm and 10 mm of room around it: one millimetre more than the hatch is wide.
    assertThat(shutIn(put(narrow, SHELF), door)).containsExactly("STOP_REACH kit here");
    RigBuilder wide = narrow.door("left-hatch", Facing.LEFT, 100, 410);
    assertThat(shutIn(wide, door)).isEmpty();
  }

  @Test
  void whatASlideCarriesComesOutWhereTheSlideDoes() {
    RigBuilder rig =
        aDualCab()
            .fitted(aSlide("slide"), FRONT_BAY)
            .items(anItem("kit").size(300, 200, 200).reach(Reach.EMERGENCY))
            .put("kit", "slide/top", 0, 0, 0);
    assertThat(shutIn(rig, side(Facing.LEFT))).isEmpty();
    assertThat(shutIn(rig, side(Facing.RIGHT))).containsExactly("STOP_REACH kit here");
    assertThat(shutIn(rig, below(951))).containsExactly("STOP_REACH kit here");
  }

  @Test
  void aTrundleUnderTheDeckDoesNotPullOutOfTheMud() {
    RigBuilder rig =
        aDualCab()
            .canopyBay(
                aBay("under", 900, -400, -300, new SizeMm(800, 800, 250))
                    .zone(Zone.UNDER_TRAY)
                    .facing(Facing.REAR))
            .fitted(aSlide("trundle"), "under")
            .items(anItem("kit").size(300, 200, 60).reach(Reach.EMERGENCY))
            .put("kit", "trundle/top", 0, 0, 0);
    // The floor of the bay is 300 mm below the deck, which is 900 mm above the ground.
    assertThat(shutIn(rig, below(600))).isEmpty();
    assertThat(shutIn(rig, below(601))).containsExactly("STOP_REACH kit here");
    assertThat(shutIn(rig, side(Facing.REAR))).containsExactly("STOP_REACH kit here");
  }

  @Test
  void whatIsLiftedOutOfTheOpenComesOutAnywhere() {
    Stop all = new Stop("here", "here", Set.of(Facing.values()), 5000, List.of());
    assertThat(shutIn(in(PLATFORM), all)).isEmpty();
    assertThat(shutIn(in(CARRIER), all)).isEmpty();
  }

  @Test
  void whatIsTakenOutOfTheOpenToAShutSideDoesNot() {
    RigBuilder rig =
        aDualCab()
            .traySpace(
                aSpace("deck", 1800, -500, 0, new SizeMm(300, 1000, 600))
                    .zone(Zone.TRAY)
                    .access(AccessAxis.REAR)
                    .environment(Environment.OPEN_AIR));
    assertThat(shutIn(put(rig, "deck"), side(Facing.REAR))).containsExactly("STOP_REACH kit here");
    assertThat(shutIn(rig, below(900))).isEmpty();
    assertThat(shutIn(rig, below(901))).containsExactly("STOP_REACH kit here");
  }

  @Test
  void theCabIsOpenFromInside() {
    Stop all = new Stop("here", "here", Set.of(Facing.values()), 5000, List.of());
    RigBuilder rig =
        aDualCab()
            .uteSpace(
                aSpace("behind-seats", 1500, -600, 900, new SizeMm(400, 1200, 500))
                    .zone(Zone.CAB)
                    .access(AccessAxis.LEFT));
    assertThat(shutIn(put(rig, "behind-seats"), all)).isEmpty();
  }

  @Test
  void whatIsLiftedOutOfABoxNeedsOneOfItsDoors() {
    RigBuilder rig =
        aDualCab()
            .canopySpace(
                aSpace(BOX, 900, -850, 0, new SizeMm(800, 800, 800))
                    .access(AccessAxis.ABOVE, "left-door", "rear-door"));
    assertThat(shutIn(put(rig, BOX), side(Facing.LEFT))).isEmpty();
    Stop both = new Stop("here", "here", Set.of(Facing.LEFT), 0, List.of("rear-door"));
    assertThat(shutIn(rig, both)).containsExactly("STOP_REACH kit here");
  }

  @Test
  void aDoorTooSmallAtAnyTimeIsNoFaultOfTheStop() {
    RigBuilder rig = aDualCab().door("left-door", Facing.LEFT, 100, 200);
    assertThat(shutIn(put(rig, SHELF), side(Facing.LEFT))).isEmpty();
  }

  private static RigBuilder in(String spaceId) {
    return put(aDualCab(), spaceId);
  }

  private static RigBuilder put(RigBuilder rig, String spaceId) {
    return rig.items(anItem("kit").size(300, 200, 200).reach(Reach.EMERGENCY))
        .put("kit", spaceId, 0, 0, 0);
  }

  private static Stop side(Facing side) {
    return new Stop("here", "here", Set.of(side), 0, List.of());
  }

  private static Stop below(int heightMm) {
    return new Stop("here", "here", Set.of(), heightMm, List.of());
  }

  /** What both judges call shut in; other rules that a rig may break are not looked at. */
  private static List<String> shutIn(RigBuilder rig, Stop... stops) {
    Loading loading = Loading.of(rig.scenario().withStops(List.of(stops)), rig.plan());
    List<String> byAudit = new ArrayList<>();
    for (AuditFinding finding : Audit.of(loading, Timeline.of(loading).states())) {
      if (finding.rule() == RuleId.STOP_REACH) {
        byAudit.add(finding.rule() + " " + String.join(" ", finding.subjectIds()));
      }
    }
    List<String> byRule = new ArrayList<>();
    Situation situation = Situation.of(loading);
    RuleBook.PLAN_RULES.forEach(
        rule -> {
          for (Breach breach : rule.breaches(situation)) {
            if (breach.rule() == RuleId.STOP_REACH) {
              byRule.add(breach.key());
            }
          }
        });
    assertThat(byRule).isEqualTo(byAudit);
    return byAudit;
  }
}
