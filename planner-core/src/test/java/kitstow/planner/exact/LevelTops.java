package kitstow.planner.exact;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** Whether two boxes can ever bear a third together: their tops at one height, and room above. */
final class LevelTops {
  private final BoxCase boxes;
  private final int count;
  private final int roomMm;

  private LevelTops(BoxCase boxes) {
    this.boxes = boxes;
    this.count = boxes.boxes().size();
    this.roomMm = boxes.room().heightMm();
  }

  static boolean canBearTogether(BoxCase boxes) {
    return new LevelTops(boxes).any();
  }

  private boolean any() {
    for (int a = 0; a < count; a++) {
      for (int b = 0; b < a; b++) {
        int highest = roomMm - leastHeightBeside(a, b);
        BitSet common = tops(a, b, highest);
        common.and(tops(b, a, highest));
        if (!common.isEmpty()) {
          return true;
        }
      }
    }
    return false;
  }

  private int leastHeightBeside(int a, int b) {
    return IntStream.range(0, count)
        .filter(i -> i != a && i != b)
        .flatMap(i -> heights(i).stream().mapToInt(Integer::intValue))
        .min()
        .orElse(roomMm);
  }

  /** Heights up to a highest at which a box can have its top with another one not below it. */
  private BitSet tops(int box, int notBelow, int highestMm) {
    BitSet tops = new BitSet();
    for (int height : heights(box)) {
      stack(tops, 1 << box | 1 << notBelow, height, highestMm);
    }
    return tops;
  }

  private void stack(BitSet tops, int used, int topMm, int highestMm) {
    if (topMm > highestMm) {
      return;
    }
    tops.set(topMm);
    for (int below = 0; below < count; below++) {
      if ((used >> below & 1) == 0) {
        for (int height : heights(below)) {
          stack(tops, used | 1 << below, topMm + height, highestMm);
        }
      }
    }
  }

  private List<Integer> heights(int box) {
    return boxes.boxes().get(box).sizes().stream().map(size -> size.heightMm()).distinct().toList();
  }
}
