package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.audit.Audited.finding;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.StateBuilder.certified;
import static kitstow.planner.testkit.StateBuilder.driving;
import static kitstow.planner.testkit.StateBuilder.parked;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.UteBuilder;
import org.junit.jupiter.api.Test;

class MassAuditTest {
  /** Empty ute, tray and canopy. */
  private static final long RIG_G = kg(1700 + 100 + 150);

  @Test
  void totalMayReachGvm() {
    assertThat(broken(withGear(kg(10)))).isEmpty();
  }

  @Test
  void oneGramOverGvmIsSeen() {
    assertThat(finding(withGear(kg(10) + 1), RuleId.GVM_LIMIT))
        .isEqualTo(
            new AuditFinding(
                RuleId.GVM_LIMIT,
                List.of("ute"),
                "driving",
                RIG_G + kg(10) + 1,
                RIG_G + kg(10),
                "g"));
  }

  @Test
  void parkedIsNotJudgedByGvm() {
    Loading loading = withGear(kg(10) + 1).load();
    assertThat(broken(loading, parked(loading).build())).isEmpty();
  }

  @Test
  void certificationFillsTheSeatsAndLeavesTheGearHome() {
    long seatsG = 2 * 81_600L;
    Loading fits = aDualCab().ute(ute -> ute.gvmG(RIG_G + seatsG)).load();
    assertThat(broken(fits, certified(fits).build())).isEmpty();
    Loading over = aDualCab().ute(ute -> ute.gvmG(RIG_G + seatsG - 1)).load();
    assertThat(broken(over, certified(over).build())).containsExactly("GVM_LIMIT ute");
  }

  @Test
  void theBallMassCountsOnceInTheCombination() {
    // 1950 kg of ute, 2000 kg of trailer; 200 kg of it stand on the ball.
    long combinationG = RIG_G + kg(2000);
    assertThat(towing(ute -> ute.gcmG(combinationG), /* braked= */ true)).isEmpty();
    assertThat(towing(ute -> ute.gcmG(combinationG - 1), /* braked= */ true))
        .containsExactly("GCM_LIMIT van");
  }

  @Test
  void brakesDecideWhichTowingLimitHolds() {
    assertThat(towing(ute -> ute.towingG(kg(2000), 0), /* braked= */ true)).isEmpty();
    assertThat(towing(ute -> ute.towingG(kg(2000) - 1, kg(2000)), /* braked= */ true))
        .containsExactly("TOWING_LIMIT van");
    assertThat(towing(ute -> ute.towingG(0, kg(2000)), /* braked= */ false)).isEmpty();
    assertThat(towing(ute -> ute.towingG(kg(2000), kg(2000) - 1), /* braked= */ false))
        .containsExactly("TOWING_LIMIT van");
  }

  @Test
  void ballMassIsThatOfTheState() {
    assertThat(towing(ute -> ute.ballG(kg(200)), /* braked= */ true)).isEmpty();
    assertThat(towing(ute -> ute.ballG(kg(200) - 1), /* braked= */ true))
        .containsExactly("BALL_LIMIT van");
  }

  @Test
  void whatIsNotKnownIsNotJudged() {
    assertThat(towing(ute -> ute.withoutTowingLimits(), /* braked= */ true)).isEmpty();
  }

  @Test
  void aTrailerStaysBehindAtCamp() {
    Loading loading = rig(ute -> ute.gcmG(0).ballG(0).towingG(0, 0), true).load();
    assertThat(broken(loading, parked(loading).towing("van").build())).isEmpty();
  }

  private static RigBuilder withGear(long massG) {
    return aDualCab()
        .ute(ute -> ute.gvmG(RIG_G + kg(10)))
        .items(anItem("bag").massG(massG))
        .put("bag", BOX, 0, 0, 0);
  }

  private static List<String> towing(Consumer<UteBuilder> ute, boolean braked) {
    Loading loading = rig(ute, braked).load();
    return broken(loading, driving(loading).towing("van").build());
  }

  private static RigBuilder rig(Consumer<UteBuilder> ute, boolean braked) {
    return aDualCab()
        .ute(each -> each.towingG(kg(3500), kg(3500)))
        .ute(ute)
        .trailer("van", kg(2000), kg(200), braked);
  }
}
