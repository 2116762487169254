package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aModule;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.CARRIER;
import static kitstow.planner.testkit.Rigs.FRONT_BAY;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Environment;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class AirAuditTest {
  @Test
  void airAboveEndsAtTheTopOfTheSpace() {
    // 200 high in a space of 800.
    assertThat(broken(alone(anItem("fridge").air(KeepClear.Face.TOP, 600)))).isEmpty();
    assertThat(broken(alone(anItem("fridge").air(KeepClear.Face.TOP, 601))))
        .containsExactly("AIR_CLEARANCE fridge");
  }

  @Test
  void inTheOpenThereAreNoWalls() {
    RigBuilder rig =
        aDualCab()
            .items(anItem("fridge").size(300, 300, 200).air(KeepClear.Face.TOP, 5000))
            .put("fridge", CARRIER, 0, 0, 0);
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void anItemMayTouchTheAirAbove() {
    // The board starts 100 above the fridge.
    assertThat(broken(underBoard(100))).isEmpty();
    assertThat(broken(underBoard(101))).containsExactly("AIR_CLEARANCE fridge");
  }

  @Test
  void oneFreeEndIsEnough() {
    // 400 long in 800: 200 left at both ends, or 150 and 250.
    assertThat(broken(lengthways(200, 200))).isEmpty();
    assertThat(broken(lengthways(200, 201))).containsExactly("AIR_CLEARANCE fridge");
    assertThat(broken(lengthways(150, 250))).isEmpty();
    assertThat(broken(lengthways(150, 251))).containsExactly("AIR_CLEARANCE fridge");
  }

  @Test
  void theEndsTurnWithTheItem() {
    // Turned, the length of 400 lies across: from y 200 to 600.
    assertThat(broken(crossways(200))).isEmpty();
    assertThat(broken(crossways(201))).containsExactly("AIR_CLEARANCE fridge");
  }

  @Test
  void widthEndsLieTheOtherWay() {
    // 300 wide at y 0: 500 to the right.
    assertThat(broken(alone(anItem("fridge").air(KeepClear.Face.WIDTH_END, 500)))).isEmpty();
    assertThat(broken(alone(anItem("fridge").air(KeepClear.Face.WIDTH_END, 501))))
        .containsExactly("AIR_CLEARANCE fridge");
  }

  @Test
  void onItsEndTheLengthEndsAreAboveAndBelow() {
    ItemBuilder fridge = anItem("fridge").turns(Turn.WHL).air(KeepClear.Face.LENGTH_END, 400);
    assertThat(broken(aDualCab().items(fridge).put("fridge", BOX, Turn.WHL, 0, 0, 0))).isEmpty();
    ItemBuilder tooMuch = anItem("fridge").turns(Turn.WHL).air(KeepClear.Face.LENGTH_END, 401);
    assertThat(broken(aDualCab().items(tooMuch).put("fridge", BOX, Turn.WHL, 0, 0, 0)))
        .containsExactly("AIR_CLEARANCE fridge");
  }

  @Test
  void anItemOfTheNextSpaceTakesAirToo() {
    // In the open the air reaches beyond the space: into what stands 100 behind.
    assertThat(broken(carrierBefore(100))).isEmpty();
    assertThat(broken(carrierBefore(101))).containsExactly("AIR_CLEARANCE fridge");
  }

  @Test
  void aModuleTakesAir() {
    // The cupboard hangs 300 above the fridge.
    assertThat(broken(underCupboard(300))).isEmpty();
    assertThat(broken(underCupboard(301))).containsExactly("AIR_CLEARANCE fridge");
  }

  @Test
  void theModuleThatAnItemIsInDoesNot() {
    RigBuilder rig =
        aDualCab()
            .fitted(
                aModule("pantry", 800, 800, 800)
                    .space(aSpace("inside", 0, 0, 50, new SizeMm(800, 800, 700))),
                FRONT_BAY)
            .items(anItem("fridge").air(KeepClear.Face.TOP, 500))
            .put("fridge", "pantry/inside", 0, 0, 0);
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void onASlideModulesTakeNoAir() {
    // The cupboard hangs 250 above the fridge.
    RigBuilder rig =
        aDualCab()
            .canopyBay(aBay("hung", 100, 50, 600, new SizeMm(800, 800, 200)))
            .fitted(aSlide("slide"), FRONT_BAY)
            .fitted(aModule("cupboard", 800, 800, 200), "hung")
            .items(anItem("fridge").air(KeepClear.Face.TOP, 400))
            .put("fridge", "slide/top", 0, 0, 0);
    assertThat(broken(rig)).isEmpty();
  }

  private static RigBuilder underCupboard(int clearMm) {
    return alone(anItem("fridge").air(KeepClear.Face.TOP, clearMm))
        .canopyBay(aBay("hung", 900, -850, 500, new SizeMm(800, 800, 300)))
        .fitted(aModule("cupboard", 800, 800, 300), "hung");
  }

  private static RigBuilder alone(ItemBuilder item) {
    return aDualCab().items(item).put("fridge", BOX, 0, 0, 0);
  }

  private static RigBuilder underBoard(int clearMm) {
    return aDualCab()
        .items(
            anItem("fridge").air(KeepClear.Face.TOP, clearMm),
            anItem("post").size(300, 300, 300),
            anItem("board").size(300, 300, 50))
        .put("fridge", BOX, 0, 0, 0)
        .put("post", BOX, 400, 0, 0)
        .put("board", BOX, 350, 0, 300);
  }

  private static RigBuilder lengthways(int xMm, int clearMm) {
    return aDualCab()
        .items(anItem("fridge").air(KeepClear.Face.LENGTH_END, clearMm))
        .put("fridge", BOX, xMm, 0, 0);
  }

  private static RigBuilder crossways(int clearMm) {
    return aDualCab()
        .items(anItem("fridge").air(KeepClear.Face.LENGTH_END, clearMm))
        .put("fridge", BOX, Turn.WLH, 0, 200, 0);
  }

  private static RigBuilder carrierBefore(int clearMm) {
    // Both ends count, so the front one is taken by a bag that touches.
    return aDualCab()
        .traySpace(
            aSpace("behind", 2200, -500, 0, new SizeMm(300, 1000, 600))
                .zone(Zone.REAR_CARRIER)
                .environment(Environment.OPEN_AIR))
        .items(
            anItem("fridge").size(200, 300, 200).air(KeepClear.Face.LENGTH_END, clearMm),
            anItem("near").size(100, 300, 200),
            anItem("far").size(300, 300, 200))
        .put("near", CARRIER, 0, 0, 0)
        .put("fridge", CARRIER, 100, 0, 0)
        .put("far", "behind", 0, 0, 0);
  }
}
