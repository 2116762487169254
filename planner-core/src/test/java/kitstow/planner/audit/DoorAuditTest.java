package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.always;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.ModuleBuilder.aModule;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.FRONT_BAY;
import static kitstow.planner.testkit.Rigs.SHELF;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Door;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class DoorAuditTest {
  /** The slide lies from 100 to 800 behind the canopy's front and from 50 up. */
  private static final int FROM_MM = 100;

  private static final int TO_MM = 800;

  @Test
  void aSlidePassesADoorAsWideAsItself() {
    assertThat(broken(slideBehind(FROM_MM, TO_MM))).isEmpty();
    assertThat(broken(slideBehind(FROM_MM + 1, TO_MM)))
        .containsExactly("SLIDE_ENVELOPE slide right-door");
    assertThat(broken(slideBehind(FROM_MM, TO_MM - 1)))
        .containsExactly("SLIDE_ENVELOPE slide right-door");
  }

  @Test
  void itsTallestContentPassesToo() {
    // Head at 800, slide from 50 to 150: 650 mm for the fridge.
    assertThat(broken(fridgeOnSlide(650))).isEmpty();
    assertThat(broken(fridgeOnSlide(651))).containsExactly("SLIDE_ENVELOPE slide right-door");
  }

  @Test
  void theTallestModuleOnItPassesToo() {
    assertThat(broken(crateOnSlide(650))).isEmpty();
    assertThat(broken(crateOnSlide(651))).containsExactly("SLIDE_ENVELOPE slide right-door");
  }

  @Test
  void theSlideItselfMustClearTheSill() {
    // The sill is 50 mm above the canopy floor; the room of the slide starts higher.
    assertThat(broken(slideAt(50))).isEmpty();
    assertThat(broken(slideAt(49))).containsExactly("SLIDE_ENVELOPE low right-door");
  }

  @Test
  void aSlideInTheCanopyNeedsADoor() {
    assertThat(broken(slideBehindDoors("rear-door")))
        .containsExactly("SLIDE_ENVELOPE slide front-bay");
    assertThat(broken(slideBehindDoors())).containsExactly("SLIDE_ENVELOPE slide front-bay");
  }

  @Test
  void aSlideOutsideTheCanopyNeedsNone() {
    RigBuilder rig =
        aDualCab()
            .canopyBay(
                aBay("behind", 1800, 50, 50, new SizeMm(800, 800, 800)).zone(Zone.REAR_CARRIER))
            .fitted(aSlide("slide"), "behind");
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void aStrutMayTouchTheSlide() {
    assertThat(broken(slideBehind(FROM_MM, 1000, new Door.Strut(TO_MM, 1000, 0, 900)))).isEmpty();
    assertThat(broken(slideBehind(FROM_MM, 1000, new Door.Strut(TO_MM - 1, 1000, 0, 900))))
        .containsExactly("SLIDE_ENVELOPE slide right-door");
  }

  @Test
  void oneDoorOnItsSideThatPassesIsEnough() {
    assertThat(broken(slideBehindDoors("rear-door", "narrow", "wide"))).isEmpty();
    assertThat(broken(slideBehindDoors("rear-door", "narrow")))
        .containsExactly("SLIDE_ENVELOPE slide narrow");
  }

  @Test
  void anItemNeedsClearanceInItsDoor() {
    assertThat(broken(behindLeftDoor(200, 410))).isEmpty();
    assertThat(broken(behindLeftDoor(200, 409))).containsExactly("DOOR_APERTURE bag shelf");
  }

  @Test
  void anItemPassesUnderAStrut() {
    // Sill at 50, strut from 400 up: 350 mm less 10 mm.
    Door.Strut above = new Door.Strut(0, 1800, 400, 900);
    assertThat(broken(behindLeftDoor(340, 1600, above))).isEmpty();
    assertThat(broken(behindLeftDoor(341, 1600, above))).containsExactly("DOOR_APERTURE bag shelf");
  }

  @Test
  void anItemPassesBetweenStruts() {
    Door.Strut before = new Door.Strut(0, 500, 0, 900);
    assertThat(broken(behindLeftDoor(200, 1600, before, new Door.Strut(910, 1800, 0, 900))))
        .isEmpty();
    assertThat(broken(behindLeftDoor(200, 1600, before, new Door.Strut(909, 1800, 0, 900))))
        .containsExactly("DOOR_APERTURE bag shelf");
  }

  @Test
  void aDoorOnAnotherSideIsOfNoUse() {
    RigBuilder rig =
        aDualCab()
            .canopySpace(
                aSpace(SHELF, 100, -850, 50, new SizeMm(800, 800, 700))
                    .access(AccessAxis.LEFT, "right-door"))
            .items(anItem("bag"))
            .put("bag", SHELF, 0, 0, 0);
    assertThat(broken(rig)).containsExactly("DOOR_APERTURE bag shelf");
  }

  @Test
  void cornersFindWhatTryingEveryPlaceFinds() {
    for (long seed = 1; seed <= 2000; seed++) {
      Random random = new Random(seed);
      List<Door.Strut> struts = new ArrayList<>();
      for (int i = random.nextInt(4); i > 0; i--) {
        int from = random.nextInt(14) - 2;
        int lower = random.nextInt(10) - 2;
        struts.add(
            new Door.Strut(
                from, from + 1 + random.nextInt(5), lower, lower + 1 + random.nextInt(5)));
      }
      FittedDoor door =
          new FittedDoor(
              new Door("door", "door", Facing.LEFT, 0, 12, 0, 8, struts), 0, 12, 0, 8, struts, 0);
      int across = 1 + random.nextInt(12);
      int high = 1 + random.nextInt(8);
      assertThat(DoorAudit.takes(door, across, high))
          .as("seed %s: %s x %s past %s", seed, across, high, struts)
          .isEqualTo(passesSomewhere(struts, across, high));
    }
  }

  private static boolean passesSomewhere(List<Door.Strut> struts, int across, int high) {
    for (int a = 0; a + across <= 12; a++) {
      for (int z = 0; z + high <= 8; z++) {
        int start = a;
        int lower = z;
        if (struts.stream()
            .allMatch(
                strut ->
                    strut.toMm() <= start
                        || strut.fromMm() >= start + across
                        || strut.upperZMm() <= lower
                        || strut.lowerZMm() >= lower + high)) {
          return true;
        }
      }
    }
    return false;
  }

  private static RigBuilder slideBehind(int fromMm, int toMm, Door.Strut... struts) {
    return aDualCab()
        .door("right-door", Facing.RIGHT, fromMm, toMm, struts)
        .fitted(aSlide("slide"), FRONT_BAY);
  }

  private static RigBuilder fridgeOnSlide(int heightMm) {
    return slideBehind(FROM_MM, TO_MM)
        .items(anItem("fridge").size(400, 300, heightMm))
        .put("fridge", "slide/top", 0, 0, 0);
  }

  private static RigBuilder crateOnSlide(int heightMm) {
    return aDualCab()
        .fitted(
            aSlide("slide").bay(aBay("plate", 0, 0, 100, new SizeMm(700, 700, 700)).moves()),
            FRONT_BAY)
        .fitted(aModule("crate", 700, 700, heightMm), "slide/plate");
  }

  private static RigBuilder slideAt(int floorMm) {
    return aDualCab()
        .canopyBay(
            aBay("low-bay", 100, 50, floorMm, new SizeMm(800, 800, 800))
                .facing(Facing.RIGHT, "right-door"))
        .fitted(
            aModule("low", 700, 700, 100)
                .slide(700, always(kg(50)))
                .space(aSpace("top", 0, 0, 60, new SizeMm(700, 700, 30)).moves()),
            "low-bay");
  }

  private static RigBuilder slideBehindDoors(String... doors) {
    return aDualCab()
        .door("narrow", Facing.RIGHT, FROM_MM, TO_MM - 1)
        .door("wide", Facing.RIGHT, FROM_MM, TO_MM)
        .canopyBay(
            aBay(FRONT_BAY, 100, 50, 50, new SizeMm(800, 800, 800)).facing(Facing.RIGHT, doors))
        .fitted(aSlide("slide"), FRONT_BAY);
  }

  private static RigBuilder behindLeftDoor(int heightMm, int openingMm, Door.Strut... struts) {
    return aDualCab()
        .door("left-door", Facing.LEFT, 100, 100 + openingMm, struts)
        .items(anItem("bag").size(400, 300, heightMm))
        .put("bag", SHELF, 0, 0, 0);
  }
}
