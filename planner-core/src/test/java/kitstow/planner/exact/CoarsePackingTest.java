package kitstow.planner.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import org.junit.jupiter.api.Test;

/** The complete search by cases worked out by hand and beside CP-SAT; all invented. */
class CoarsePackingTest {
  private static final List<Turn> AS_LISTED = List.of(Turn.LWH);

  private static long moment(int supportPermille, BoxCase.Box... boxes) {
    SizeMm room = new SizeMm(600, 300, 300);
    return CoarsePacking.solve(new BoxCase(room, /* axleMm= */ 0, supportPermille, List.of(boxes)))
        .orElseThrow()
        .momentHalfGMm();
  }

  private static BoxCase.Box light() {
    return new BoxCase.Box(new SizeMm(100, 300, 150), 10_000L, AS_LISTED);
  }

  /** Longer than a light one and less wide. */
  private static BoxCase.Box heavy() {
    return new BoxCase.Box(new SizeMm(200, 200, 150), 30_000L, AS_LISTED);
  }

  @Test
  void aBoxStandsOnTwoAtOnce() {
    assertThat(moment(1000, light(), light(), heavy()))
        .isEqualTo(2L * (10_000L * 50L + 10_000L * 150L + 30_000L * 100L));
  }

  @Test
  void aBaseRestsOnAsMuchAsTheRuleAsks() {
    // Half of the heavy base on the light box, with its middle on the edge of that.
    assertThat(moment(500, light(), heavy())).isEqualTo(2L * (10_000L * 50L + 30_000L * 100L));
    // Neither rests on 80 % of its base on the other, so the heavy one comes first.
    assertThat(moment(800, light(), heavy())).isEqualTo(2L * (30_000L * 100L + 10_000L * 250L));
  }

  @Test
  void bothProofsAgreeWhereTheirRulesDo() {
    CpSat.assumed();
    Random random = new Random(20L);
    int compared = 0;
    while (compared < 20) {
      BoxCase boxes = BoxCases.coarse(2 * compared + random.nextInt(2), random);
      boxes = new BoxCase(boxes.room(), boxes.axleMm(), /* supportPermille= */ 1000, boxes.boxes());
      if (!LevelTops.canBearTogether(boxes)) {
        assertThat(CoarsePacking.solve(boxes).map(BoxCase.Optimum::momentHalfGMm))
            .as("%s", boxes)
            .isEqualTo(OneBodyPacking.solve(boxes).map(BoxCase.Optimum::momentHalfGMm));
        compared++;
      }
    }
  }
}
