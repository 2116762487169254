package kitstow.planner.solver;

/**
 * One stretch of local search.
 *
 * @param seed random seed
 * @param start where it begins
 * @param restarts packings from nothing that are tried before it
 * @param lateness steps back to the plan that a new one is compared with: the more, the slower it
 *     settles and the better
 * @param steps steps it may take
 * @param unimproved steps without a better plan after which it ends
 * @param aim what counts
 */
record Round(
    long seed, Start start, int restarts, int lateness, long steps, long unimproved, Aim aim) {
  /** Where a round begins. */
  enum Start {
    /** With the best plan so far. */
    BEST,

    /** With the best plan so far, made a little worse. */
    HEATED,

    /** With nothing of any plan. */
    AFRESH
  }

  /** Whether it takes over spaces from other plans; one that begins afresh is to be its own. */
  boolean crosses() {
    return start != Start.AFRESH && !aim.fills();
  }
}
