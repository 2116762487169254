package kitstow.planner.audit;

import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.always;
import static kitstow.planner.testkit.ModuleBuilder.aDrawer;
import static kitstow.planner.testkit.ModuleBuilder.aModule;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.CARRIER;
import static kitstow.planner.testkit.Rigs.FRONT_BAY;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Body;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What both judges take as given, by figures worked out by hand: the canopy's frame starts at x
 * 2000, y 0, z 900.
 */
class SharedPlacesTest {
  private static final SizeMm CUBE = new SizeMm(800, 800, 800);

  @ParameterizedTest
  @CsvSource({
    // Face flush with the side it opens to, at the forward lower corner; on a roof at the front.
    "RIGHT, 100, 50, 50, CANOPY, 2100, 150, 950, 2750, 850",
    "LEFT, 100, -850, 50, CANOPY, 2100, -850, 950, 2750, -150",
    "REAR, 900, -400, 50, CANOPY, 3000, -400, 950, 3700, 250",
    "REAR, 100, -400, 900, CANOPY_ROOF, 2100, -400, 1800, 2800, 250"
  })
  void aModuleStandsInItsBay(
      Facing facing,
      int bayX,
      int bayY,
      int bayZ,
      Zone zone,
      int minX,
      int minY,
      int minZ,
      int maxX,
      int maxY) {
    Rig rig =
        aDualCab()
            .canopyBay(aBay("bay", bayX, bayY, bayZ, CUBE).facing(facing).zone(zone))
            .fitted(aModule("module", 700, 650, 300), "bay")
            .load()
            .rig();
    assertThat(module(rig, "module").box())
        .isEqualTo(new BoxMm(minX, minY, minZ, maxX, maxY, minZ + 300));
  }

  @ParameterizedTest
  @CsvSource({
    // 10 from the back, 20 from the forward or left side: 100 deep, 200 across.
    "RIGHT, 100, 50, 2120, 160, 2320, 260",
    "LEFT, 100, -850, 2120, -260, 2320, -160",
    "REAR, 900, -400, 3010, -380, 3110, -180"
  })
  void itsSpacesTurnWithIt(
      Facing facing, int bayX, int bayY, int minX, int minY, int maxX, int maxY) {
    Rig rig =
        aDualCab()
            .canopyBay(aBay("bay", bayX, bayY, 50, CUBE).facing(facing))
            .fitted(
                aModule("module", 700, 700, 500)
                    .space(aSpace("room", 10, 20, 30, new SizeMm(100, 200, 300))),
                "bay")
            .load()
            .rig();
    assertThat(space(rig, "module/room").box())
        .isEqualTo(new BoxMm(minX, minY, 980, maxX, maxY, 1280));
  }

  @Test
  void aSpaceOverItsModuleEndsAtTheTopOfTheBay() {
    Rig rig = aDualCab().fitted(aSlide("slide"), FRONT_BAY).load().rig();
    assertThat(space(rig, "slide/top").box())
        .isEqualTo(new BoxMm(2100, 150, 1050, 2800, 850, 1750));
  }

  @Test
  void slidesCarryWhatMovesAndWhatStandsOnThat() {
    Rig rig =
        aDualCab()
            .fitted(aDrawer("drawer"), FRONT_BAY)
            .fitted(
                aSlide("slide")
                    .bay(aBay("plate", 0, 0, 100, new SizeMm(700, 700, 300)).moves())
                    .bay(aBay("side", 0, 0, 0, new SizeMm(700, 700, 50))),
                "drawer/deck")
            .fitted(
                aModule("crate", 300, 300, 300)
                    .slide(100, always(1_000))
                    .space(aSpace("still", 0, 0, 0, new SizeMm(300, 300, 100)))
                    .space(aSpace("pull", 0, 0, 100, new SizeMm(300, 300, 100)).moves()),
                "slide/plate")
            .fitted(aModule("box", 700, 700, 50), "slide/side")
            .load()
            .rig();
    assertThat(space(rig, "drawer/drawer").movesWith()).containsExactly("drawer");
    assertThat(space(rig, "drawer/drawer").inModules()).containsExactly("drawer");
    assertThat(module(rig, "slide").movesWith()).isEmpty();
    assertThat(module(rig, "slide").inModules()).containsExactly("drawer");
    assertThat(space(rig, "slide/top").movesWith()).containsExactly("slide");
    assertThat(space(rig, "slide/top").inModules()).containsExactly("slide", "drawer");
    assertThat(module(rig, "crate").movesWith()).containsExactly("slide");
    assertThat(module(rig, "crate").inModules()).containsExactly("slide", "drawer");
    assertThat(space(rig, "crate/still").movesWith()).containsExactly("slide");
    assertThat(space(rig, "crate/pull").movesWith()).containsExactly("crate", "slide");
    assertThat(space(rig, "crate/pull").inModules()).containsExactly("crate", "slide", "drawer");
    assertThat(module(rig, "box").movesWith()).isEmpty();
    assertThat(module(rig, "box").inModules()).containsExactly("slide", "drawer");
  }

  @Test
  void airIsSharedInTheCanopyAndInTheCabOnly() {
    Rig rig =
        aDualCab()
            .canopySpace(aSpace("locker", 900, -850, 0, CUBE).ownAir())
            .canopySpace(aSpace("open", 900, -850, 0, CUBE).environment(Environment.OPEN_AIR))
            .uteSpace(aSpace("seat", 900, -400, 1000, CUBE).zone(Zone.CAB))
            .uteSpace(aSpace("under", 900, -400, 0, CUBE).zone(Zone.UNDER_TRAY))
            .fitted(
                aModule("module", 700, 700, 500)
                    .space(aSpace("shared", 0, 0, 0, new SizeMm(100, 200, 300)))
                    .space(aSpace("sealed", 0, 300, 0, new SizeMm(100, 200, 300)).ownAir()),
                FRONT_BAY)
            .load()
            .rig();
    assertThat(space(rig, BOX).airId()).isEqualTo("air:canopy");
    assertThat(space(rig, "locker").airId()).isEqualTo("air:locker");
    assertThat(space(rig, "open").airId()).isEqualTo("air:open");
    assertThat(space(rig, "seat").airId()).isEqualTo("air:cab");
    assertThat(space(rig, "under").airId()).isEqualTo("air:under");
    assertThat(space(rig, CARRIER).airId()).isEqualTo("air:" + CARRIER);
    assertThat(space(rig, "module/shared").airId()).isEqualTo("air:canopy");
    assertThat(space(rig, "module/sealed").airId()).isEqualTo("air:module/sealed");
  }

  @Test
  void bodiesAreWhereTheirThingsAre() {
    Loading loading =
        aDualCab()
            .fitted(aSlide("slide"), FRONT_BAY)
            .items(anItem("chest"))
            .put("chest", "slide/top", Turn.WLH, 10, 20, 0)
            .load();
    Body chest = body(loading, "chest");
    assertThat(chest.box()).isEqualTo(new BoxMm(2110, 170, 1050, 2410, 570, 1250));
    assertThat(chest.zone()).isEqualTo(Optional.of(Zone.CANOPY));
    assertThat(chest.movesWith()).containsExactly("slide");
    assertThat(chest.inModules()).containsExactly("slide");
    assertThat(body(loading, "slide").movesWith()).isEmpty();
    assertThat(body(loading, "slide-moving").movesWith()).isEqualTo(List.of("slide"));
    assertThat(body(loading, Rig.CANOPY).box())
        .isEqualTo(new BoxMm(2000, -900, 900, 3800, 900, 1800));
    assertThat(body(loading, Rig.TRAY).box()).isEqualTo(new BoxMm(2000, -900, 800, 3800, 900, 900));
  }

  private static FittedModule module(Rig rig, String id) {
    return Optional.ofNullable(rig.modules().get(id)).get();
  }

  private static Space space(Rig rig, String id) {
    return Optional.ofNullable(rig.spaces().get(id)).get();
  }

  private static Body body(Loading loading, String key) {
    return loading.bodies().get(loading.indexOf(key));
  }
}
