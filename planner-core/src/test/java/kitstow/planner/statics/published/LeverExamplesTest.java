package kitstow.planner.statics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.statics.AxleLoads;
import kitstow.planner.statics.CentreOfMass;
import kitstow.planner.statics.Lever;
import kitstow.planner.statics.OverhangMoment;
import kitstow.planner.testkit.PointRig;
import org.junit.jupiter.api.Test;

/** Published balance examples, carried through the planner's bodies and sums. */
class LeverExamplesTest {
  private static double centreX(PointRig rig) {
    Loading loading = rig.loading();
    return CentreOfMass.of(loading, PointRig.full(loading)).xMm();
  }

  private static AxleLoads axles(PointRig rig) {
    Loading loading = rig.loading();
    return AxleLoads.of(loading, PointRig.full(loading));
  }

  /** [S1] Nicholls's Seamanship and Nautical Knowledge, p. 498: 4 at 2, 6 at 5, 10 at 7 ft. */
  @Test
  void weightlessRodBalancesAtFivePointFourFeet() {
    PointRig rod = PointRig.wheelbase(1000).at("a", 4, 200).at("b", 6, 500).at("c", 10, 700);

    assertThat(centreX(rod) / 100.0).isCloseTo(5.4, within(0.001));
    assertThat(axles(rod).rearHalfGMm() / 200.0).isEqualTo(108.0);
  }

  /** [S1] p. 498: the 10 lb weight moved 3 ft towards the origin gives 3.9 ft, moment 78. */
  @Test
  void rodBalancesFurtherForwardWhenAWeightIsMoved() {
    PointRig rod = PointRig.wheelbase(1000).at("a", 4, 200).at("b", 6, 500).at("c", 10, 400);

    assertThat(centreX(rod) / 100.0).isCloseTo(3.9, within(0.01));
    assertThat(axles(rod).rearHalfGMm() / 200.0).isEqualTo(78.0);
  }

  /** [S1] p. 498-499: then the 4 lb weight is taken off; printed 4.38 ft (rounded), moment 70. */
  @Test
  void rodBalancesFurtherBackWhenAWeightIsTakenOff() {
    PointRig rod = PointRig.wheelbase(1000).at("b", 6, 500).at("c", 10, 400);

    assertThat(centreX(rod) / 100.0).isCloseTo(4.375, within(0.001)).isCloseTo(4.38, within(0.01));
    assertThat(axles(rod).rearHalfGMm() / 200.0).isEqualTo(70.0);
  }

  /** [S1] p. 499-500: 10 at 2 and 5 at 8 ft give 4.0; a further 10 at 7 gives 5.2. */
  @Test
  void addingAWeightMovesTheBalancePoint() {
    PointRig two = PointRig.wheelbase(1000).at("a", 10, 200).at("b", 5, 800);
    assertThat(centreX(two) / 100.0).isCloseTo(4.0, within(0.001));
    assertThat(centreX(two.at("c", 10, 700)) / 100.0).isCloseTo(5.2, within(0.001));
  }

  /** [S4] FAA pilot handbook ch. 9: 8,000 lb at 77.0 in; 100 lb moved from 30 to 150 gives 78.5. */
  @Test
  void movingCargoAftMovesTheCentreAft() {
    // 616,000 / 8,000 = 77.0; the rest of the aircraft balances at (616,000 - 3,000) / 7,900.
    int restMm = 7760; // 77.59 in, chosen below so that the total moment is exact
    long restMoment = 616_000L * 100L - 100L * 3000L;
    PointRig before =
        PointRig.wheelbase(20_000)
            .at("rest", 7_899, restMm)
            .at("trim", 1, (int) (restMoment - 7_899L * restMm))
            .at("cargo", 100, 3_000);
    PointRig after =
        PointRig.wheelbase(20_000)
            .at("rest", 7_899, restMm)
            .at("trim", 1, (int) (restMoment - 7_899L * restMm))
            .at("cargo", 100, 15_000);

    assertThat(centreX(before) / 100.0).isCloseTo(77.0, within(0.01));
    assertThat(centreX(after) / 100.0).isCloseTo(78.5, within(0.01));
    assertThat((axles(after).rearHalfGMm() - axles(before).rearHalfGMm()) / 200.0)
        .isEqualTo(12_000.0);
  }

  /** [S16] FAA handbook (second-hand): 65 lb from 150 to 30 bring 7,800 lb from 81.5 to 80.5 in. */
  @Test
  void cargoIsMovedUntilItBalances() {
    // The rest balances at (635,700 - 65 * 150) / 7,735 in, in a trim unit that makes it exact.
    long restMoment = 7_800L * 8_150L - 65L * 15_000L;
    int restMm = (int) (restMoment / 7_735L);
    PointRig rest =
        PointRig.wheelbase(20_000)
            .at("rest", 7_734, restMm)
            .at("trim", 1, (int) (restMoment - 7_734L * restMm));
    assertThat(centreX(rest.at("cargo", 65, 15_000)) / 100.0).isCloseTo(81.5, within(0.001));
    PointRig moved =
        PointRig.wheelbase(20_000)
            .at("rest", 7_734, restMm)
            .at("trim", 1, (int) (restMoment - 7_734L * restMm))
            .at("cargo", 65, 3_000);
    assertThat(centreX(moved) / 100.0).isCloseTo(80.5, within(0.001));
  }

  /** [S6] FAA glider test item: 945 lb, moment 78,000.2; 35 lb at 43.8 give 81.15, 1.38 forward. */
  @Test
  void ballastMovesTheCentreForward() {
    long moment = 7_800_020L;
    int restMm = (int) (moment / 945L);
    PointRig without =
        PointRig.wheelbase(20_000)
            .at("rest", 944, restMm)
            .at("trim", 1, (int) (moment - 944L * restMm));
    double before = centreX(without) / 100.0;
    double after = centreX(without.at("ballast", 35, 4_380)) / 100.0;
    assertThat(after).isCloseTo(81.15, within(0.01));
    assertThat(before - after).isCloseTo(1.38, within(0.01));
  }

  /** [S5] FAA mechanic test item (second-hand copy): 1,559 lb at +30.30 in after an alteration. */
  @Test
  void alterationMovesTheEmptyCentre() {
    // Two 12 lb seats are removed from +68.5: the empty aircraft without them stands for both.
    double[] mass = {1500.0, -24.0, 28.0, 30.0, 25.0};
    double[] arm = {28.4, 68.5, 73.0, 70.5, 85.0};

    assertThat(CentreOfMass.mean(mass, arm)).isCloseTo(30.30, within(0.01));
    PointRig rig =
        PointRig.wheelbase(10_000)
            .at("bare", 1476, (int) Math.round((1500 * 28.4 - 24 * 68.5) / 1476 * 100))
            .at("a", 28, 7300)
            .at("b", 30, 7050)
            .at("c", 25, 8500);
    assertThat(axles(rig).totalG()).isEqualTo(1559L);
    assertThat(centreX(rig) / 100.0).isCloseTo(30.30, within(0.01));
  }

  /** [S8] Vehicle-lift safety guide: 3,500 lb at 40 in and 5,500 lb at 195 in balance at 134.72. */
  @Test
  void weighedAxlesGiveTheCentreOfBalance() {
    PointRig vehicle = PointRig.wheelbase(15_500).empty(3500, 5500);

    // The datum lies 40 in ahead of the front axle.
    assertThat(centreX(vehicle) / 100.0 + 40.0).isCloseTo(134.72, within(0.01));
  }

  /**
   * [S125] Overhanging beam: supports at 0 and 6 m, 5 kN/m from 2 to 6 m, 30 kN at 10 m; printed
   * R_A -13.33 kN, R_B 63.33 kN, M_B -120 kN.m. The beam's supports are the axles.
   */
  @Test
  void overhangingBeamIsTheUteInMiniature() {
    double gravity = Lever.STANDARD_GRAVITY_M_S2;
    long spreadG = Math.round(20_000.0 / gravity * 1000.0);
    long pointG = Math.round(30_000.0 / gravity * 1000.0);
    Loading beam =
        PointRig.wheelbase(6000)
            .spread("spread", spreadG, 2000, 6000)
            .at("point", pointG, 10_000)
            .loading();
    LoadState state = PointRig.full(beam);
    AxleLoads axles = AxleLoads.of(beam, state);

    assertThat(axles.frontKg() * gravity / 1000.0).isCloseTo(-13.33, within(0.01));
    assertThat(axles.rearKg() * gravity / 1000.0).isCloseTo(63.33, within(0.01));
    assertThat(OverhangMoment.of(beam, state).newtonMetres() / 1000.0)
        .isCloseTo(120.0, within(0.01));
  }

  /** [S12] Trade article, weighed wagon: rear 1,233 kg, ball 270 kg, rear hitched 1,650 kg. */
  @Test
  void ballMassTakesLoadOffTheFrontAxle() {
    // Overhang / wheelbase 0.5444 is back-calculated from the weighing: this checks the form only.
    int wheelbase = 10_000;
    AxleLoads solo = axles(PointRig.wheelbase(wheelbase).empty(1_000_000, 1_233_000));
    AxleLoads hitched =
        axles(
            PointRig.wheelbase(wheelbase)
                .empty(1_000_000, 1_233_000)
                .trailer(2_700_000, 270_000, wheelbase + 5444));

    assertThat(hitched.rearKg()).isCloseTo(1650.0, within(1.0));
    assertThat(hitched.frontKg() - solo.frontKg()).isCloseTo(-147.0, within(1.0));
  }

  /**
   * Truck of Alonso et al. 2019 (ESICUP data set alonso_2019, CC0): axles 914 and 11,176 mm behind
   * the cab wall. Data published, answers derived by the lever rule.
   */
  @Test
  void truckAxlesShareAPalletByTheLeverRule() {
    int wheelbase = 11_176 - 914;
    AxleLoads middle = axles(PointRig.wheelbase(wheelbase).at("p", 10_000_000, 6000 - 914));
    // 10,000 * 5,086 / 10,262 = 4,956.149
    assertThat(middle.rearKg()).isCloseTo(4956.149, within(0.001));
    assertThat(middle.frontKg()).isCloseTo(5043.851, within(0.001));

    AxleLoads overFront = axles(PointRig.wheelbase(wheelbase).at("p", 10_000_000, 0));
    assertThat(overFront.frontKg()).isEqualTo(10_000.0);
    assertThat(overFront.rearKg()).isZero();

    AxleLoads ahead = axles(PointRig.wheelbase(wheelbase).at("p", 10_000_000, 500 - 914));
    assertThat(ahead.rearKg()).isCloseTo(-403.4, within(0.05));
  }
}
