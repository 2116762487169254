package kitstow.planner.solver;

/**
 * One stretch of local search.
 *
 * @param seed random seed
 * @param restarts packings from nothing that are tried before it
 * @param lateness steps back to the plan that a new one is compared with: the more, the slower it
 *     settles and the better
 * @param steps steps it may take
 * @param unimproved steps without a better plan after which it ends
 * @param aim what counts
 */
record Round(long seed, int restarts, int lateness, long steps, long unimproved, Aim aim) {
  /** A round in which everything counts. */
  Round(long seed, int restarts, int lateness, long steps, long unimproved) {
    this(seed, restarts, lateness, steps, unimproved, Aim.ALL);
  }
}
