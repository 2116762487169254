package kitstow.planner.solver;

import java.util.function.LongSupplier;

/**
 * What a search may spend, and how it spends it: a quick round to have something good at once; a
 * few more that owe nothing to it, since what each does well the others take over; then rounds that
 * settle slowly, each about as long as all before it, so that what there is is good whenever it
 * ends; and while things stay home, by turns with these, some in which only what is aboard counts.
 * Counted in steps where steps are given, so that the clock does not matter; else in time.
 */
final class Budget {
  private static final int RESTARTS = 12;

  /** Steps by which the first round looks back; it is to have something good within a second. */
  private static final int QUICKEST = 15;

  /** Steps without a better plan after which the first round, and any from nothing, ends. */
  private static final long FIRST_PATIENCE = 150L;

  /** Steps by which a round that fills looks back, and one that settles at least. */
  private static final int QUICK = 60;

  private static final int SLOWEST = 6_000;

  /** Plans from nothing that a search begins with: fewer of more units, which take longer. */
  private static final int MOST_BASES = 5;

  private static final int LEAST_BASES = 2;

  /** Between these bounds, about as many as make this number times the units. */
  private static final int UNITS_BY_BASES = 200;

  /** After those one in so many rounds starts from nothing again. */
  private static final int AFRESH = 3;

  /** A round has settled after about so many times the steps by which it looks back; seen. */
  private static final double SETTLED = 65.0;

  /** So many times as many steps without a better plan as it looks back end a round, and more. */
  private static final long SLOW_PATIENCE = 4L;

  private static final long LEAST_PATIENCE = 100L;

  /**
   * Steps without anything more aboard after which a round that fills gives up. Some starts come to
   * nothing however long they are followed, so a new one is soon worth more.
   */
  private static final long PATIENCE = 1_500L;

  /** Share of all steps that rounds may take that fill and have brought nothing of late. */
  private static final double MOST_FRUITLESS = 0.25;

  /** Of so many rounds that fill, the first half goes by room, the other by value. */
  private static final int BY_TURNS = 4;

  /** Rounds without an end in sight settle as if this much time were left. */
  private static final double LONGEST_SECONDS = 60.0;

  private final long steps;
  private final LongSupplier nanos;
  private final long startNanos;
  private final double seconds;
  private final long seed;
  private final int bases;
  private long stepsTaken;
  private int rounds;
  private int fillings;
  private long fruitless;

  /**
   * A budget.
   *
   * @param units how many there are to be packed
   * @param steps steps in all, or 0 for no limit
   * @param seconds time in all; matters only without a limit in steps
   * @param nanos clock by which the time goes, ns from whenever
   */
  Budget(long seed, int units, long steps, double seconds, LongSupplier nanos) {
    int wanted = UNITS_BY_BASES / Math.max(1, units);
    this.bases = Math.max(LEAST_BASES, Math.min(MOST_BASES, wanted));
    this.nanos = nanos;
    this.startNanos = nanos.getAsLong();
    this.seed = seed;
    this.steps = steps > 0L ? steps : Long.MAX_VALUE;
    this.seconds = seconds;
  }

  /**
   * The next round.
   *
   * @param home whether the best plan so far leaves anything home
   * @param filled whether more has just gone in, so that the plan has not settled yet
   */
  Round next(boolean home, boolean filled) {
    if (rounds == 0) {
      rounds++;
      return quickest(seed, Round.Start.BEST, RESTARTS);
    }
    long roundSeed = seed + 7919L * (rounds + fillings);
    fruitless = filled ? 0L : fruitless;
    if (home && !filled && fillings < rounds && fruitless <= MOST_FRUITLESS * stepsTaken) {
      Aim aim = fillings % BY_TURNS < BY_TURNS / 2 ? Aim.ROOM : Aim.VALUE;
      Round.Start start = fillings++ % 2 > 0 ? Round.Start.AFRESH : Round.Start.BEST;
      return new Round(roundSeed, start, 0, QUICK, left(), PATIENCE, aim);
    }
    rounds++;
    double settled = Math.min((double) stepsTaken, expectedSteps()) / SETTLED;
    int lateness = (int) Math.max(QUICK, Math.min(SLOWEST, settled));
    if (filled) {
      return settling(roundSeed, Round.Start.BEST, lateness);
    }
    return rounds <= bases || (rounds - bases) % AFRESH == 0
        ? quickest(roundSeed, Round.Start.AFRESH, /* restarts= */ 0)
        : settling(roundSeed, Round.Start.HEATED, lateness);
  }

  private Round settling(long roundSeed, Round.Start start, int lateness) {
    long patience = SLOW_PATIENCE * lateness + LEAST_PATIENCE;
    return new Round(roundSeed, start, 0, lateness, left(), patience, Aim.ALL);
  }

  /** A round like the first, from a plan that there is. */
  Round quickAgain() {
    return quickest(seed, Round.Start.BEST, /* restarts= */ 0);
  }

  private Round quickest(long roundSeed, Round.Start start, int restarts) {
    return new Round(roundSeed, start, restarts, QUICKEST, left(), FIRST_PATIENCE, Aim.ALL);
  }

  private long left() {
    return Math.max(0L, steps - stepsTaken);
  }

  /** Number of rounds so far in which everything counted. */
  int rounds() {
    return rounds;
  }

  /** Steps of all rounds so far. */
  long stepsTaken() {
    return stepsTaken;
  }

  /** Counts the steps of a round. */
  void spend(Round round, long taken) {
    stepsTaken += taken;
    fruitless += round.aim().fills() ? taken : 0L;
  }

  /** Whether no step is left; time is watched from outside. */
  boolean spent() {
    return stepsTaken >= steps;
  }

  private double expectedSteps() {
    if (steps != Long.MAX_VALUE) {
      return steps - stepsTaken;
    }
    double elapsed = (nanos.getAsLong() - startNanos) / 1.0e9;
    double left = Math.max(0.0, Math.min(LONGEST_SECONDS, seconds - elapsed));
    return stepsTaken / Math.max(elapsed, 1.0e-3) * left;
  }
}
