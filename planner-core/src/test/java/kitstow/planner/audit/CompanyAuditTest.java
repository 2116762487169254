package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.CARRIER;
import static kitstow.planner.testkit.Rigs.PLATFORM;
import static kitstow.planner.testkit.Rigs.RACK;
import static kitstow.planner.testkit.Rigs.SHELF;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Growth;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.OtherSettings;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.SpaceBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CompanyAuditTest {
  private static final Set<String> FORBIDDEN =
      Set.of(
          "FOOD FUEL",
          "FOOD OIL",
          "FOOD WET",
          "FUEL GAS",
          "FUEL ELECTRIC",
          "FUEL FRAGILE",
          "GAS ELECTRIC",
          "GAS FRAGILE",
          "ELECTRIC WET",
          "FOOD HEAVY_TOOL",
          "GAS HEAVY_TOOL",
          "ELECTRIC HEAVY_TOOL",
          "FRAGILE HEAVY_TOOL",
          "FUEL BEDDING",
          "OIL BEDDING",
          "WET BEDDING");

  @ParameterizedTest
  @EnumSource(Mark.class)
  void onlyForbiddenPairsAreRefusedInOneSpace(Mark one) {
    for (Mark other : Mark.values()) {
      boolean forbidden =
          FORBIDDEN.contains(one + " " + other) || FORBIDDEN.contains(other + " " + one);
      assertThat(pairs(together(one, BOX, other, BOX)))
          .as("%s and %s", one, other)
          .isEqualTo(forbidden ? List.of("FORBIDDEN_PAIR one other") : List.of());
    }
  }

  @ParameterizedTest
  @EnumSource(Mark.class)
  void fumesReachOtherSpacesOfTheSameAir(Mark one) {
    for (Mark other : Mark.values()) {
      boolean forbidden =
          FORBIDDEN.contains(one + " " + other) || FORBIDDEN.contains(other + " " + one);
      Set<Mark> both = EnumSet.of(one, other);
      boolean fumes = both.contains(Mark.FUEL) || both.contains(Mark.GAS);
      assertThat(pairs(together(one, BOX, other, SHELF)))
          .as("%s and %s", one, other)
          .isEqualTo(forbidden && fumes ? List.of("FORBIDDEN_PAIR one other") : List.of());
      assertThat(pairs(together(one, BOX, other, CARRIER))).as("%s and %s", one, other).isEmpty();
    }
  }

  @Test
  void marksOfOneItemDoNotForbidItself() {
    RigBuilder rig = aDualCab().items(generator()).put("generator#1", CARRIER, 0, 0, 0);
    assertThat(pairs(rig)).isEmpty();
  }

  @Test
  void unitsOfOneItemAreTwoItems() {
    RigBuilder rig =
        aDualCab()
            .items(generator())
            .put("generator#1", CARRIER, 0, 0, 0)
            .put("generator#2", CARRIER, 0, 300, 0);
    assertThat(pairs(rig)).containsExactly("FORBIDDEN_PAIR generator#1 generator#2");
  }

  @Test
  void gasAndFuelRideInTheOpen() {
    assertThat(broken(alone(Mark.GAS, BOX))).containsExactly("GAS_OUTSIDE one box");
    assertThat(broken(alone(Mark.FUEL, BOX))).containsExactly("FUEL_OUTSIDE one box");
    assertThat(broken(alone(Mark.GAS, CARRIER))).isEmpty();
    assertThat(broken(alone(Mark.FUEL, CARRIER))).isEmpty();
    assertThat(broken(alone(Mark.OIL, BOX))).isEmpty();
  }

  @Test
  void aLockerMustBeVentedOutsideNotOnlySealed() {
    assertThat(broken(alone(Mark.GAS, BOX).canopySpace(locker(Environment.VENTED_OUTSIDE))))
        .isEmpty();
    assertThat(broken(alone(Mark.FUEL, BOX).canopySpace(locker(Environment.VENTED_OUTSIDE))))
        .isEmpty();
    assertThat(broken(alone(Mark.GAS, BOX).canopySpace(locker(Environment.SEALED))))
        .containsExactly("GAS_OUTSIDE one box");
  }

  @Test
  void aVentIsNotEnoughInTheAirOfTheCanopyOrTheCab() {
    assertThat(broken(alone(Mark.GAS, BOX).canopySpace(box(Environment.VENTED_OUTSIDE))))
        .containsExactly("GAS_OUTSIDE one box");
    assertThat(broken(alone(Mark.FUEL, BOX).canopySpace(box(Environment.VENTED_OUTSIDE))))
        .containsExactly("FUEL_OUTSIDE one box");
    assertThat(broken(alone(Mark.GAS, "boot").uteSpace(boot())))
        .containsExactly("GAS_OUTSIDE one boot");
    assertThat(broken(alone(Mark.GAS, "boot").uteSpace(boot().ownAir()))).isEmpty();
  }

  @Test
  void aVentIsEnoughInAirOfItsOwnKind() {
    // Not in the canopy: its air is its own even if it is not said to be sealed.
    assertThat(
            broken(
                alone(Mark.GAS, CARRIER)
                    .traySpace(
                        aSpace(CARRIER, 1800, -500, 0, new SizeMm(300, 1000, 600))
                            .zone(Zone.REAR_CARRIER)
                            .environment(Environment.VENTED_OUTSIDE))))
        .isEmpty();
  }

  @Test
  void whatMustStayDryIsNotInTheOpen() {
    assertThat(broken(alone(Mark.DRY, CARRIER))).containsExactly("UNDER_COVER one carrier");
    assertThat(broken(alone(Mark.DRY, BOX))).isEmpty();
    assertThat(broken(alone(Mark.WET, CARRIER))).isEmpty();
    assertThat(broken(onPlatform(anItem("one").marks(Mark.DRY).massG(12_001L))))
        .containsExactly("UNDER_COVER one platform", "ROOF_GEAR one platform");
  }

  @Test
  void aClosedBoxOutsideIsCoverEnough() {
    assertThat(
            broken(
                alone(Mark.DRY, CARRIER)
                    .traySpace(
                        aSpace(CARRIER, 1800, -500, 0, new SizeMm(300, 1000, 600))
                            .zone(Zone.REAR_CARRIER)
                            .environment(Environment.DUST_PROOF)
                            .ownAir())))
        .isEmpty();
  }

  @Test
  void aRoofCarriesLightGearOrBulkyGear() {
    assertThat(broken(onPlatform(anItem("one").massG(12_000L)))).isEmpty();
    assertThat(broken(onPlatform(anItem("one").massG(12_001L))))
        .containsExactly("ROOF_GEAR one platform");
    assertThat(broken(onPlatform(anItem("one").massG(12_001L).marks(Mark.BULKY)))).isEmpty();
    assertThat(broken(onRack(anItem("one").massG(12_001L)))).containsExactly("ROOF_GEAR one rack");
    assertThat(broken(onRack(anItem("one").massG(12_000L)))).isEmpty();
  }

  @Test
  void otherPlacesInTheOpenTakeHeavierGear() {
    assertThat(
            broken(
                aDualCab()
                    .items(anItem("one").size(300, 300, 200).massG(40_000L))
                    .put("one", CARRIER, 0, 0, 0)))
        .isEmpty();
  }

  @Test
  void rubbishAndRainCountOnARoof() {
    // 11.000 kg, 0.600 kg of rubbish at most and 0.400 kg of rain make 12 kg.
    assertThat(broken(onPlatform(growing(400L)))).isEmpty();
    assertThat(broken(onPlatform(growing(401L)))).containsExactly("ROOF_GEAR one platform");
  }

  @Test
  void theSettingSaysHowHeavyRoofGearMayBe() {
    RigBuilder can = onPlatform(anItem("one").massG(21_300L));
    assertThat(broken(can.settings(OtherSettings.withRoofGearG(21_300L)))).isEmpty();
    assertThat(broken(can.settings(OtherSettings.withRoofGearG(21_299L))))
        .containsExactly("ROOF_GEAR one platform");
  }

  private static ItemBuilder growing(long wetG) {
    return anItem("one").massG(11_000L).growth(new Growth(100L, 600L, wetG));
  }

  private static RigBuilder onPlatform(ItemBuilder item) {
    return aDualCab().items(item.size(300, 300, 200)).put("one", PLATFORM, 300, 300, 0);
  }

  private static RigBuilder onRack(ItemBuilder item) {
    return aDualCab().items(item.size(900, 300, 200)).put("one", RACK, 50, 300, 0);
  }

  private static SpaceBuilder locker(Environment environment) {
    return box(environment).ownAir();
  }

  private static SpaceBuilder box(Environment environment) {
    return aSpace(BOX, 900, -850, 0, new SizeMm(800, 800, 800)).environment(environment);
  }

  private static SpaceBuilder boot() {
    return aSpace("boot", 900, -400, 1000, new SizeMm(800, 800, 400))
        .zone(Zone.CAB)
        .environment(Environment.VENTED_OUTSIDE);
  }

  private static ItemBuilder generator() {
    return anItem("generator").size(300, 300, 200).marks(Mark.FUEL, Mark.ELECTRIC).quantity(2);
  }

  private static RigBuilder together(Mark one, String oneIn, Mark other, String otherIn) {
    return aDualCab()
        .items(
            anItem("one").size(300, 300, 200).marks(one),
            anItem("other").size(300, 300, 200).marks(other))
        .put("one", oneIn, 0, 0, 0)
        .put("other", otherIn, 0, 300, 0);
  }

  private static RigBuilder alone(Mark mark, String spaceId) {
    return aDualCab()
        .items(anItem("one").size(300, 300, 200).marks(mark))
        .put("one", spaceId, 0, 0, 0);
  }

  private static List<String> pairs(RigBuilder rig) {
    List<String> lines = new ArrayList<>(broken(rig));
    lines.removeIf(line -> !line.startsWith("FORBIDDEN_PAIR"));
    return lines;
  }
}
