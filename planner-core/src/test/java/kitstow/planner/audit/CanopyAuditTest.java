package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.audit.Audited.finding;
import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aModule;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The canopy's outside is 1800 long, 900 high and from y -900 to 900. */
class CanopyAuditTest {
  @ParameterizedTest
  @CsvSource({
    "CANOPY_ROOF, 100, 0, 900, 0, 0, -1",
    "UNDER_TRAY, 100, 0, -200, 0, 0, 1",
    "REAR_CARRIER, 1800, 0, 100, -1, 0, 0",
    "CAB_ROOF, -400, 0, 100, 1, 0, 0",
    "TRAY, 100, 900, 100, 0, -1, 0",
    "TRAY, 100, -1200, 100, 0, 1, 0"
  })
  void gearOutsideMayTouchTheCanopy(
      Zone zone, int xMm, int yMm, int zMm, int inXMm, int inYMm, int inZMm) {
    // A bag of 400 x 300 x 200.
    assertThat(broken(bagAt(zone, xMm, yMm, zMm))).isEmpty();
    assertThat(finding(bagAt(zone, xMm + inXMm, yMm + inYMm, zMm + inZMm), RuleId.CANOPY_CLASH))
        .isEqualTo(new AuditFinding(RuleId.CANOPY_CLASH, List.of("bag"), "", 1.0, 0.0, "mm"));
  }

  @Test
  void gearInsideIsInsideIt() {
    assertThat(broken(bagAt(Zone.CANOPY, 100, 0, 100))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"REAR_CARRIER, 1800, true", "REAR_CARRIER, 1799, false", "CANOPY, 1799, true"})
  void modulesOutsideMayTouchIt(Zone zone, int xMm, boolean clear) {
    RigBuilder rig =
        aDualCab()
            .canopyBay(aBay("bay", xMm, 0, 100, new SizeMm(400, 400, 400)).zone(zone))
            .fitted(aModule("box-of-tools", 400, 400, 400), "bay");
    assertThat(broken(rig)).isEqualTo(clear ? List.of() : List.of("CANOPY_CLASH box-of-tools"));
  }

  private static RigBuilder bagAt(Zone zone, int xMm, int yMm, int zMm) {
    return aDualCab()
        .ute(ute -> ute.cabRoofG(1_000_000, 1_000_000))
        .canopySpace(aSpace("place", xMm, yMm, zMm, new SizeMm(400, 300, 200)).zone(zone))
        .items(anItem("bag"))
        .put("bag", "place", 0, 0, 0);
  }
}
