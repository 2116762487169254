package kitstow.planner.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.statics.Lever;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The model of CP-SAT by cases that are worked out by hand; all invented. */
class OneBodyPackingTest {
  private static final List<Turn> AS_LISTED = List.of(Turn.LWH);
  private static final List<Turn> UPRIGHT = List.of(Turn.LWH, Turn.WLH);

  @BeforeEach
  void onlyWithItsLibrary() {
    CpSat.assumed();
  }

  private static BoxCase boxes(SizeMm room, int axleMm, BoxCase.Box... boxes) {
    return new BoxCase(room, axleMm, /* supportPermille= */ 1000, List.of(boxes));
  }

  private static BoxCase.Box box(
      int lengthMm, int widthMm, int heightMm, long massG, List<Turn> turns) {
    return new BoxCase.Box(new SizeMm(lengthMm, widthMm, heightMm), massG, turns);
  }

  @Test
  void theDenserOfTwoThatFillTheSectionLiesInFront() {
    BoxCase.Optimum optimum =
        OneBodyPacking.solve(
                boxes(
                    new SizeMm(500, 400, 300),
                    /* axleMm= */ -250,
                    box(300, 400, 300, 40_000L, AS_LISTED),
                    box(200, 400, 300, 20_000L, AS_LISTED)))
            .orElseThrow();

    // 40 kg at 250 + 150 and 20 kg at 250 + 300 + 100 mm behind the axle, doubled.
    assertThat(optimum.momentHalfGMm()).isEqualTo(2L * (40_000L * 400L + 20_000L * 650L));
  }

  @Test
  void aBoxAcrossTheAxleCountsWithThePartBehindIt() {
    BoxCase.Optimum optimum =
        OneBodyPacking.solve(
                boxes(
                    new SizeMm(500, 400, 300),
                    /* axleMm= */ 173,
                    box(300, 400, 300, 40_000L, AS_LISTED)))
            .orElseThrow();

    // 127 of 300 mm lie behind: 40 kg * 127^2 / 300, rounded up.
    assertThat(optimum.momentHalfGMm()).isEqualTo(2_150_534L);
  }

  @Test
  void aBoxIsTurnedAndStackedWhereThatIsForward() {
    BoxCase.Optimum optimum =
        OneBodyPacking.solve(
                boxes(
                    new SizeMm(600, 300, 300),
                    /* axleMm= */ 0,
                    box(300, 200, 150, 10_000L, UPRIGHT),
                    box(200, 200, 150, 10_000L, AS_LISTED)))
            .orElseThrow();

    assertThat(optimum.momentHalfGMm()).isEqualTo(2L * (10_000L * 100L + 10_000L * 100L));
    assertThat(optimum.places().get(0).lengthMm()).isEqualTo(200);
    assertThat(optimum.places().get(1).minZMm()).isEqualTo(150);
  }

  @Test
  void nothingStandsOnTwoBoxesAtOnce() {
    BoxCase.Optimum optimum =
        OneBodyPacking.solve(
                boxes(
                    new SizeMm(600, 300, 300),
                    /* axleMm= */ 0,
                    box(100, 300, 150, 10_000L, AS_LISTED),
                    box(100, 300, 150, 10_000L, AS_LISTED),
                    box(200, 200, 150, 30_000L, AS_LISTED)))
            .orElseThrow();

    // The heavy one could lie on both light ones at 100 mm; so they are stacked before it.
    assertThat(optimum.momentHalfGMm())
        .isEqualTo(2L * (10_000L * 50L + 10_000L * 50L + 30_000L * 200L));
  }

  @Test
  void whatDoesNotGoInIsProvedNotTo() {
    assertThat(
            OneBodyPacking.solve(
                boxes(
                    new SizeMm(500, 400, 300),
                    /* axleMm= */ 0,
                    box(300, 400, 300, 1_000L, AS_LISTED),
                    box(210, 400, 300, 1_000L, AS_LISTED))))
        .isEmpty();
  }

  @Test
  void slicesAddUpToTheFormulaOfTheLever() {
    BoxCase.Box box = box(290, 200, 150, 12_347L, AS_LISTED);
    for (int axleMm = -100; axleMm <= 700; axleMm += 37) {
      BoxCase one = boxes(new SizeMm(600, 300, 300), axleMm, box);
      assertThat(one.momentHalfGMm(box.massG(), 210, 500))
          .isEqualTo(Lever.overhangHalfGMm(box.massG(), 210, 500, axleMm));
    }
  }

  @Test
  void placesAreThoseOfTheOptimum() {
    BoxCase boxes =
        boxes(
            new SizeMm(500, 400, 300),
            /* axleMm= */ 100,
            box(300, 200, 300, 40_000L, UPRIGHT),
            box(300, 200, 300, 20_000L, UPRIGHT));

    BoxCase.Optimum optimum = OneBodyPacking.solve(boxes).orElseThrow();

    long sum = 0L;
    for (int i = 0; i < 2; i++) {
      BoxMm place = optimum.places().get(i);
      sum += boxes.momentHalfGMm(boxes.boxes().get(i).massG(), place.minXMm(), place.maxXMm());
    }
    assertThat(sum).isEqualTo(optimum.momentHalfGMm());
  }

  /** Two spaces of 200 mm, one from the axle line on and one 300 mm behind it, for two cubes. */
  private static BoxCase twoSpaces(long ratingInFrontG, BoxCase.Box... boxes) {
    SizeMm cube = new SizeMm(200, 200, 200);
    return new BoxCase(
        List.of(
            new BoxCase.Space(new PointMm(0, 0, 0), cube, ratingInFrontG),
            new BoxCase.Space(new PointMm(300, 300, 0), cube, Long.MAX_VALUE)),
        /* axleMm= */ 0,
        /* supportPermille= */ 1000,
        /* mostFrontHalfGMm= */ Long.MAX_VALUE,
        List.of(boxes));
  }

  @Test
  void whatASpaceMayNotCarryLiesInTheOther() {
    BoxCase boxes =
        twoSpaces(
            /* ratingInFrontG= */ 25_000L,
            box(200, 200, 200, 30_000L, AS_LISTED),
            box(200, 200, 200, 20_000L, AS_LISTED));

    assertThat(OneBodyPacking.solve(boxes).orElseThrow().momentHalfGMm())
        .isEqualTo(2L * (20_000L * 100L + 30_000L * 400L));
  }

  @Test
  void theWorseOfStartAndEndCounts() {
    BoxCase boxes =
        twoSpaces(
            /* ratingInFrontG= */ Long.MAX_VALUE,
            box(200, 200, 200, 30_000L, AS_LISTED).withEnd(10_000L),
            box(200, 200, 200, 20_000L, AS_LISTED).withEnd(40_000L));

    // The first in front: 11,000 kg mm at the start, 17,000 at the end. The second: 14,000, 8,000.
    assertThat(OneBodyPacking.solve(boxes).orElseThrow().momentHalfGMm())
        .isEqualTo(2L * 14_000_000L);
  }

  @Test
  void aFrontAxleThatMayCarryNothingMoreDrivesABoxAstrideTheRearOne() {
    BoxCase boxes =
        boxes(new SizeMm(600, 300, 300), /* axleMm= */ 300, box(200, 200, 200, 10_000L, AS_LISTED))
            .withMostFront(0L);

    // From 200 to 400: 100 of 200 mm lie behind the line, 10 kg * 100^2 / 200.
    assertThat(OneBodyPacking.solve(boxes).orElseThrow().momentHalfGMm()).isEqualTo(500_000L);
  }
}
