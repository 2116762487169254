package kitstow.planner.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.ContactHull;
import org.junit.jupiter.api.Test;

/** Whether a middle is held, by turns of direction, beside the project's convex hull. */
class RestsTest {
  private static final BoxMm UPPER = new BoxMm(0, 0, 100, 400, 300, 200);

  private static Rests on(List<BoxMm> supports) {
    Rests rests = new Rests(UPPER);
    supports.forEach(rests::on);
    return rests;
  }

  private static BoxMm below(int minXMm, int minYMm, int maxXMm, int maxYMm) {
    return new BoxMm(minXMm, minYMm, 0, maxXMm, maxYMm, 100);
  }

  @Test
  void aShareOfTheBaseIsEnoughUpToTheLastMillimetre() {
    assertThat(on(List.of(below(0, 0, 320, 300))).enough(800)).isTrue();
    assertThat(on(List.of(below(0, 0, 319, 300))).enough(800)).isFalse();
  }

  @Test
  void aMiddleOnTheEdgeIsHeldAndOneBeyondItIsNot() {
    assertThat(on(List.of(below(0, 0, 200, 300))).enough(400)).isTrue();
    assertThat(on(List.of(below(0, 0, 199, 300))).enough(400)).isFalse();
  }

  @Test
  void bothWaysOfTellingAgree() {
    Random random = new Random(5L);
    int held = 0;
    for (int i = 0; i < 2_000; i++) {
      List<BoxMm> supports = new ArrayList<>();
      for (int k = 0; k < 1 + random.nextInt(3); k++) {
        int x = 40 * random.nextInt(10);
        int y = 30 * random.nextInt(10);
        supports.add(
            below(x, y, x + 40 * (1 + random.nextInt(5)), y + 30 * (1 + random.nextInt(5))));
      }
      boolean holds = ContactHull.holdsCentre(UPPER, supports);
      assertThat(on(supports).enough(/* permille= */ 0)).as("%s", supports).isEqualTo(holds);
      held += holds ? 1 : 0;
    }
    assertThat(held).isBetween(200, 1_800);
  }
}
