package kitstow.planner.advice;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.UnaryOperator;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Need;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Zone;
import kitstow.planner.report.HomeReason;
import kitstow.planner.report.HomeReason.Cause;
import kitstow.planner.rules.Situation;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.OtherSettings;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class HomeReasonsTest {
  private static final Ratings RATED = new Ratings(20_000L, 20_000L, 20_000L, false);

  @Test
  void tooLargeForTheEmptySpaceIsToldInItsBestTurn() {
    HomeReason reason =
        reason(
            item -> item.size(900, 300, 435).turns(Turn.LWH, Turn.WLH), UnaryOperator.identity());
    // 600 x 1200 x 400: along the vehicle 300 too long; turned, 35 too high.
    assertThat(reason.cause()).isEqualTo(Cause.TOO_HIGH);
    assertThat(reason.rule()).isEqualTo(RuleId.INSIDE_SPACE);
    assertThat(reason.shortBy()).isEqualTo(35.0);
    assertThat(reason.unit()).isEqualTo("mm");
  }

  @Test
  void aDoorThatIsTooSmallIsToldWithWhatIsMissing() {
    HomeReason reason =
        reason(
            item -> item.size(500, 300, 300).turns(Turn.LWH),
            rig -> rig.door("hatch", Facing.LEFT, 0, 480));
    // 500 mm and 10 mm of clearance through 480 mm.
    assertThat(reason.cause()).isEqualTo(Cause.DOOR);
    assertThat(reason.shortBy()).isEqualTo(30.0);
  }

  @Test
  void gasIsBarredHoweverEmptyTheSpace() {
    HomeReason reason =
        reason(item -> item.size(300, 300, 300).marks(Mark.GAS), UnaryOperator.identity());
    assertThat(reason.cause()).isEqualTo(Cause.BARRED);
    assertThat(reason.rule()).isEqualTo(RuleId.GAS_OUTSIDE);
  }

  @Test
  void whatBelongsInTheCabIsBarredElsewhere() {
    HomeReason reason =
        reason(item -> item.size(300, 300, 300).marks(Mark.CAB), UnaryOperator.identity());
    assertThat(reason.cause()).isEqualTo(Cause.BARRED);
    assertThat(reason.rule()).isEqualTo(RuleId.CAB_REACH);
  }

  @Test
  void whatMustStayDryIsBarredFromTheOpen() {
    HomeReason reason =
        onRoof(item -> item.size(300, 300, 300).marks(Mark.DRY), UnaryOperator.identity());
    assertThat(reason.cause()).isEqualTo(Cause.BARRED);
    assertThat(reason.rule()).isEqualTo(RuleId.UNDER_COVER);
  }

  @Test
  void heavyGearIsBarredFromARoofUnlessTheSettingIsRaised() {
    UnaryOperator<ItemBuilder> can = item -> item.size(350, 170, 470).massG(21_300L);
    HomeReason reason = onRoof(can, UnaryOperator.identity());
    assertThat(reason.cause()).isEqualTo(Cause.BARRED);
    assertThat(reason.rule()).isEqualTo(RuleId.ROOF_GEAR);
    assertThat(onRoof(can, rig -> rig.settings(OtherSettings.withRoofGearG(21_300L))).cause())
        .isEqualTo(Cause.NOTHING);
    assertThat(onRoof(item -> can.apply(item).marks(Mark.BULKY), rig -> rig).cause())
        .isEqualTo(Cause.NOTHING);
  }

  @Test
  void whatOthersLeaveIsMeasuredInTheBestGap() {
    HomeReason reason =
        reason(
            item -> item.size(600, 300, 300).turns(Turn.LWH),
            rig -> rig.items(block()).put("block", "shelf", 0, 0, 0));
    // 1200 mm across less 1000 mm leave 200 mm for 300 mm.
    assertThat(reason.cause()).isEqualTo(Cause.GAP_TOO_NARROW);
    assertThat(reason.rule()).isEqualTo(RuleId.NO_OVERLAP);
    assertThat(reason.shortBy()).isEqualTo(100.0);
  }

  @Test
  void aLimitIsToldWithTheKilogramsOver() {
    HomeReason reason =
        reason(
            item -> item.size(300, 150, 100).massG(15_200L),
            rig -> rig.items(block()).put("block", "shelf", 0, 0, 0));
    // 9.0 kg there, 15.2 kg more, 20 kg rated.
    assertThat(reason.cause()).isEqualTo(Cause.OVER_LIMIT);
    assertThat(reason.rule()).isEqualTo(RuleId.SPACE_RATING);
    assertThat(reason.subjectId()).isEqualTo("shelf");
    assertThat(reason.shortBy()).isCloseTo(4.2, within(1.0e-9));
    assertThat(reason.unit()).isEqualTo("kg");
  }

  @Test
  void emptyingTheSpaceIsNoHelpWhereWhatMustComeIsTooHeavyAlone() {
    UnaryOperator<ItemBuilder> fridge =
        item -> item.size(600, 300, 300).turns(Turn.LWH).massG(25_300L);
    UnaryOperator<RigBuilder> full = rig -> rig.items(block()).put("block", "shelf", 0, 0, 0);
    // No gap for it beside the block; 25.3 kg without the block, 20 kg rated.
    HomeReason must = reason(item -> fridge.apply(item).need(Need.MUST), full);
    assertThat(must.cause()).isEqualTo(Cause.OVER_LIMIT_ALONE);
    assertThat(must.rule()).isEqualTo(RuleId.SPACE_RATING);
    assertThat(must.shortBy()).isCloseTo(5.3, within(1.0e-9));
    assertThat(reason(fridge, full).cause()).isEqualTo(Cause.GAP_TOO_NARROW);
    assertThat(reason(item -> fridge.apply(item).need(Need.MUST).massG(19_000L), full).cause())
        .isEqualTo(Cause.GAP_TOO_NARROW);
  }

  @Test
  void whatGoesInAndKeepsEveryLimitIsToldAsSuch() {
    assertThat(reason(item -> item.size(300, 300, 300), UnaryOperator.identity()).cause())
        .isEqualTo(Cause.NOTHING);
  }

  @Test
  void everyUnitHasAReasonForEverySpace() {
    Situation situation =
        Situation.of(rig().items(anItem("case").size(2000, 2000, 2000).quantity(3)).load());
    List<HomeReason> reasons = HomeReasons.of(situation);
    assertThat(reasons)
        .hasSize(3 * situation.loading().rig().spaces().size())
        .extracting(HomeReason::key)
        .contains("case#1", "case#2", "case#3");
  }

  private static ItemBuilder block() {
    return anItem("block").size(600, 1000, 300).turns(Turn.LWH).massG(9_000L);
  }

  private static RigBuilder rig() {
    return RigBuilder.aDualCab()
        .door("hatch", Facing.LEFT, 0, 2000)
        .canopySpace(
            aSpace("shelf", 0, -600, 0, new SizeMm(600, 1200, 400))
                .ratings(RATED)
                .access(AccessAxis.LEFT, "hatch"));
  }

  private static HomeReason reason(
      UnaryOperator<ItemBuilder> item, UnaryOperator<RigBuilder> change) {
    return reason(item, change, "shelf");
  }

  /** The reason for an open platform on the cab roof that is rated high enough. */
  private static HomeReason onRoof(
      UnaryOperator<ItemBuilder> item, UnaryOperator<RigBuilder> change) {
    return reason(
        item,
        rig ->
            change.apply(
                rig.uteSpace(
                    aSpace("roof", 0, -600, 1850, new SizeMm(1000, 1200, 600))
                        .zone(Zone.CAB_ROOF)
                        .environment(Environment.OPEN_AIR))),
        "roof");
  }

  private static HomeReason reason(
      UnaryOperator<ItemBuilder> item, UnaryOperator<RigBuilder> change, String spaceId) {
    ItemBuilder home = item.apply(anItem("case").massG(5_000L).turns(Turn.LWH));
    Situation situation = Situation.of(change.apply(rig().items(home)).load());
    return HomeReasons.of(situation).stream()
        .filter(reason -> reason.key().equals("case") && reason.spaceId().equals(spaceId))
        .findFirst()
        .orElseThrow();
  }
}
