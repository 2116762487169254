package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.StateBuilder.driving;
import static kitstow.planner.testkit.StateBuilder.parked;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import kitstow.planner.model.Loading;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.StateBuilder;
import kitstow.planner.testkit.UteBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * With tray and canopy at 150 kg each, spread about x = 2900, and 10 kg right above the rear axle:
 * rear = 700 + 300 * 2900 / 3000 + 10 = 1000 kg, front = 1000 + 300 * 100 / 3000 = 1010 kg.
 */
class AxleAuditTest {
  private static final long REAR_G = kg(1000);
  private static final long FRONT_G = kg(1010);

  @Test
  void rearAxleMayReachItsLimit() {
    assertThat(axles(rig(ute -> ute.rearAxleG(REAR_G)), kg(10), 0)).isEmpty();
  }

  @Test
  void oneGramOnTheRearAxleIsSeen() {
    assertThat(axles(rig(ute -> ute.rearAxleG(REAR_G)), kg(10) + 1, 0))
        .containsExactly("REAR_AXLE_LIMIT rear-axle");
  }

  @Test
  void oneMillimetreRearwardIsSeen() {
    // 10 kg by 1 mm: 10000 / 3000 g from the front axle to the rear one.
    assertThat(axles(rig(ute -> ute.rearAxleG(REAR_G)), kg(10), 1))
        .containsExactly("REAR_AXLE_LIMIT rear-axle");
    assertThat(axles(rig(ute -> ute.rearAxleG(REAR_G + 4)), kg(10), 1)).isEmpty();
    assertThat(axles(rig(ute -> ute.rearAxleG(REAR_G + 3)), kg(10), 1))
        .containsExactly("REAR_AXLE_LIMIT rear-axle");
  }

  @Test
  void frontAxleMayReachItsLimitAndNoGramMore() {
    assertThat(axles(rig(ute -> ute.frontAxleG(FRONT_G)), kg(10), 0)).isEmpty();
    assertThat(axles(rig(ute -> ute.frontAxleG(FRONT_G - 1)), kg(10), 0))
        .containsExactly("FRONT_AXLE_LIMIT front-axle");
    assertThat(axles(rig(ute -> ute.frontAxleG(FRONT_G)), kg(10), -1))
        .containsExactly("FRONT_AXLE_LIMIT front-axle");
  }

  @Test
  void axlesAndTyresAreNotJudgedAtCamp() {
    Loading loading =
        rig(ute -> ute.frontAxleG(0).rearAxleG(0).frontTyres(100, 0).rearTyres(100, 0)).load();
    assertThat(broken(loading, parked(loading).build())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"100, 800", "109, 1030", "110, 1060", "116, 1250", "121, 1450", "130, 1900"})
  void tyresCarryWhatTheirIndexSays(int loadIndex, int capacityKg) {
    long twoG = kg(2L * capacityKg);
    RigBuilder rig =
        rig(
            ute ->
                ute.gvmG(kg(9000))
                    .frontAxleG(kg(5000))
                    .rearAxleG(kg(5000))
                    .frontTyres(loadIndex, 2)
                    .rearTyres(loadIndex, 2));
    assertThat(uteOf(rig, twoG - FRONT_G + kg(1000), twoG - REAR_G + kg(700))).isEmpty();
    assertThat(uteOf(rig, twoG - FRONT_G + kg(1000) + 1, twoG - REAR_G + kg(700)))
        .containsExactly("FRONT_TYRE_LIMIT front-tyres");
    assertThat(uteOf(rig, twoG - FRONT_G + kg(1000), twoG - REAR_G + kg(700) + 1))
        .containsExactly("REAR_TYRE_LIMIT rear-tyres");
  }

  @ParameterizedTest
  @ValueSource(ints = {99, 131})
  void tyresOutsideTheTableAreNotJudged(int loadIndex) {
    RigBuilder rig = rig(ute -> ute.gvmG(kg(99_000)).rearAxleG(kg(99_000)).rearTyres(loadIndex, 2));
    assertThat(uteOf(rig, kg(1000), kg(50_000))).isEmpty();
  }

  private static RigBuilder rig(Consumer<UteBuilder> ute) {
    // 200 mm long at x 2900: its centre is right above the rear axle.
    return aDualCab().ute(ute).items(anItem("bag").size(200, 300, 200)).put("bag", BOX, 0, 0, 0);
  }

  private static List<String> axles(RigBuilder rig, long bagG, int shiftMm) {
    Loading loading = rig.load();
    return broken(loading, heavyBody(loading).massG("bag", bagG).shift("bag", shiftMm, 0).build());
  }

  private static List<String> uteOf(RigBuilder rig, long frontG, long rearG) {
    Loading loading = rig.load();
    return broken(
        loading, heavyBody(loading).massG("ute-front", frontG).massG("ute-rear", rearG).build());
  }

  private static StateBuilder heavyBody(Loading loading) {
    return driving(loading).massG("tray", kg(150)).massG("canopy", kg(150));
  }
}
