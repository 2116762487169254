package kitstow.planner.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.planted.SoundPlans;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.trip.Timeline;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of loads, moments and margins for every plan, on generated ones. */
class StaticsPropertyTest {
  private static final double A_GRAM = 0.001;

  private final List<LoadState> states = new ArrayList<>();
  private Loading loading = SoundPlans.of(0).loading();

  private void plan(long seed) {
    loading = SoundPlans.of(seed).loading();
    states.clear();
    states.addAll(Timeline.of(loading).states());
    assertThat(states).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3, 4, 5})
  void axleLoadsAndSideLoadsAddUpToTheTotal(long seed) {
    plan(seed);
    for (LoadState state : states) {
      AxleLoads axles = AxleLoads.of(loading, state);
      SideLoads sides = SideLoads.of(loading, state);
      assertThat(axles.frontKg() + axles.rearKg()).isCloseTo(axles.totalKg(), within(1.0e-9));
      assertThat(sides.leftKg() + sides.rightKg()).isCloseTo(axles.totalKg(), within(1.0e-9));
      long bodiesG = 0L;
      for (int i = 0; i < state.size(); i++) {
        bodiesG += state.massG(i);
      }
      assertThat(axles.totalG()).isEqualTo(bodiesG);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3, 4, 5})
  void aMirroredLoadSwapsTheSidesAndNothingElse(long seed) {
    plan(seed);
    for (LoadState state : states) {
      LoadState mirrored =
          shifted(
              state,
              i -> 0,
              i ->
                  -loading.bodies().get(i).box().minYMm()
                      - loading.bodies().get(i).box().maxYMm()
                      - 2 * state.shift(i).yMm());
      assertThat(SideLoads.of(loading, mirrored).leftKg())
          .isCloseTo(SideLoads.of(loading, state).rightKg(), within(1.0e-9));
      assertThat(AxleLoads.of(loading, mirrored)).isEqualTo(AxleLoads.of(loading, state));
      assertThat(OverhangMoment.of(loading, mirrored)).isEqualTo(OverhangMoment.of(loading, state));
      CentreOfMass was = CentreOfMass.of(loading, state);
      CentreOfMass is = CentreOfMass.of(loading, mirrored);
      assertThat(is.yMm()).isCloseTo(-was.yMm(), within(1.0e-6));
      assertThat(is.xMm()).isEqualTo(was.xMm());
      assertThat(is.zMm()).isEqualTo(was.zMm());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3, 4, 5})
  void massThatMovesRearwardNeverLowersTheMomentAndLoadsTheRearAxleByTheLever(long seed) {
    plan(seed);
    Random random = new Random(seed);
    for (LoadState state : states) {
      int body = random.nextInt(state.size());
      int byMm = 1 + random.nextInt(900);
      LoadState then = shifted(state, i -> i == body ? byMm : 0, i -> 0);
      assertThat(OverhangMoment.of(loading, then).halfGMm())
          .isGreaterThanOrEqualTo(OverhangMoment.of(loading, state).halfGMm());
      double moreKg = AxleLoads.of(loading, then).rearKg() - AxleLoads.of(loading, state).rearKg();
      double leverKg = state.massG(body) / 1000.0 * byMm / loading.scenario().ute().wheelbaseMm();
      assertThat(moreKg).isCloseTo(leverKg, within(1.0e-9));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3, 4, 5})
  void everyMarginFallsWithWhatLoadsItAndRisesWithWhatRelievesIt(long seed) {
    plan(seed);
    Random random = new Random(seed);
    int falls = 0;
    int rises = 0;
    for (LoadState state : states) {
      for (LimitRule rule : RuleBook.LIMITS) {
        for (LoadLine line : rule.lines(loading, state)) {
          LoadLine.Term term = line.terms().get(random.nextInt(line.terms().size()));
          long addG = 1L + random.nextInt(20_000);
          LoadState then = heavier(state, term.body(), addG);
          double before = Margin.of(loading, state, line).marginKg();
          double after = Margin.of(loading, then, line).marginKg();
          double expected = addG / 1000.0 * term.numerator() / line.denominator();
          assertThat(before - after).isCloseTo(expected, within(A_GRAM / 1000.0));
          falls += term.numerator() > 0L ? 1 : 0;
          rises += term.numerator() < 0L ? 1 : 0;
        }
      }
    }
    assertThat(falls).isPositive();
    assertThat(rises).as("what stands behind the rear axle relieves the front one").isPositive();
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3, 4, 5})
  void loadsAreTheSameFromWhateverOriginTheyAreReckoned(long seed) {
    plan(seed);
    Random random = new Random(seed);
    double wheelbaseMm = loading.scenario().ute().wheelbaseMm();
    for (LoadState state : states) {
      double originMm = random.nextInt(20_000) - 10_000;
      double totalKg = 0.0;
      double momentKgMm = 0.0;
      for (int i = 0; i < state.size(); i++) {
        double middleMm =
            (loading.bodies().get(i).box().minXMm() + loading.bodies().get(i).box().maxXMm()) / 2.0
                + state.shift(i).xMm();
        totalKg += state.massG(i) / 1000.0;
        momentKgMm += state.massG(i) / 1000.0 * (middleMm - originMm);
      }
      // Moments about the front axle, which lies at -origin from the new origin.
      double rearKg = (momentKgMm + totalKg * originMm) / wheelbaseMm;
      assertThat(AxleLoads.of(loading, state).rearKg()).isCloseTo(rearKg, within(1.0e-6));
      assertThat(CentreOfMass.of(loading, state).xMm())
          .isCloseTo(momentKgMm / totalKg + originMm, within(1.0e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3, 4, 5})
  void everythingShiftedTakesTheCentreOfMassWithIt(long seed) {
    plan(seed);
    for (LoadState state : states) {
      LoadState then = shifted(state, i -> 130, i -> -40);
      CentreOfMass was = CentreOfMass.of(loading, state);
      CentreOfMass is = CentreOfMass.of(loading, then);
      assertThat(is.xMm() - was.xMm()).isCloseTo(130.0, within(1.0e-6));
      assertThat(is.yMm() - was.yMm()).isCloseTo(-40.0, within(1.0e-6));
      assertThat(is.zMm()).isEqualTo(was.zMm());
    }
  }

  private LoadState shifted(LoadState state, IntUnaryOperator byXMm, IntUnaryOperator byYMm) {
    long[] massG = new long[state.size()];
    List<ShiftMm> shift = new ArrayList<>();
    for (int i = 0; i < massG.length; i++) {
      massG[i] = state.massG(i);
      ShiftMm now = state.shift(i);
      shift.add(
          new ShiftMm(now.xMm() + byXMm.applyAsInt(i), now.yMm() + byYMm.applyAsInt(i), now.zMm()));
    }
    return with(state, massG, shift);
  }

  private LoadState heavier(LoadState state, int body, long addG) {
    long[] massG = new long[state.size()];
    List<ShiftMm> shift = new ArrayList<>();
    for (int i = 0; i < massG.length; i++) {
      massG[i] = state.massG(i) + (i == body ? addG : 0L);
      shift.add(state.shift(i));
    }
    return with(state, massG, shift);
  }

  private static LoadState with(LoadState state, long[] massG, List<ShiftMm> shift) {
    return new LoadState(
        state.id(),
        state.title(),
        state.kind(),
        state.surface(),
        state.trailerId(),
        state.legId(),
        state.slidesOut(),
        state.noteOnly(),
        massG,
        shift);
  }
}
