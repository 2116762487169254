package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.audit.Audited.finding;
import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aDrawer;
import static kitstow.planner.testkit.ModuleBuilder.aModule;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.RigBuilder.aBareDualCab;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.FRONT_BAY;
import static kitstow.planner.testkit.Rigs.REAR_BAY;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Facing;
import kitstow.planner.model.RuleId;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModuleAuditTest {
  @ParameterizedTest
  @CsvSource({"800, 800, 800, 0", "801, 800, 800, 1", "800, 802, 800, 2", "800, 800, 803, 3"})
  void aModuleFitsItsBay(int depthMm, int acrossMm, int heightMm, int tooMuchMm) {
    RigBuilder rig = aDualCab().fitted(aModule("pantry", depthMm, acrossMm, heightMm), FRONT_BAY);
    if (tooMuchMm == 0) {
      assertThat(broken(rig)).isEmpty();
    } else {
      assertThat(finding(rig, RuleId.MODULE_IN_BAY))
          .isEqualTo(
              new AuditFinding(
                  RuleId.MODULE_IN_BAY, List.of("pantry", FRONT_BAY), "", tooMuchMm, 0.0, "mm"));
    }
  }

  @Test
  void aModuleThatFacesTheRearLiesLengthways() {
    assertThat(broken(facingRear(900, 500))).isEmpty();
    assertThat(broken(facingRear(901, 500))).containsExactly("MODULE_IN_BAY pantry rear-facing");
    assertThat(broken(facingRear(900, 501))).containsExactly("MODULE_IN_BAY pantry rear-facing");
  }

  @Test
  void modulesSideBySideMayTouch() {
    assertThat(broken(sideBySide(800))).isEmpty();
  }

  @Test
  void oneMillimetreIntoTheNextModuleIsSeen() {
    assertThat(broken(sideBySide(801)))
        .containsExactly("MODULE_IN_BAY wide front-bay", "MODULE_CLASH next wide");
  }

  @Test
  void aSlideMayComeOutUpToAModule() {
    // Its face is at y 850 and it comes out by 700.
    assertThat(broken(withStep(1550))).isEmpty();
    assertThat(finding(withStep(1549), RuleId.MODULE_CLASH))
        .isEqualTo(
            new AuditFinding(RuleId.MODULE_CLASH, List.of("slide", "step"), "", 1.0, 0.0, "mm"));
  }

  @Test
  void aModuleOnADrawerIsNotInItsWay() {
    RigBuilder rig =
        aDualCab()
            .fitted(aDrawer("drawer"), FRONT_BAY)
            .fitted(aModule("crate", 700, 700, 300), "drawer/deck");
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void anItemMayTouchAModule() {
    // The slide's back is at y 150, the aisle starts at y 0.
    assertThat(broken(inAisle(150))).isEmpty();
    assertThat(broken(inAisle(151))).containsExactly("MODULE_CLASH bag slide");
  }

  @Test
  void anItemMayStandWhereASlideDoesNotReach() {
    assertThat(broken(besideTheUte(1550))).isEmpty();
    assertThat(broken(besideTheUte(1549))).containsExactly("MODULE_CLASH bag slide");
  }

  @Test
  void whatRidesOnASlideMayComeOutUpToAModule() {
    // The chest is 300 wide at y 150 and comes out to y 1150, over what the slide itself needs.
    assertThat(broken(withHighStep(1150))).isEmpty();
    assertThat(finding(withHighStep(1149), RuleId.MODULE_CLASH))
        .isEqualTo(
            new AuditFinding(RuleId.MODULE_CLASH, List.of("slide", "step"), "", 1.0, 0.0, "mm"));
  }

  @ParameterizedTest
  @CsvSource({
    // Closed at y 150 to 450, out by 700.
    "RIGHT, 100, 50, 100, 1150, 0, -1",
    // Closed at y -850 to -550; the bag is 300 wide.
    "LEFT, 100, -850, 100, -1850, 0, 1",
    // Closed at x 3000 to 3400.
    "REAR, 900, -400, 2100, -400, -1, 0"
  })
  void andUpToAnItem(
      Facing facing, int bayX, int bayY, int xMm, int yMm, int nearerXMm, int nearerYMm) {
    assertThat(broken(withBagBeside(facing, bayX, bayY, xMm, yMm))).isEmpty();
    assertThat(broken(withBagBeside(facing, bayX, bayY, xMm + nearerXMm, yMm + nearerYMm)))
        .containsExactly("MODULE_CLASH bag slide");
  }

  @Test
  void whatRidesOnASlideIsClearAllTheWay() {
    // Between where the chest is closed, up to y 450, and where it is out, from y 850.
    assertThat(broken(withBagHalfway(350))).isEmpty();
    assertThat(broken(withBagHalfway(349))).containsExactly("MODULE_CLASH bag slide");
  }

  @Test
  void whatRidesAlongIsNotInItsWay() {
    RigBuilder rig =
        withChest()
            .items(anItem("bag").size(400, 300, 100), anItem("cup").size(100, 100, 100))
            .put("bag", "slide/top", 0, 300, 0)
            .put("cup", "slide/top", 0, 0, 200);
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void modulesThatRideAlongOrHoldTheSlideAreNotInItsWay() {
    RigBuilder rig =
        aDualCab()
            .fitted(
                aModule("cabinet", 800, 800, 800)
                    .bay(aBay("low", 0, 0, 0, new SizeMm(800, 800, 700))),
                FRONT_BAY)
            .fitted(
                aSlide("slide").bay(aBay("plate", 400, 0, 100, new SizeMm(300, 700, 400)).moves()),
                "cabinet/low")
            .fitted(
                aModule("crate", 300, 700, 300)
                    .space(aSpace("inside", 0, 0, 0, new SizeMm(300, 700, 300))),
                "slide/plate")
            .items(anItem("chest").size(400, 200, 200), anItem("bag").size(400, 200, 200))
            .put("chest", "slide/top", 0, 0, 0)
            .put("bag", "crate/inside", 0, 0, 0);
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void whatStandsOnTheFixedPartIsInTheWay() {
    // The drawer's floor is 250 below its deck; its room is 200 high.
    assertThat(broken(underCrate(250))).containsExactly("INSIDE_SPACE chest drawer/drawer");
    assertThat(broken(underCrate(251)))
        .containsExactly(
            "MODULE_CLASH chest crate",
            "MODULE_CLASH crate drawer",
            "INSIDE_SPACE chest drawer/drawer");
  }

  private static RigBuilder withChest() {
    return aDualCab()
        .fitted(aSlide("slide"), FRONT_BAY)
        .items(anItem("chest"))
        .put("chest", "slide/top", 0, 0, 0);
  }

  private static RigBuilder withHighStep(int yMm) {
    return withChest()
        .canopyBay(aBay("outside", 100, yMm, 150, new SizeMm(300, 300, 300)))
        .fitted(aModule("step", 300, 300, 300), "outside");
  }

  private static RigBuilder withBagBeside(Facing facing, int bayX, int bayY, int xMm, int yMm) {
    String door =
        switch (facing) {
          case LEFT -> "left-door";
          case RIGHT -> "right-door";
          case REAR -> "rear-door";
        };
    return aDualCab()
        .canopyBay(aBay("bay", bayX, bayY, 50, new SizeMm(800, 800, 800)).facing(facing, door))
        .canopySpace(aSpace("beside", xMm, yMm, 150, new SizeMm(400, 300, 200)))
        .fitted(aSlide("slide"), "bay")
        .items(anItem("chest"), anItem("bag"))
        .put("chest", "slide/top", 0, 0, 0)
        .put("bag", "beside", 0, 0, 0);
  }

  private static RigBuilder withBagHalfway(int zMm) {
    return withChest()
        .canopySpace(aSpace("hung", 100, 500, zMm, new SizeMm(400, 300, 200)))
        .items(anItem("bag"))
        .put("bag", "hung", 0, 0, 0);
  }

  private static RigBuilder underCrate(int heightMm) {
    return aDualCab()
        .fitted(aDrawer("drawer"), FRONT_BAY)
        .fitted(aModule("crate", 700, 700, 300), "drawer/deck")
        .items(anItem("chest").size(400, 300, heightMm))
        .put("chest", "drawer/drawer", 0, 0, 0);
  }

  private static RigBuilder facingRear(int depthMm, int acrossMm) {
    return aBareDualCab()
        .canopyBay(
            aBay("rear-facing", 800, -250, 0, new SizeMm(900, 500, 300))
                .facing(Facing.REAR, "rear-door"))
        .fitted(aModule("pantry", depthMm, acrossMm, 300), "rear-facing");
  }

  private static RigBuilder sideBySide(int acrossMm) {
    return aDualCab()
        .fitted(aModule("wide", 700, acrossMm, 300), FRONT_BAY)
        .fitted(aModule("next", 700, 700, 300), REAR_BAY);
  }

  private static RigBuilder withStep(int yMm) {
    return aDualCab()
        .canopyBay(aBay("outside", 100, yMm, 50, new SizeMm(300, 300, 300)))
        .fitted(aSlide("slide"), FRONT_BAY)
        .fitted(aModule("step", 300, 300, 300), "outside");
  }

  private static RigBuilder inAisle(int widthMm) {
    return aDualCab()
        .canopySpace(aSpace("aisle", 100, 0, 50, new SizeMm(800, 200, 700)))
        .fitted(aSlide("slide"), FRONT_BAY)
        .items(anItem("bag").size(400, widthMm, 200))
        .put("bag", "aisle", 0, 0, 0);
  }

  private static RigBuilder besideTheUte(int yMm) {
    return aDualCab()
        .canopySpace(aSpace("beside", 100, yMm, 50, new SizeMm(800, 400, 700)))
        .fitted(aSlide("slide"), FRONT_BAY)
        .items(anItem("bag"))
        .put("bag", "beside", 0, 0, 0);
  }
}
