package kitstow.planner.advice;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitstow.planner.model.Loading;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.Test;

class LiftTest {
  @Test
  void heightAndReachOfAPlaceGoIntoTheEquation() {
    // The shelf is filled from the left: y -850 to -50, its floor 950 mm up; the tray is 1800 wide.
    Loading loading =
        RigBuilder.aDualCab()
            .items(anItem("crate").size(400, 300, 200).massG(18_000L))
            .put("crate", Rigs.SHELF, 0, 0, 0)
            .load();
    Lift lift = Lift.of(loading, loading.placed().get("crate"));
    // Middle of the crate: y -850 + 150, z 950 + 100. Edge of the tray: y -900.
    assertThat(lift.heightMm()).isEqualTo(1050);
    assertThat(lift.reachMm()).isEqualTo(200 + 200);
    double place = 23.0 * (25.0 / 40.0) * (1.0 - 0.003 * 30.0) * (0.82 + 4.5 / 95.0);
    double ground = 23.0 * (25.0 / 35.0) * (1.0 - 0.003 * 65.0) * (0.82 + 4.5 / 95.0);
    double edge = 23.0 * (25.0 / 35.0) * (1.0 - 0.003 * 30.0) * (0.82 + 4.5 / 95.0);
    assertThat(lift.placeKg()).isCloseTo(Math.min(place, ground), within(1.0e-9));
    assertThat(lift.edgeKg()).isCloseTo(Math.min(edge, ground), within(1.0e-9));
    assertThat(lift.index()).isCloseTo(18.0 / Math.min(edge, ground), within(1.0e-9));
    assertThat(Lift.tooHeavy(loading)).containsExactly(lift);
  }

  @Test
  void whatIsDeepInsideOrHighUpIsOutOfReach() {
    Loading loading =
        RigBuilder.aDualCab()
            .items(
                anItem("deep").size(300, 300, 200).massG(11_000L),
                anItem("high").size(300, 300, 200).massG(12_000L))
            .put("deep", Rigs.SHELF, 0, 450, 0)
            .put("high", Rigs.PLATFORM, 0, 0, 0)
            .load();
    Lift deep = Lift.of(loading, loading.placed().get("deep"));
    assertThat(deep.placeKg()).isZero();
    assertThat(deep.edgeKg()).as("it can be slid in from the edge").isGreaterThan(11.0);
    Lift high = Lift.of(loading, loading.placed().get("high"));
    assertThat(high.placeKg()).isZero();
    assertThat(high.edgeKg()).isZero();
    assertThat(Lift.tooHeavy(loading)).containsExactly(high);
  }

  @Test
  void lightThingsAreNotLookedAt() {
    Loading loading =
        RigBuilder.aDualCab()
            .items(anItem("hat").size(300, 300, 200).massG(9_999L))
            .put("hat", Rigs.PLATFORM, 0, 0, 0)
            .load();
    assertThat(Lift.tooHeavy(loading)).isEmpty();
  }

  @Test
  void shippedPlansHaveLiftsThatNeedASecondPerson() {
    Loading loading = ShippedFiles.checked("remote-fortnight").situation().loading();
    assertThat(Lift.tooHeavy(loading)).isNotEmpty().allMatch(lift -> lift.index() > 1.0);
  }
}
