package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.PLATFORM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitstow.planner.model.RuleId;
import kitstow.planner.testkit.OtherSettings;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class SupportAuditTest {
  @Test
  void fourFifthsOfTheBaseIsEnough() {
    // 400 of 500 mm rest on the block: 800 per mille.
    assertThat(broken(overhangingBy(100))).isEmpty();
  }

  @Test
  void oneMillimetreLessIsNotEnough() {
    assertThat(broken(overhangingBy(101))).containsExactly("SUPPORT upper");
    assertThat(Audited.finding(overhangingBy(101), RuleId.SUPPORT).value())
        .isCloseTo(1000.0 * 399 / 500, within(1e-9));
  }

  @Test
  void aFloatingItemIsNotSupported() {
    assertThat(broken(aDualCab().items(anItem("floating")).put("floating", BOX, 0, 0, 1)))
        .containsExactly("SUPPORT floating");
  }

  @Test
  void anItemOnlyBesideAnotherIsNotSupported() {
    RigBuilder rig =
        aDualCab()
            .items(anItem("lower").size(400, 300, 200), anItem("upper").size(400, 300, 200))
            .put("lower", BOX, 0, 0, 0)
            .put("upper", BOX, 0, 300, 200);
    assertThat(broken(rig)).containsExactly("SUPPORT upper");
  }

  @Test
  void twoStripsHoldTheMiddleBetweenThem() {
    // Two strips of 200 x 500 under a base of 500 x 500, 100 apart: 800 per mille.
    RigBuilder rig =
        aDualCab()
            .items(
                anItem("strip").size(200, 500, 100).quantity(2),
                anItem("upper").size(500, 500, 100))
            .put("strip#1", BOX, 0, 0, 0)
            .put("strip#2", BOX, 300, 0, 0)
            .put("upper", BOX, 0, 0, 100);
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void theMiddleMayStandOnTheEdgeOfItsSupport() {
    assertThat(broken(halfSupported(250))).isEmpty();
  }

  @Test
  void theMiddleMayNotStandBesideItsSupport() {
    assertThat(broken(halfSupported(249))).containsExactly("SUPPORT upper");
  }

  @Test
  void theMiddleMayStandOnTheCornerWhereTwoSupportsMeet() {
    // Supports under two opposite quarters: the middle is where their corners meet.
    RigBuilder rig =
        aDualCab()
            .settings(OtherSettings.withSupportPermille(300))
            .items(
                anItem("quarter").size(200, 200, 100).quantity(2),
                anItem("upper").size(400, 400, 100))
            .put("quarter#1", BOX, 0, 0, 0)
            .put("quarter#2", BOX, 200, 200, 0)
            .put("upper", BOX, 0, 0, 100);
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void aPlatformIsAFloor() {
    assertThat(
            broken(
                aDualCab().items(anItem("bag").size(400, 300, 200)).put("bag", PLATFORM, 0, 0, 0)))
        .isEmpty();
    assertThat(
            broken(
                aDualCab().items(anItem("bag").size(400, 300, 200)).put("bag", PLATFORM, 0, 0, 1)))
        .containsExactly("SUPPORT bag");
  }

  private static RigBuilder overhangingBy(int overhangMm) {
    return aDualCab()
        .items(anItem("lower").size(500, 300, 200), anItem("upper").size(500, 300, 200))
        .put("lower", BOX, 0, 0, 0)
        .put("upper", BOX, overhangMm, 0, 200);
  }

  /** A base of 500 mm of which only the front part rests, where 300 per mille is enough. */
  private static RigBuilder halfSupported(int supportedMm) {
    return aDualCab()
        .settings(OtherSettings.withSupportPermille(300))
        .items(anItem("lower").size(supportedMm, 300, 200), anItem("upper").size(500, 300, 200))
        .put("lower", BOX, 0, 0, 0)
        .put("upper", BOX, 0, 0, 200);
  }
}
