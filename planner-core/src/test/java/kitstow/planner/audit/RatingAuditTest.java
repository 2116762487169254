package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.always;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.Masses.ratings;
import static kitstow.planner.testkit.ModuleBuilder.aDrawer;
import static kitstow.planner.testkit.ModuleBuilder.aModule;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.CARRIER;
import static kitstow.planner.testkit.Rigs.FRONT_BAY;
import static kitstow.planner.testkit.Rigs.PLATFORM;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static kitstow.planner.testkit.StateBuilder.certified;
import static kitstow.planner.testkit.StateBuilder.driving;
import static kitstow.planner.testkit.StateBuilder.parked;
import static org.assertj.core.api.Assertions.assertThat;

import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Loading;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class RatingAuditTest {
  @Test
  void aSpaceMayHoldItsRating() {
    assertThat(broken(ratedBox(kg(30)))).isEmpty();
    assertThat(broken(ratedBox(kg(30) + 1))).containsExactly("SPACE_RATING box");
  }

  @Test
  void theStateChoosesTheRatingOfASpace() {
    Loading loading = ratedBox(kg(30)).load();
    assertThat(broken(loading, driving(loading).offRoad().massG("a", kg(20)).build())).isEmpty();
    assertThat(broken(loading, driving(loading).offRoad().massG("a", kg(20) + 1).build()))
        .containsExactly("SPACE_RATING box");
    assertThat(broken(loading, parked(loading).massG("a", kg(40)).build())).isEmpty();
    assertThat(broken(loading, parked(loading).massG("a", kg(40) + 1).build()))
        .containsExactly("SPACE_RATING box");
    assertThat(broken(loading, certified(loading).build())).isEmpty();
  }

  @Test
  void runnersCarryTheMovingPartToo() {
    // 100 kg less the 10 kg that move.
    assertThat(broken(onSlide(false, kg(90)))).isEmpty();
    assertThat(broken(onSlide(false, kg(90) + 1))).containsExactly("SLIDE_RATING slide");
  }

  @Test
  void runnersRatedForContentsDoNotCountTheMovingPart() {
    assertThat(broken(onSlide(true, kg(100)))).isEmpty();
    assertThat(broken(onSlide(true, kg(100) + 1))).containsExactly("SLIDE_RATING slide");
  }

  @Test
  void aModuleCarriesItsContentsButNotItselfNorItsTank() {
    assertThat(broken(inPantry(kg(30)))).isEmpty();
    assertThat(broken(inPantry(kg(30) + 1))).containsExactly("MODULE_RATING pantry");
  }

  @Test
  void theFixedPartDoesNotCarryWhatIsOnItsSlide() {
    RigBuilder rig =
        aDualCab()
            .fitted(aDrawer("drawer").rating(always(kg(30))), FRONT_BAY)
            .items(anItem("inside").massG(kg(50)).size(300, 300, 100), anItem("on").massG(kg(30)))
            .put("inside", "drawer/drawer", 0, 0, 0)
            .put("on", "drawer/deck", 0, 0, 0);
    assertThat(broken(rig)).isEmpty();
    Loading loading = rig.load();
    assertThat(broken(loading, driving(loading).massG("on", kg(30) + 1).build()))
        .containsExactly("MODULE_RATING drawer");
  }

  @Test
  void aBayCarriesTheModuleAndAllInIt() {
    // 25 kg of slide and 15 kg on it.
    assertThat(broken(inRatedBay(kg(15)))).isEmpty();
    assertThat(broken(inRatedBay(kg(15) + 1))).containsExactly("BAY_RATING front-bay");
  }

  @Test
  void aDeckBayOnADrawerIsRatedLikeAnyOther() {
    RigBuilder rig =
        aDualCab()
            .fitted(
                aModule("drawer", 700, 700, 300)
                    .bay(
                        aBay("deck", 0, 0, 300, new SizeMm(700, 700, 500)).ratings(always(kg(40)))),
                FRONT_BAY)
            .fitted(aSlide("slide"), "drawer/deck")
            .items(anItem("fridge").massG(kg(15)))
            .put("fridge", "slide/top", 0, 0, 0);
    assertThat(broken(rig)).isEmpty();
    Loading loading = rig.load();
    assertThat(broken(loading, driving(loading).massG("fridge", kg(15) + 1).build()))
        .containsExactly("BAY_RATING drawer/deck");
  }

  @Test
  void theTrayCarriesTheCanopyAndAllOnIt() {
    // 150 kg of canopy, 10 kg in it and 10 kg behind it; not the bag on the cab roof.
    RigBuilder rig =
        aDualCab()
            .trayRating(always(kg(170)))
            .items(anItem("in"), anItem("behind").size(300, 300, 200), anItem("ahead"))
            .put("in", BOX, 0, 0, 0)
            .put("behind", CARRIER, 0, 0, 0)
            .put("ahead", PLATFORM, 100, 0, 0);
    assertThat(broken(rig)).isEmpty();
    Loading loading = rig.load();
    assertThat(broken(loading, driving(loading).massG("behind", kg(10) + 1).build()))
        .containsExactly("TRAY_RATING tray");
  }

  @Test
  void theTrayCarriesSleepersOnTheCanopyAtCamp() {
    Loading loading =
        aDualCab()
            .trayRating(always(kg(230)))
            .sleeper("ann", kg(80), "driver", Zone.CANOPY_ROOF)
            .load();
    assertThat(broken(loading, parked(loading).build())).isEmpty();
    assertThat(broken(loading, parked(loading).massG("ann", kg(80) + 1).build()))
        .containsExactly("TRAY_RATING tray");
    assertThat(broken(loading, driving(loading).massG("ann", kg(80) + 1).build())).isEmpty();
  }

  private static RigBuilder ratedBox(long massG) {
    return aDualCab()
        .canopySpace(
            aSpace(BOX, 900, -850, 0, new SizeMm(800, 800, 800))
                .ratings(ratings(kg(40), kg(30), kg(20))))
        .items(anItem("a").massG(massG))
        .put("a", BOX, 0, 0, 0);
  }

  private static RigBuilder onSlide(boolean contentsOnly, long massG) {
    return aDualCab()
        .fitted(aSlide("slide").slide(700, always(kg(100)), contentsOnly), FRONT_BAY)
        .items(anItem("fridge").massG(massG))
        .put("fridge", "slide/top", 0, 0, 0);
  }

  private static RigBuilder inPantry(long massG) {
    return aDualCab()
        .fitted(
            aModule("pantry", 700, 700, 700)
                .rating(always(kg(30)))
                .space(
                    aSpace("inside", 20, 20, 20, new SizeMm(660, 660, 400)).access(AccessAxis.FACE))
                .tank(
                    new Tank(
                        "water",
                        "Water",
                        SupplyKind.WATER,
                        /* capacityMl= */ 40_000L,
                        /* densityGPerL= */ 1000L,
                        Masses.weighed(kg(5)),
                        new LocalBoxMm(20, 20, 500, new SizeMm(660, 660, 150)),
                        /* startMl= */ 40_000L)),
            FRONT_BAY)
        .items(anItem("tins").massG(massG))
        .put("tins", "pantry/inside", 0, 0, 0);
  }

  private static RigBuilder inRatedBay(long massG) {
    return aDualCab()
        .canopyBay(
            aBay(FRONT_BAY, 100, 50, 50, new SizeMm(800, 800, 800))
                .facing(Facing.RIGHT, "right-door")
                .ratings(always(kg(40))))
        .fitted(aSlide("slide"), FRONT_BAY)
        .items(anItem("fridge").massG(massG))
        .put("fridge", "slide/top", 0, 0, 0);
  }
}
