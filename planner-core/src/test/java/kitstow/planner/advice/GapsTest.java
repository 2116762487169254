package kitstow.planner.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GapsTest {
  private static final BoxMm ROOM = new BoxMm(0, 0, 0, 5, 4, 4);

  @Test
  void anEmptyRoomIsOneGap() {
    assertThat(Gaps.between(ROOM, List.of())).containsExactly(ROOM);
  }

  @Test
  void aFullRoomHasNone() {
    assertThat(Gaps.between(ROOM, List.of(ROOM))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void theGapsAreAllMaximalEmptyBoxesOfASmallRoom(long seed) {
    Random random = new Random(seed);
    List<BoxMm> taken = new ArrayList<>();
    for (int i = random.nextInt(5); i >= 0; i--) {
      int x = random.nextInt(5);
      int y = random.nextInt(4);
      int z = random.nextInt(4);
      taken.add(
          new BoxMm(
              x,
              y,
              z,
              x + 1 + random.nextInt(3),
              y + 1 + random.nextInt(3),
              z + random.nextInt(3)));
    }
    taken.removeIf(box -> box.heightMm() == 0);
    assertThat(Gaps.between(ROOM, taken)).containsExactlyInAnyOrderElementsOf(plain(taken));
  }

  /** Every box of whole millimetres, tried one by one. */
  private static Set<BoxMm> plain(List<BoxMm> taken) {
    List<BoxMm> empty = new ArrayList<>();
    for (int x0 = 0; x0 < 5; x0++) {
      for (int x1 = x0 + 1; x1 <= 5; x1++) {
        for (int y0 = 0; y0 < 4; y0++) {
          for (int y1 = y0 + 1; y1 <= 4; y1++) {
            for (int z0 = 0; z0 < 4; z0++) {
              for (int z1 = z0 + 1; z1 <= 4; z1++) {
                BoxMm box = new BoxMm(x0, y0, z0, x1, y1, z1);
                if (taken.stream().noneMatch(other -> Boxes.overlap(other, box))) {
                  empty.add(box);
                }
              }
            }
          }
        }
      }
    }
    Set<BoxMm> maximal = new LinkedHashSet<>();
    for (BoxMm box : empty) {
      if (empty.stream()
          .noneMatch(other -> !other.equals(box) && Boxes.protrusionMm(box, other) == 0)) {
        maximal.add(box);
      }
    }
    return maximal;
  }
}
