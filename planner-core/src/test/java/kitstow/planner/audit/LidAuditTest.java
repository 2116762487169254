package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.always;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.ModuleBuilder.aDrawer;
import static kitstow.planner.testkit.ModuleBuilder.aModule;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.FRONT_BAY;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

/**
 * The slide's face is at y 850, in the plane of the right door, and it carries from z 1050 to 1750,
 * the inside top of the canopy. The chest stands at its back: y 150 to 450 when closed.
 */
class LidAuditTest {
  @Test
  void inAFixedSpaceALidOpensWhereItIs() {
    assertThat(broken(inBox(600))).isEmpty();
    assertThat(broken(inBox(601))).containsExactly("LID_CLEARANCE chest");
  }

  @Test
  void aModuleOverAFixedSpaceIsInTheWay() {
    // The cupboard hangs 300 above the chest.
    assertThat(broken(inBoxUnderCupboard(300))).isEmpty();
    assertThat(broken(inBoxUnderCupboard(301))).containsExactly("LID_CLEARANCE chest");
  }

  @Test
  void aLidMayOpenInItsOwnModule() {
    assertThat(broken(inPantry(500))).isEmpty();
    assertThat(broken(inPantry(501))).containsExactly("LID_CLEARANCE chest");
  }

  @Test
  void outsideTheWallTheCanopyIsNotInTheWay() {
    // Out by 700 the chest starts at y 850, right at the wall; 500 mm are left below the top.
    assertThat(broken(onSlide(700, 900))).isEmpty();
  }

  @Test
  void oneMillimetreInsideTheWallItIs() {
    assertThat(broken(onSlide(699, 900))).containsExactly("LID_CLEARANCE chest");
    assertThat(broken(onSlide(699, 500))).isEmpty();
    assertThat(broken(onSlide(699, 501))).containsExactly("LID_CLEARANCE chest");
  }

  @Test
  void withoutADoorTheFaceOfTheBayIsTheWall() {
    // Behind the canopy, where a lid that opens above the closed slide is over the top of its bay.
    assertThat(broken(withoutDoor(700))).isEmpty();
    assertThat(broken(withoutDoor(699))).containsExactly("LID_CLEARANCE chest");
  }

  @Test
  void aSlideThatComesOutInsideTheCanopyStaysBelowItsTop() {
    // A bay in the middle that faces right without a door: the chest ends up at y 150 to 450.
    // No door lets it out, which is broken for itself.
    assertThat(broken(inTheMiddle(500))).containsExactly("SLIDE_ENVELOPE slide front-bay");
    assertThat(broken(inTheMiddle(501)))
        .containsExactly("SLIDE_ENVELOPE slide front-bay", "LID_CLEARANCE chest");
  }

  @Test
  void aLidThatOpensInsideStaysInItsDrawer() {
    // The drawer is 200 high, the chest 100. By 680 it is out of the wall, by 679 it is not.
    assertThat(broken(inDrawer(679, 100))).isEmpty();
    assertThat(broken(inDrawer(679, 101))).containsExactly("LID_CLEARANCE chest");
    assertThat(broken(inDrawer(680, 101))).isEmpty();
  }

  @Test
  void whatRidesAlongIsInTheWayWhereverTheSlideIs() {
    assertThat(broken(withShelfAbove(300))).isEmpty();
    assertThat(broken(withShelfAbove(301))).containsExactly("LID_CLEARANCE chest");
  }

  @Test
  void whatStaysBehindIsInTheWayOfALidThatOpensInside() {
    // A shelf over the slide, from z 1600: 350 mm above the closed chest.
    assertThat(broken(underShelf(699, 350))).isEmpty();
    assertThat(broken(underShelf(699, 351))).containsExactly("LID_CLEARANCE chest");
    assertThat(broken(underShelf(700, 351))).isEmpty();
  }

  @Test
  void whatStandsBesideTheUteIsInTheWayOfALidThatOpensOutside() {
    // Something at y 850 to 1150 from z 1550: 300 mm above the chest.
    assertThat(broken(underAwning(300))).isEmpty();
    assertThat(broken(underAwning(301))).containsExactly("LID_CLEARANCE chest");
  }

  @Test
  void aModuleIsInTheWayOfALidThatOpensOutside() {
    assertThat(broken(underCupboard(300))).isEmpty();
    assertThat(broken(underCupboard(301))).containsExactly("LID_CLEARANCE chest");
  }

  private static RigBuilder inBox(int lidMm) {
    return aDualCab().items(anItem("chest").lid(lidMm)).put("chest", BOX, 0, 0, 0);
  }

  private static RigBuilder inBoxUnderCupboard(int lidMm) {
    return inBox(lidMm)
        .canopyBay(aBay("hung", 900, -850, 500, new SizeMm(800, 800, 300)))
        .fitted(aModule("cupboard", 800, 800, 300), "hung");
  }

  /** A room of 700 in a module of 800. */
  private static RigBuilder inPantry(int lidMm) {
    return aDualCab()
        .fitted(
            aModule("pantry", 800, 800, 800)
                .space(aSpace("inside", 0, 0, 50, new SizeMm(800, 800, 700))),
            FRONT_BAY)
        .items(anItem("chest").lid(lidMm))
        .put("chest", "pantry/inside", 0, 0, 0);
  }

  private static RigBuilder onSlide(int extensionMm, int lidMm) {
    return aDualCab()
        .fitted(aSlide("slide").slide(extensionMm, always(kg(100))), FRONT_BAY)
        .items(anItem("chest").lid(lidMm))
        .put("chest", "slide/top", 0, 0, 0);
  }

  private static RigBuilder withoutDoor(int extensionMm) {
    return onSlide(extensionMm, 900)
        .canopyBay(
            aBay(FRONT_BAY, 1800, 50, 50, new SizeMm(800, 800, 800))
                .facing(Facing.RIGHT)
                .zone(Zone.REAR_CARRIER));
  }

  private static RigBuilder inTheMiddle(int lidMm) {
    return onSlide(700, lidMm)
        .canopyBay(aBay(FRONT_BAY, 100, -650, 50, new SizeMm(800, 800, 800)).facing(Facing.RIGHT));
  }

  private static RigBuilder inDrawer(int extensionMm, int lidMm) {
    return aDualCab()
        .fitted(aDrawer("drawer").slide(extensionMm, always(kg(100))), FRONT_BAY)
        .items(anItem("chest").size(400, 300, 100).lid(lidMm))
        .put("chest", "drawer/drawer", 0, 0, 0);
  }

  /** A second space on the slide starts 300 above the chest. */
  private static RigBuilder withShelfAbove(int lidMm) {
    return aDualCab()
        .fitted(
            aSlide("slide").space(aSpace("upper", 0, 0, 600, new SizeMm(700, 700, 50)).moves()),
            FRONT_BAY)
        .items(anItem("chest").lid(lidMm), anItem("lid").size(100, 100, 40))
        .put("chest", "slide/top", 0, 0, 0)
        .put("lid", "slide/upper", 0, 0, 0);
  }

  private static RigBuilder underShelf(int extensionMm, int lidMm) {
    return onSlide(extensionMm, lidMm)
        .canopySpace(aSpace("high", 100, 50, 700, new SizeMm(800, 800, 100)))
        .items(anItem("maps").size(100, 300, 50))
        .put("maps", "high", 0, 100, 0);
  }

  private static RigBuilder underAwning(int lidMm) {
    return onSlide(700, lidMm)
        .canopySpace(aSpace("awning", 100, 850, 650, new SizeMm(800, 300, 100)))
        .items(anItem("pole").size(100, 300, 50))
        .put("pole", "awning", 0, 0, 0);
  }

  private static RigBuilder underCupboard(int lidMm) {
    return onSlide(700, lidMm)
        .canopyBay(aBay("hung", 100, 850, 650, new SizeMm(800, 300, 100)))
        .fitted(aModule("cupboard", 300, 800, 100), "hung");
  }
}
