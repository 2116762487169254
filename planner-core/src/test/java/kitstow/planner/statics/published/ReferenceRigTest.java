package kitstow.planner.statics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.statics.AxleLoads;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.statics.OverhangMoment;
import kitstow.planner.testkit.PointRig;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A generic dual cab with point masses and its lever table. The figures are derived from the lever
 * rule [S10, S28] and are regression values, not published evidence; axle loads only.
 */
class ReferenceRigTest {
  private static final int WHEELBASE_MM = 3200;

  private static int behindFront(int forwardOfRearAxleMm) {
    return WHEELBASE_MM - forwardOfRearAxleMm;
  }

  private static PointRig rig(int sparesForwardMm, long waterG) {
    return PointRig.wheelbase(WHEELBASE_MM)
        .empty(1_150_000, 800_000)
        .at("people", 170_000, behindFront(1700))
        .at("bar-and-winch", 85_000, behindFront(4050))
        .at("tray-point", 130_000, behindFront(-570))
        .at("canopy-point", 160_000, behindFront(-550))
        .at("fit-out", 120_000, behindFront(-500))
        .at("batteries", 45_000, behindFront(150))
        .at("fridge", 60_000, behindFront(-400))
        .at("water", waterG, behindFront(50))
        .at("gear", 200_000, behindFront(-600))
        .at("spares", 90_000, behindFront(sparesForwardMm))
        .at("roof-tent", 65_000, behindFront(-550));
  }

  private static AxleLoads axles(PointRig rig) {
    Loading loading = rig.loading();
    return AxleLoads.of(loading, PointRig.full(loading));
  }

  @ParameterizedTest
  @CsvSource({
    "150, 94.4",
    "330, 100.0",
    "500, 105.3",
    "900, 117.8",
    "1300, 130.3",
    "1700, 142.8",
    "1800, 145.9"
  })
  void hundredKilogramsOnTheDeckLoadTheRearAxleByTheLeverTable(int fromTrayFrontMm, double rearKg) {
    AxleLoads axles =
        axles(
            PointRig.wheelbase(WHEELBASE_MM)
                .at("mass", 100_000, WHEELBASE_MM - 330 + fromTrayFrontMm));

    assertThat(axles.rearKg()).isCloseTo(rearKg, within(0.05));
    assertThat(axles.frontKg()).isCloseTo(100.0 - rearKg, within(0.05));
  }

  @ParameterizedTest
  @CsvSource({"1150, 135.9", "1250, 139.1", "1350, 142.2"})
  void hundredKilogramsOnTheBallLoadTheRearAxleByTheLeverTable(int behindMm, double rearKg) {
    assertThat(
            axles(
                    PointRig.wheelbase(WHEELBASE_MM)
                        .trailer(1_000_000, 100_000, WHEELBASE_MM + behindMm))
                .rearKg())
        .isCloseTo(rearKg, within(0.05));
  }

  @ParameterizedTest
  @CsvSource({
    // spares ahead of the rear axle, water, front, rear
    "-1680, 66000, 1178, 1963",
    "60, 66000, 1227, 1914",
    "-1680, 6000, 1177, 1904"
  })
  void referenceRigHasTheDerivedAxleLoads(int sparesMm, long waterG, double front, double rear) {
    AxleLoads axles = axles(rig(sparesMm, waterG));

    assertThat(axles.frontKg()).isCloseTo(front, within(0.5));
    assertThat(axles.rearKg()).isCloseTo(rear, within(0.5));
  }

  @Test
  void ballMassCountsInTotalAndOnceInTheCombination() {
    // The reference rig with both spares ahead: 3,141 kg; trailer 2,000 kg, ball 200 kg.
    Loading loading = rig(60, 66_000).trailer(2_000_000, 200_000, behindFront(-1280)).loading();
    LoadState state = PointRig.full(loading);
    AxleLoads axles = AxleLoads.of(loading, state);

    assertThat(axles.totalKg()).isEqualTo(3341.0);
    assertThat(axles.frontKg()).isCloseTo(1147.0, within(0.5));
    assertThat(axles.rearKg()).isCloseTo(2194.0, within(0.5));
    List<LoadLine> gcm =
        RuleBook.LIMITS.stream()
            .filter(rule -> rule.card().id() == RuleId.GCM_LIMIT)
            .flatMap(rule -> rule.lines(loading, state).stream())
            .toList();
    assertThat(gcm)
        .singleElement()
        .satisfies(line -> assertThat(line.loadG(state)).isEqualTo(5_141_000.0));
  }

  /** A body is spread over its length: 130 kg from 330 ahead to 1,470 mm behind the rear axle. */
  @Test
  void spreadTrayHasALargerMomentThanAPointAtItsCentre() {
    Loading spread =
        PointRig.wheelbase(WHEELBASE_MM)
            .spread("tray-body", 130_000, WHEELBASE_MM - 330, WHEELBASE_MM + 1470)
            .loading();
    OverhangMoment moment = OverhangMoment.of(spread, PointRig.full(spread));
    // 130 kg * (1.47 m)^2 / (2 * 1.80 m) = 78.03 kg.m
    assertThat(moment.kilogramMetres()).isCloseTo(130.0 * 1.47 * 1.47 / 3.6, within(1e-6));
    assertThat(moment.kilogramMetres()).isCloseTo(78.0, within(0.05));
    assertThat(moment.newtonMetres()).isCloseTo(765.0, within(0.5));

    Loading point =
        PointRig.wheelbase(WHEELBASE_MM).at("tray-body", 130_000, WHEELBASE_MM + 570).loading();
    assertThat(OverhangMoment.of(point, PointRig.full(point)).kilogramMetres())
        .isCloseTo(74.1, within(0.05));
  }
}
