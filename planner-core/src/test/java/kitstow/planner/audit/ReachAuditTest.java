package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.audit.Audited.finding;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.FRONT_BAY;
import static kitstow.planner.testkit.Rigs.PLATFORM;
import static kitstow.planner.testkit.Rigs.SHELF;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReachAuditTest {
  @Test
  void whatMustBeAtHandFromASeatRidesInTheCab() {
    assertThat(broken(atHand("behind-seats", SHELF))).containsExactly("CAB_REACH kit shelf");
    assertThat(broken(atHand("behind-seats", PLATFORM))).containsExactly("CAB_REACH kit platform");
    assertThat(broken(atHand("behind-seats", "behind-seats"))).isEmpty();
  }

  private static RigBuilder atHand(String cabSpace, String spaceId) {
    return aDualCab()
        .uteSpace(aSpace(cabSpace, 1500, -600, 900, new SizeMm(400, 1200, 500)).zone(Zone.CAB))
        .items(anItem("kit").size(300, 200, 200).marks(Mark.CAB))
        .put("kit", spaceId, 0, 300, 0);
  }

  @Test
  void throughTheDoorSideNothingMayStandBefore() {
    // The kit is 400 long and starts 300 from the left face; the bag stands before it.
    assertThat(broken(onShelf(400, 0))).isEmpty();
    assertThat(broken(onShelf(399, 0))).containsExactly("EMERGENCY_REACH kit");
    // Behind it the bag is in nobody's way.
    assertThat(broken(onShelf(0, 500))).isEmpty();
  }

  @Test
  void onlyEmergencyGearIsJudged() {
    RigBuilder rig =
        aDualCab()
            .items(anItem("kit").size(400, 200, 200).reach(Reach.MANY_A_DAY), anItem("bag"))
            .put("kit", SHELF, 0, 300, 0)
            .put("bag", SHELF, 0, 0, 0);
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void fromAboveNothingMayBeOver() {
    assertThat(broken(inBox(400, 500))).isEmpty();
    assertThat(broken(inBox(399, 500))).containsExactly("EMERGENCY_REACH kit");
  }

  @Test
  void aDrawerIsEmptiedFromAbove() {
    assertThat(broken(onSlide(0, 200, 0))).isEmpty();
    assertThat(broken(onSlide(0, 0, 200))).containsExactly("EMERGENCY_REACH kit");
  }

  @Test
  void whatStandsOnItCountsAndWhatStandsOnThat() {
    RigBuilder rig =
        aDualCab()
            .items(
                anItem("kit").size(400, 200, 200).reach(Reach.EMERGENCY),
                anItem("pile").size(400, 200, 100).quantity(3))
            .put("kit", SHELF, 0, 0, 0)
            .put("pile#1", SHELF, 0, 0, 200)
            .put("pile#2", SHELF, 0, 0, 300)
            .put("pile#3", SHELF, 400, 0, 0);
    assertThat(finding(rig, RuleId.EMERGENCY_REACH))
        .isEqualTo(
            new AuditFinding(
                RuleId.EMERGENCY_REACH, List.of("kit"), "", 2.0, 0.0, "things to move"));
  }

  @Test
  void fromAboveToo() {
    // The board lies on the kit and reaches beyond it; the cup stands on the end that does.
    assertThat(finding(underBoard(450, 250), RuleId.EMERGENCY_REACH).value()).isEqualTo(2.0);
    // Beside the board, on what holds its end up, the cup is in nobody's way.
    assertThat(finding(underBoard(600, 200), RuleId.EMERGENCY_REACH).value()).isEqualTo(1.0);
  }

  @ParameterizedTest
  @CsvSource({
    "LEFT, 300, 0",
    "RIGHT, 300, 500",
    "FRONT, 0, 300",
    "REAR, 500, 300",
  })
  void eachSideHasItsOwnWayOut(AccessAxis axis, int bagXMm, int bagYMm) {
    // A kit of 200 x 200 in the middle of 800 x 800 and a bag of 200 x 200 before one side.
    for (AccessAxis access :
        EnumSet.of(AccessAxis.LEFT, AccessAxis.RIGHT, AccessAxis.FRONT, AccessAxis.REAR)) {
      RigBuilder rig =
          aDualCab()
              .canopySpace(aSpace(BOX, 900, -850, 0, new SizeMm(800, 800, 800)).access(access))
              .items(
                  anItem("kit").size(200, 200, 200).reach(Reach.EMERGENCY),
                  anItem("bag").size(200, 200, 200))
              .put("kit", BOX, 300, 300, 0)
              .put("bag", BOX, bagXMm, bagYMm, 0);
      assertThat(broken(rig))
          .as("bag towards %s, reached from %s", axis, access)
          .isEqualTo(access == axis ? List.of("EMERGENCY_REACH kit") : List.of());
    }
  }

  private static RigBuilder onShelf(int bagXMm, int bagYMm) {
    return aDualCab()
        .items(anItem("kit").size(400, 200, 200).reach(Reach.EMERGENCY), anItem("bag"))
        .put("kit", SHELF, 0, 300, 0)
        .put("bag", SHELF, bagXMm, bagYMm, 0);
  }

  /** A post beside the kit carries a board well above it. */
  private static RigBuilder inBox(int boardXMm, int boardZMm) {
    return aDualCab()
        .items(
            anItem("kit").reach(Reach.EMERGENCY),
            anItem("post").size(400, 300, boardZMm),
            anItem("board").size(400, 300, 50))
        .put("kit", BOX, 0, 0, 0)
        .put("post", BOX, 400, 0, 0)
        .put("board", BOX, boardXMm, 0, boardZMm);
  }

  private static RigBuilder underBoard(int cupXMm, int cupZMm) {
    return aDualCab()
        .items(
            anItem("kit").reach(Reach.EMERGENCY),
            anItem("post"),
            anItem("board").size(600, 300, 50),
            anItem("cup").size(100, 100, 100))
        .put("kit", BOX, 0, 0, 0)
        .put("post", BOX, 400, 0, 0)
        .put("board", BOX, 0, 0, 200)
        .put("cup", BOX, cupXMm, 0, cupZMm);
  }

  private static RigBuilder onSlide(int xMm, int yMm, int zMm) {
    return aDualCab()
        .fitted(aSlide("slide"), FRONT_BAY)
        .items(
            anItem("kit").size(400, 200, 200).reach(Reach.EMERGENCY),
            anItem("bag").size(400, 200, 200))
        .put("kit", "slide/top", 0, 0, 0)
        .put("bag", "slide/top", xMm, yMm, zMm);
  }
}
