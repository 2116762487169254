package kitstow.planner.exact;

/**
 * The most value of things that keep several limits at once, proved by complete search. Branches
 * are cut where even all things that are left cannot win.
 */
final class ExactKnapsack {
  private final Mknap1.Problem problem;
  private final long[] room;
  private final long[] rest;
  private long best;

  private ExactKnapsack(Mknap1.Problem problem) {
    this.problem = problem;
    this.room = problem.limits().stream().mapToLong(Long::longValue).toArray();
    this.rest = new long[problem.value().size() + 1];
    for (int i = rest.length - 2; i >= 0; i--) {
      rest[i] = rest[i + 1] + problem.value().get(i);
    }
  }

  static long most(Mknap1.Problem problem) {
    ExactKnapsack search = new ExactKnapsack(problem);
    search.branch(0, 0L);
    return search.best;
  }

  private void branch(int thing, long value) {
    best = Math.max(best, value);
    if (value + rest[thing] <= best) {
      return;
    }
    take(thing, 1L);
    boolean fits = true;
    for (long left : room) {
      fits &= left >= 0L;
    }
    if (fits) {
      branch(thing + 1, value + problem.value().get(thing));
    }
    take(thing, -1L);
    branch(thing + 1, value);
  }

  private void take(int thing, long times) {
    for (int limit = 0; limit < room.length; limit++) {
      room[limit] -= times * problem.takes().get(limit).get(thing);
    }
  }
}
