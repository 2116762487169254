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
