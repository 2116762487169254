package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.audit.Audited.finding;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.always;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.PLATFORM;
import static kitstow.planner.testkit.Rigs.RACK;
import static kitstow.planner.testkit.Rigs.SHELF;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Pin;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.SpaceBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaceAuditTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0, 0, 0",
    "400, 500, 600, 0",
    "-1, 0, 0, 1",
    "401, 0, 0, 1",
    "0, -2, 0, 2",
    "401, 502, 0, 2",
    "0, 0, -1, 1",
    "0, 0, 603, 3"
  })
  void anItemLiesInItsSpace(int xMm, int yMm, int zMm, int outMm) {
    RigBuilder rig = aDualCab().items(anItem("bag")).put("bag", BOX, xMm, yMm, zMm);
    List<AuditFinding> findings = new ArrayList<>(Audit.of(rig.load(), List.of()));
    findings.removeIf(finding -> finding.rule() != RuleId.INSIDE_SPACE);
    if (outMm == 0) {
      assertThat(findings).isEmpty();
    } else {
      assertThat(findings)
          .containsExactly(
              new AuditFinding(RuleId.INSIDE_SPACE, List.of("bag", BOX), "", outMm, 0.0, "mm"));
    }
  }

  @Test
  void anItemMayProjectFromARack() {
    // 300 at the ends, 100 at the sides; the rack is 1600 x 1200.
    assertThat(broken(onRack(1300, -300, -100))).isEmpty();
    assertThat(broken(onRack(1300, -301, -100))).containsExactly("INSIDE_SPACE long rack");
    assertThat(broken(onRack(1300, -300, -101))).containsExactly("INSIDE_SPACE long rack");
    assertThat(broken(onRack(1300, 600, 1000))).isEmpty();
    assertThat(broken(onRack(1300, 601, 1000))).containsExactly("INSIDE_SPACE long rack");
    assertThat(broken(onRack(1300, 600, 1001))).containsExactly("INSIDE_SPACE long rack");
  }

  @Test
  void anItemStandsAsItMay() {
    assertThat(broken(turned(Turn.HWL))).isEmpty();
    assertThat(broken(turned(Turn.WLH))).containsExactly("TURN_ALLOWED bag");
  }

  @Test
  void anItemOnBareBarsLiesOnTwo() {
    // Bars at 100 and 800.
    assertThat(broken(onRack(700, 100, 0))).isEmpty();
    assertThat(broken(onRack(699, 100, 0))).containsExactly("TWO_BARS long");
    assertThat(broken(onRack(699, 101, 0))).containsExactly("TWO_BARS long");
  }

  @Test
  void itsMiddleIsOverThemOrBetween() {
    // From -100 to 500: middle at 200.
    assertThat(broken(onTwoBars(100, 200))).isEmpty();
    assertThat(broken(onTwoBars(100, 199))).containsExactly("TWO_BARS long");
    assertThat(broken(onTwoBars(200, 300))).isEmpty();
    assertThat(broken(onTwoBars(201, 300))).containsExactly("TWO_BARS long");
  }

  @Test
  void itLiesOnTheBarsNotAboveThem() {
    RigBuilder rig =
        aDualCab().items(anItem("long").size(700, 300, 200)).put("long", RACK, 100, 0, 1);
    assertThat(broken(rig)).containsExactly("TWO_BARS long");
  }

  @Test
  void onAPlatformItsMiddleIsBetweenTheFirstAndTheLastBar() {
    // Bars at 100, 500 and 900.
    assertThat(broken(onPlatform(0, 200))).isEmpty();
    assertThat(broken(onPlatform(0, 199))).containsExactly("TWO_BARS bag");
    assertThat(broken(onPlatform(800, 200))).isEmpty();
    assertThat(broken(onPlatform(801, 199))).containsExactly("TWO_BARS bag");
  }

  @Test
  void aPlatformOnOneBarCarriesNothing() {
    assertThat(broken(onPlatform(400, 200).uteSpace(platform().bar("only", 500, always(kg(50))))))
        .containsExactly("TWO_BARS bag");
    assertThat(
            broken(
                onPlatform(400, 200)
                    .uteSpace(
                        platform()
                            .bar("first", 500, always(kg(50)))
                            .bar("second", 501, always(kg(50))))))
        .isEmpty();
  }

  @Test
  void itsMiddleIsOverTheSpaceAcross() {
    // 150 wide on 1200: the middle is over the edge at y -75 and 1125.
    assertThat(broken(acrossRack(-75))).isEmpty();
    assertThat(broken(acrossRack(-76))).containsExactly("TWO_BARS long");
    assertThat(broken(acrossRack(1125))).isEmpty();
    assertThat(broken(acrossRack(1126))).containsExactly("TWO_BARS long");
  }

  @Test
  void onAPlatformToo() {
    // Half of the item is beyond the floor.
    assertThat(broken(acrossPlatform(-75))).containsExactly("SUPPORT bag");
    assertThat(broken(acrossPlatform(-76))).containsExactly("SUPPORT bag", "TWO_BARS bag");
    assertThat(broken(acrossPlatform(1125))).containsExactly("SUPPORT bag");
    assertThat(broken(acrossPlatform(1126))).containsExactly("SUPPORT bag", "TWO_BARS bag");
  }

  @Test
  void anItemIsWhereItIsPinned() {
    Pin exact = new Pin(BOX, Optional.of(new SpacePointMm(10, 20, 0)), Optional.of(Turn.WLH));
    assertThat(broken(pinned(exact).put("bag", BOX, Turn.WLH, 10, 20, 0))).isEmpty();
    assertThat(broken(pinned(exact).put("bag", BOX, Turn.WLH, 11, 20, 0)))
        .containsExactly("PIN_KEPT bag");
    assertThat(broken(pinned(exact).put("bag", BOX, Turn.LWH, 10, 20, 0)))
        .containsExactly("PIN_KEPT bag");
    assertThat(broken(pinned(exact).put("bag", SHELF, Turn.WLH, 10, 20, 0)))
        .containsExactly("PIN_KEPT bag");
  }

  @Test
  void aPinToASpaceLeavesPlaceAndTurnOpen() {
    Pin loose = new Pin(BOX, Optional.empty(), Optional.empty());
    assertThat(broken(pinned(loose).put("bag", BOX, Turn.WLH, 400, 0, 0))).isEmpty();
    assertThat(broken(pinned(loose).put("bag", SHELF, 400, 0, 0))).containsExactly("PIN_KEPT bag");
    assertThat(broken(pinned(loose))).isEmpty();
  }

  private static RigBuilder turned(Turn turn) {
    return aDualCab().items(anItem("bag").turns(Turn.LWH, Turn.HWL)).put("bag", BOX, turn, 0, 0, 0);
  }

  private static RigBuilder pinned(Pin pin) {
    return aDualCab().items(anItem("bag").pin(pin));
  }

  private static RigBuilder onRack(int lengthMm, int xMm, int yMm) {
    return aDualCab().items(anItem("long").size(lengthMm, 300, 200)).put("long", RACK, xMm, yMm, 0);
  }

  private static RigBuilder acrossRack(int yMm) {
    return aDualCab().items(anItem("long").size(1300, 150, 200)).put("long", RACK, 0, yMm, 0);
  }

  private static RigBuilder onPlatform(int xMm, int lengthMm) {
    return aDualCab().items(anItem("bag").size(lengthMm, 300, 200)).put("bag", PLATFORM, xMm, 0, 0);
  }

  private static SpaceBuilder platform() {
    return aSpace(PLATFORM, 900, -600, 1850, new SizeMm(1000, 1200, 400))
        .zone(Zone.CAB_ROOF)
        .environment(Environment.OPEN_AIR)
        .platformFloor();
  }

  private static RigBuilder acrossPlatform(int yMm) {
    return aDualCab()
        .uteSpace(
            platform()
                .bar("first", 100, always(kg(50)))
                .bar("second", 900, always(kg(50)))
                .projection(0, 100))
        .items(anItem("bag").size(400, 150, 200))
        .put("bag", PLATFORM, 300, yMm, 0);
  }

  private static RigBuilder onTwoBars(int firstMm, int secondMm) {
    return aDualCab()
        .canopySpace(
            aSpace(RACK, 100, -600, 900, new SizeMm(1600, 1200, 400))
                .zone(Zone.CANOPY_ROOF)
                .environment(Environment.OPEN_AIR)
                .bar("first", firstMm, always(kg(50)))
                .bar("second", secondMm, always(kg(50)))
                .projection(300, 100))
        .items(anItem("long").size(600, 300, 200))
        .put("long", RACK, -100, 0, 0);
  }
}
