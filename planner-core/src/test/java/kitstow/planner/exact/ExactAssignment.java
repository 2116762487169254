package kitstow.planner.exact;

import java.util.Arrays;
import java.util.List;

/**
 * The best assignment of jobs to agents, proved by complete search: most value first, then least
 * cost among the assignments of that value. A job may stay unassigned; it has no value then and
 * costs nothing. Branches are cut where even the best place of every job that is left cannot win.
 * For small cases: time grows with the power of the number of jobs.
 */
public final class ExactAssignment {
  private final long[][] value;
  private final long[][] mass;
  private final long[][] cost;
  private final long[] room;
  private final int[] order;
  private final int[] chosen;
  private int[] best;
  private long bestValue = -1L;
  private long bestCost = Long.MAX_VALUE;

  /**
   * The optimum.
   *
   * @param value most value
   * @param cost least cost at that value
   * @param agentOf agent by job, -1 for none
   */
  public record Optimum(long value, long cost, List<Integer> agentOf) {}

  private ExactAssignment(long[][] value, long[][] mass, long[][] cost, long[] capacity) {
    this.value = value;
    this.mass = mass;
    this.cost = cost;
    this.room = capacity.clone();
    this.chosen = new int[value.length];
    this.best = new int[value.length];
    Arrays.fill(chosen, -1);
    Integer[] jobs = new Integer[value.length];
    Arrays.setAll(jobs, i -> i);
    Arrays.sort(jobs, (a, b) -> Long.compare(most(mass[b]), most(mass[a])));
    this.order = Arrays.stream(jobs).mapToInt(Integer::intValue).toArray();
  }

  private static long most(long[] of) {
    return Arrays.stream(of).max().orElse(0L);
  }

  /**
   * Solves one case.
   *
   * @param value value by job and agent
   * @param mass what a job takes of an agent's capacity, by job and agent
   * @param cost cost by job and agent
   * @param capacity capacity by agent
   */
  public static Optimum solve(long[][] value, long[][] mass, long[][] cost, long[] capacity) {
    ExactAssignment search = new ExactAssignment(value, mass, cost, capacity);
    search.branch(0, 0L, 0L);
    return new Optimum(
        search.bestValue, search.bestCost, Arrays.stream(search.best).boxed().toList());
  }

  private void branch(int depth, long valueNow, long costNow) {
    if (depth == order.length) {
      if (valueNow > bestValue || (valueNow == bestValue && costNow < bestCost)) {
        bestValue = valueNow;
        bestCost = costNow;
        best = chosen.clone();
      }
      return;
    }
    if (hopeless(depth, valueNow, costNow)) {
      return;
    }
    int job = order[depth];
    for (int agent : agentsInOrder(job)) {
      if (mass[job][agent] <= room[agent]) {
        room[agent] -= mass[job][agent];
        chosen[job] = agent;
        branch(depth + 1, valueNow + value[job][agent], costNow + cost[job][agent]);
        chosen[job] = -1;
        room[agent] += mass[job][agent];
      }
    }
    branch(depth + 1, valueNow, costNow);
  }

  /** Agents by value, then by cost, so that good assignments come early. */
  private int[] agentsInOrder(int job) {
    Integer[] agents = new Integer[room.length];
    Arrays.setAll(agents, i -> i);
    Arrays.sort(
        agents,
        (a, b) ->
            value[job][a] != value[job][b]
                ? Long.compare(value[job][b], value[job][a])
                : Long.compare(cost[job][a], cost[job][b]));
    return Arrays.stream(agents).mapToInt(Integer::intValue).toArray();
  }

  /** Whether no choice for the jobs that are left can beat the best so far. */
  private boolean hopeless(int depth, long valueNow, long costNow) {
    long mostValue = valueNow;
    long leastCost = costNow;
    for (int d = depth; d < order.length; d++) {
      int job = order[d];
      long most = 0L;
      long least = Long.MAX_VALUE;
      for (int agent = 0; agent < room.length; agent++) {
        if (mass[job][agent] <= room[agent]) {
          most = Math.max(most, value[job][agent]);
          least = Math.min(least, cost[job][agent]);
        }
      }
      mostValue += most;
      leastCost += most == 0L ? 0L : least;
    }
    return mostValue < bestValue || (mostValue == bestValue && leastCost >= bestCost);
  }
}
