package kitstow.planner.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A rectangle cut into squares that all differ, by the code of C. J. Bouwkamp ("On the dissection
 * of rectangles into squares", Koninklijke Nederlandse Akademie van Wetenschappen, Proceedings 49
 * (1946) and 50 (1947); from memory): each square goes into the leftmost of the gaps that reach
 * furthest up.
 *
 * @param width width of the rectangle
 * @param height height of the rectangle
 * @param sides sides of the squares in the order in which they are laid down
 */
public record BouwkampCode(int width, int height, List<Integer> sides) {
  /**
   * All two of order 9 and four of the six of order 10; the codes prove themselves when they are
   * laid down (R. L. Brooks, C. A. B. Smith, A. H. Stone, W. T. Tutte, "The dissection of
   * rectangles into squares", Duke Mathematical Journal 7 (1940) 312-340; OEIS A002839; both from
   * memory).
   */
  public static final List<BouwkampCode> OF_ORDER_9_AND_10 =
      List.of(
          new BouwkampCode(33, 32, List.of(18, 15, 7, 8, 14, 4, 10, 1, 9)),
          new BouwkampCode(69, 61, List.of(36, 33, 5, 28, 25, 9, 2, 7, 16)),
          new BouwkampCode(57, 55, List.of(30, 27, 3, 11, 13, 25, 8, 17, 2, 15)),
          new BouwkampCode(65, 47, List.of(25, 17, 23, 11, 6, 5, 24, 22, 3, 19)),
          new BouwkampCode(105, 104, List.of(60, 45, 19, 26, 44, 16, 12, 7, 33, 28)),
          new BouwkampCode(130, 79, List.of(45, 44, 41, 3, 38, 12, 35, 34, 11, 23)));

  /** A square where it lies. */
  public record Square(int left, int top, int side) {}

  /** Copies its sides. */
  public BouwkampCode {
    sides = List.copyOf(sides);
  }

  /** Lays the squares down. */
  List<Square> laidDown() {
    List<Square> squares = new ArrayList<>();
    int[] filled = new int[width];
    for (int side : sides) {
      int top = Arrays.stream(filled).min().orElse(0);
      int left = IntStream.range(0, width).filter(x -> filled[x] == top).findFirst().orElse(0);
      squares.add(new Square(left, top, side));
      Arrays.fill(filled, left, Math.min(width, left + side), top + side);
    }
    return squares;
  }

  /** Whether squares of just these sides lie in the rectangle without overlap and fill it. */
  boolean isTiledBy(List<Square> squares) {
    boolean[][] taken = new boolean[width][height];
    for (Square square : squares) {
      for (int x = square.left(); x < square.left() + square.side(); x++) {
        for (int y = square.top(); y < square.top() + square.side(); y++) {
          if (x < 0 || y < 0 || x >= width || y >= height || taken[x][y]) {
            return false;
          }
          taken[x][y] = true;
        }
      }
    }
    long area = squares.stream().mapToLong(square -> (long) square.side() * square.side()).sum();
    return area == (long) width * height
        && sides.stream()
            .sorted()
            .toList()
            .equals(squares.stream().map(Square::side).sorted().toList());
  }
}
