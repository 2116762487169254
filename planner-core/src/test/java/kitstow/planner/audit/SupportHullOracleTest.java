package kitstow.planner.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The tangent test against trying every triangle of corners. */
class SupportHullOracleTest {
  @Test
  void aTangentTellsWhatTrianglesTell() {
    int inside = 0;
    for (long seed = 1; seed <= 5000; seed++) {
      Random random = new Random(seed);
      Block base = new Block(span(random, 6), span(random, 6), new Span(0, 1));
      List<Contact> contacts = new ArrayList<>();
      List<long[]> corners = new ArrayList<>();
      for (int i = 1 + random.nextInt(3); i > 0; i--) {
        Span x = span(random, 8);
        Span y = span(random, 8);
        contacts.add(new Contact(Optional.empty(), x, y));
        for (int cornerX : new int[] {x.fromMm(), x.toMm()}) {
          for (int cornerY : new int[] {y.fromMm(), y.toMm()}) {
            corners.add(
                new long[] {
                  2L * cornerX - base.x().doubledMiddleMm(),
                  2L * cornerY - base.y().doubledMiddleMm()
                });
          }
        }
      }
      boolean expected = isInATriangle(corners);
      inside += expected ? 1 : 0;
      assertThat(SupportAudit.isMiddleOver(contacts, base))
          .as("seed %s: %s over %s", seed, base, contacts)
          .isEqualTo(expected);
    }
    assertThat(inside).isBetween(500, 4500);
  }

  @Test
  void nothingHoldsNothing() {
    Block base = new Block(new Span(0, 2), new Span(0, 2), new Span(0, 1));
    assertThat(SupportAudit.isMiddleOver(List.of(), base)).isFalse();
  }

  /** By Caratheodory, a point of a plane hull lies in a triangle of corners, edges included. */
  private static boolean isInATriangle(List<long[]> corners) {
    for (long[] a : corners) {
      for (long[] b : corners) {
        for (long[] c : corners) {
          long ab = cross(a, b);
          long bc = cross(b, c);
          long ca = cross(c, a);
          boolean flat = ab + bc + ca == 0L;
          if (!flat && ((ab >= 0 && bc >= 0 && ca >= 0) || (ab <= 0 && bc <= 0 && ca <= 0))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Turning from one corner to the other, seen from the middle at the origin. */
  private static long cross(long[] one, long[] other) {
    return one[0] * other[1] - one[1] * other[0];
  }

  private static Span span(Random random, int room) {
    int fromMm = random.nextInt(room);
    return new Span(fromMm, fromMm + 1 + random.nextInt(room));
  }
}
