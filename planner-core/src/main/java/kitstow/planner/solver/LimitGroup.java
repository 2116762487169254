package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.List;

/**
 * The limits that apply in states of one sort, as arrays; a limit's place in it is its position.
 */
final class LimitGroup {
  private final int number;
  private final List<LimitShape.Line> lines;
  private final int[] lineIndex;
  private final long[] limitScaled;
  private final long[] denominator;
  private final int[] rear;
  private final int[] front;
  private final int[] inSpaces;
  private final int[][] bySite;
  private final long[][] numerators;

  /**
   * Limits.
   *
   * @param number tells this group from others
   * @param sites number of spaces
   */
  LimitGroup(int number, List<LimitShape.Line> lines, int sites) {
    this.number = number;
    this.lines = List.copyOf(lines);
    this.lineIndex = lines.stream().mapToInt(LimitShape.Line::index).toArray();
    this.limitScaled = lines.stream().mapToLong(LimitShape.Line::limitScaled).toArray();
    this.denominator = lines.stream().mapToLong(LimitShape.Line::denominator).toArray();
    this.rear = positionsOf(LimitShape.Lever.REAR);
    this.front = positionsOf(LimitShape.Lever.FRONT);
    this.inSpaces = positionsOf(LimitShape.Lever.SPACE);
    this.bySite = new int[sites][];
    this.numerators = new long[sites][];
    for (int site = 0; site < sites; site++) {
      addSite(site);
    }
  }

  private void addSite(int site) {
    List<Integer> positions = new ArrayList<>();
    List<Long> weights = new ArrayList<>();
    for (int position = 0; position < lines.size(); position++) {
      for (LimitShape.Member member : lines.get(position).members()) {
        if (member.space() == site) {
          positions.add(position);
          weights.add(member.numerator());
        }
      }
    }
    bySite[site] = positions.stream().mapToInt(Integer::intValue).toArray();
    numerators[site] = weights.stream().mapToLong(Long::longValue).toArray();
  }

  private int[] positionsOf(LimitShape.Lever lever) {
    List<Integer> positions = new ArrayList<>();
    for (int position = 0; position < lines.size(); position++) {
      if (lines.get(position).lever() == lever) {
        positions.add(position);
      }
    }
    return positions.stream().mapToInt(Integer::intValue).toArray();
  }

  int number() {
    return number;
  }

  int size() {
    return lineIndex.length;
  }

  LimitShape.Line line(int position) {
    return lines.get(position);
  }

  /** Adds a mass in a space to loads that start at an offset. */
  void addInSpace(long[] loads, int offset, int site, long massG) {
    int[] positions = bySite[site];
    long[] weights = numerators[site];
    for (int i = 0; i < positions.length; i++) {
      loads[offset + positions[i]] += massG * weights[i];
    }
  }

  /**
   * Raises the worst loads by position to those of one state, without what does not change on the
   * trip: that adds the same in every state.
   *
   * @param fixed scaled loads of the fixed bodies by state and position
   * @param varying scaled loads of gear that changes on the trip, likewise
   * @param offset where this state starts in both
   * @param axles what that gear puts on the axles
   * @param worst scaled loads by position
   */
  void worst(long[] fixed, long[] varying, int offset, Axles axles, long[] worst) {
    for (int position : rear) {
      worst[position] = Math.max(worst[position], fixed[offset + position] + axles.rearHalfGMm());
    }
    for (int position : front) {
      worst[position] = Math.max(worst[position], fixed[offset + position] + axles.frontHalfGMm());
    }
    for (int position : inSpaces) {
      worst[position] =
          Math.max(worst[position], fixed[offset + position] + varying[offset + position]);
    }
  }

  /**
   * Raises the overloads by limit to those of the worst states.
   *
   * @param worst scaled loads by position, of {@link #worst}
   * @param constant scaled loads of gear that does not change on the trip, by position
   * @param axles what that gear puts on the axles
   * @param over grams over by limit
   */
  void raise(long[] worst, long[] constant, Axles axles, long[] over) {
    for (int position : rear) {
      raise(position, worst[position] + axles.rearHalfGMm(), over);
    }
    for (int position : front) {
      raise(position, worst[position] + axles.frontHalfGMm(), over);
    }
    for (int position : inSpaces) {
      raise(position, worst[position] + constant[position], over);
    }
  }

  /**
   * The same with one more thing in a space that does not change on the trip; limits it does not
   * load are left alone.
   *
   * @param axles what such gear puts on the axles, the newcomer included
   * @param massG mass of the newcomer
   */
  void raiseWith(long[] worst, long[] constant, Axles axles, int site, long massG, long[] over) {
    for (int position : rear) {
      raise(position, worst[position] + axles.rearHalfGMm(), over);
    }
    for (int position : front) {
      raise(position, worst[position] + axles.frontHalfGMm(), over);
    }
    int[] positions = bySite[site];
    long[] weights = numerators[site];
    for (int i = 0; i < positions.length; i++) {
      int at = positions[i];
      raise(at, worst[at] + constant[at] + massG * weights[i], over);
    }
  }

  /**
   * Raises the overloads by limit to those of one state with one more thing in a space; limits it
   * does not load are left alone.
   *
   * @param fixed scaled loads of the fixed bodies by state and position
   * @param varying scaled loads of gear that changes on the trip, likewise
   * @param offset where this state starts in both
   * @param constant scaled loads of gear that does not change, by position
   * @param axles what all gear puts on the axles, the newcomer included
   * @param massG mass of the newcomer
   */
  void raiseWith(
      long[] fixed,
      long[] varying,
      int offset,
      long[] constant,
      Axles axles,
      int site,
      long massG,
      long[] over) {
    for (int position : rear) {
      raise(position, fixed[offset + position] + axles.rearHalfGMm(), over);
    }
    for (int position : front) {
      raise(position, fixed[offset + position] + axles.frontHalfGMm(), over);
    }
    int[] positions = bySite[site];
    long[] weights = numerators[site];
    for (int i = 0; i < positions.length; i++) {
      int at = positions[i];
      long load = fixed[offset + at] + varying[offset + at] + constant[at];
      raise(at, load + massG * weights[i], over);
    }
  }

  private void raise(int position, long load, long[] over) {
    long excess = load - limitScaled[position];
    if (excess > 0L) {
      long grams = (excess + denominator[position] - 1L) / denominator[position];
      over[lineIndex[position]] = Math.max(over[lineIndex[position]], grams);
    }
  }

  /** What gear puts on the axles. */
  record Axles(long rearHalfGMm, long frontHalfGMm) {}
}
