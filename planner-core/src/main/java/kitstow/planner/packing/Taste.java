package kitstow.planner.packing;

import java.util.SplittableRandom;

/**
 * What is liked in a block that is to fill a gap: weights of large, of dense, of filling the
 * cross-section, of what must come along, of luck.
 */
public record Taste(double large, double dense, double fitting, double needed, double luck) {
  private static final double MOST_NEEDED = 1.5;

  /** Large ones first, with a little luck, so that much goes in. */
  public static Taste roomy(SplittableRandom random) {
    return new Taste(
        1.0,
        0.0,
        0.5 * random.nextDouble(),
        MOST_NEEDED * random.nextDouble(),
        0.8 * random.nextDouble());
  }

  /** Any taste. */
  public static Taste any(SplittableRandom random) {
    return new Taste(
        0.5 + random.nextDouble(),
        1.5 * random.nextDouble(),
        4.0 * random.nextDouble(),
        MOST_NEEDED * random.nextDouble(),
        random.nextDouble());
  }
}
