package kitstow.planner.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Scanner;
import java.util.function.Function;

/**
 * The first four multidimensional knapsack problems mknap1: C. C. Petersen, "Computational
 * experience with variants of the Balas algorithm applied to the selection of R&amp;D projects",
 * Management Science 13 (1967) 736-750 (from memory), as OR-Library has them (J. E. Beasley,
 * Journal of the Operational Research Society 41 (1990) 1069-1072). In its format: things, limits
 * and the optimum; values; what each thing takes, by limit; limits.
 */
final class Mknap1 {
  static final int PROBLEMS = 4;

  /** One value is printed with a decimal. */
  private static final double TENTHS = 10.0;

  private static final List<String> TEXTS =
      List.of(
          """
          6 10 3800
          100 600 1200 2400 500 2000
          8 12 13 64 22 41
          8 12 13 75 22 41
          3 6 4 18 6 4
          5 10 8 32 6 12
          5 13 8 42 6 20
          5 13 8 48 6 20
          0 0 0 0 8 0
          3 0 4 0 8 0
          3 2 4 0 8 4
          3 2 4 8 8 4
          80 96 20 36 44 48 10 18 22 24
          """,
          """
          10 10 8706.1
          600.1 310.5 1800 3850 18.6 198.7 882 4200 402.5 327
          20 5 100 200 2 4 60 150 80 40
          20 7 130 280 2 8 110 210 100 40
          60 3 50 100 4 2 20 40 6 12
          60 8 70 200 4 6 40 70 16 20
          60 13 70 250 4 10 60 90 20 24
          60 13 70 280 4 10 70 105 22 28
          5 2 20 100 2 5 10 60 0 0
          45 14 80 180 6 10 40 100 20 0
          55 14 80 200 6 10 50 140 30 40
          65 14 80 220 6 10 50 180 30 50
          450 540 200 360 440 480 200 360 440 480
          """,
          """
          15 10 4015
          100 220 90 400 300 400 205 120 160 580 400 140 100 1300 650
          8 24 13 80 70 80 45 15 28 90 130 32 20 120 40
          8 44 13 100 100 90 75 25 28 120 130 32 40 160 40
          3 6 4 20 20 30 8 3 12 14 40 6 3 20 5
          5 9 6 40 30 40 16 5 18 24 60 16 11 30 25
          5 11 7 50 40 40 19 7 18 29 70 21 17 30 25
          5 11 7 55 40 40 21 9 18 29 70 21 17 35 25
          0 0 1 10 4 10 0 6 0 6 32 3 0 70 10
          3 4 5 20 14 20 6 12 10 18 42 9 12 100 20
          3 6 9 30 29 20 12 12 10 30 42 18 18 110 20
          3 8 9 35 29 20 16 15 10 30 42 20 18 120 20
          550 700 130 240 280 310 110 205 260 275
          """,
          """
          20 10 6120
          100 220 90 400 300 400 205 120 160 580 400 140 100 1300 650 320 480 80 60 2550
          8 24 13 80 70 80 45 15 28 90 130 32 20 120 40 30 20 6 3 180
          8 44 13 100 100 90 75 25 28 120 130 32 40 160 40 60 55 10 6 240
          3 6 4 20 20 30 8 3 12 14 40 6 3 20 5 0 5 3 0 20
          5 9 6 40 30 40 16 5 18 24 60 16 11 30 25 10 13 5 1 80
          5 11 7 50 40 40 19 7 18 29 70 21 17 30 25 15 25 5 1 100
          5 11 7 55 40 40 21 9 18 29 70 21 17 35 25 20 25 5 2 110
          0 0 1 10 4 10 0 6 0 6 32 3 0 70 10 0 0 0 0 0
          3 4 5 20 14 20 6 12 10 18 42 9 12 100 20 5 6 4 1 20
          3 6 9 30 29 20 12 12 10 30 42 18 18 110 20 15 18 7 2 40
          3 8 9 35 29 20 16 15 10 30 42 20 18 120 20 20 22 7 3 50
          550 700 130 240 280 310 110 205 260 275
          """);

  /**
   * One of the problems.
   *
   * @param optimum the printed optimum, in tenths
   * @param value values, in tenths
   * @param takes what each thing takes, by limit
   * @param limits the limits
   */
  record Problem(long optimum, List<Long> value, List<List<Long>> takes, List<Long> limits) {}

  private Mknap1() {}

  static Problem problem(int number) {
    try (Scanner in = new Scanner(TEXTS.get(number))) {
      int things = in.nextInt();
      int limits = in.nextInt();
      long optimum = tenths(in.next());
      List<Long> value = numbers(in, things, Mknap1::tenths);
      List<List<Long>> takes = new ArrayList<>();
      for (int limit = 0; limit < limits; limit++) {
        takes.add(numbers(in, things, Long::parseLong));
      }
      return new Problem(optimum, value, takes, numbers(in, limits, Long::parseLong));
    }
  }

  private static List<Long> numbers(Scanner in, int count, Function<String, Long> read) {
    List<Long> numbers = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      numbers.add(read.apply(in.next()));
    }
    return numbers;
  }

  private static long tenths(String printed) {
    return Math.round(Double.parseDouble(printed) * TENTHS);
  }
}
