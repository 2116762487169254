package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.packing.SiteMap;
import kitstow.planner.packing.Wanted;
import kitstow.planner.statics.Lever;
import kitstow.planner.trip.Timeline;

/**
 * The states of a trip as arrays: what the fixed bodies put on every limit in every state, and what
 * each unit weighs there. One limit in one state is an entry. Valid for one rig and one set of
 * things aboard that are used up or grow; what else is aboard, and where, does not matter to it.
 */
final class TripTable {
  private final List<LoadState> states = new ArrayList<>();
  private final int wheelbaseMm;
  private final int lines;
  private final int[] state;
  private final int[] line;
  private final long[] limitScaled;
  private final long[] denominator;
  private final long[] fixed;
  private final int[] rearEntries;
  private final int[] frontEntries;
  private final int[][] siteEntries;
  private final long[][] siteNumerators;
  private final long[] fixedMoment;
  private final long[][] massG;

  TripTable(Loading loading, LimitShape shape, SiteMap sites, List<Wanted> units) {
    this.wheelbaseMm = loading.scenario().ute().wheelbaseMm();
    for (LoadState one : Timeline.of(loading).states()) {
      if (!one.noteOnly() && one.kind() != LoadKind.CERTIFICATION) {
        states.add(one);
      }
    }
    int entries = 0;
    for (LoadState one : states) {
      entries += shape.linesIn(one).size();
    }
    this.state = new int[entries];
    this.line = new int[entries];
    this.limitScaled = new long[entries];
    this.denominator = new long[entries];
    this.fixed = new long[entries];
    List<Integer> rear = new ArrayList<>();
    List<Integer> front = new ArrayList<>();
    List<List<Integer>> bySite = new ArrayList<>();
    List<List<Long>> numerators = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      bySite.add(new ArrayList<>());
      numerators.add(new ArrayList<>());
    }
    this.fixedMoment = new long[states.size()];
    int e = 0;
    for (int s = 0; s < states.size(); s++) {
      LoadState one = states.get(s);
      for (LimitShape.Line here : shape.linesIn(one)) {
        state[e] = s;
        line[e] = here.index();
        limitScaled[e] = here.limitScaled();
        denominator[e] = here.denominator();
        fixed[e] = here.constantScaled();
        for (LimitShape.FixedTerm term : here.fixed()) {
          fixed[e] += one.massG(loading.indexOf(term.bodyKey())) * term.numerator();
        }
        switch (here.lever()) {
          case REAR -> rear.add(e);
          case FRONT -> front.add(e);
          case SPACE -> {
            for (LimitShape.Member member : here.members()) {
              bySite.get(member.space()).add(e);
              numerators.get(member.space()).add(member.numerator());
            }
          }
        }
        e++;
      }
      fixedMoment[s] = one.kind() == LoadKind.MOVING ? fixedMomentOf(loading, one) : -1L;
    }
    this.lines = shape.lines();
    this.rearEntries = toInts(rear);
    this.frontEntries = toInts(front);
    this.siteEntries = new int[sites.size()][];
    this.siteNumerators = new long[sites.size()][];
    for (int i = 0; i < sites.size(); i++) {
      siteEntries[i] = toInts(bySite.get(i));
      siteNumerators[i] = numerators.get(i).stream().mapToLong(Long::longValue).toArray();
    }
    this.massG = masses(loading, units);
  }

  private static int[] toInts(List<Integer> list) {
    return list.stream().mapToInt(Integer::intValue).toArray();
  }

  private long[][] masses(Loading loading, List<Wanted> units) {
    long[][] masses = new long[units.size()][];
    for (int unit = 0; unit < masses.length; unit++) {
      Wanted wanted = units.get(unit);
      masses[unit] = new long[states.size()];
      boolean aboard = loading.placed().containsKey(wanted.key());
      for (int s = 0; s < states.size(); s++) {
        masses[unit][s] =
            aboard
                ? states.get(s).massG(loading.indexOf(wanted.key()))
                : wanted.item().mass().massG();
      }
    }
    return masses;
  }

  private long fixedMomentOf(Loading loading, LoadState one) {
    long sum = 0L;
    for (int i = 0; i < one.size(); i++) {
      Body body = loading.bodies().get(i);
      if (body.inOverhang() && body.kind() != BodyKind.ITEM && one.massG(i) != 0L) {
        long shift = one.shift(i).xMm();
        sum +=
            Lever.overhangHalfGMm(
                one.massG(i),
                body.box().minXMm() + shift,
                body.box().maxXMm() + shift,
                wheelbaseMm);
      }
    }
    return sum;
  }

  List<LoadState> states() {
    return states;
  }

  int stateCount() {
    return fixedMoment.length;
  }

  int entryCount() {
    return state.length;
  }

  /** Number of different limits; those of one rule and subject share an index. */
  int lineCount() {
    return lines;
  }

  int wheelbaseMm() {
    return wheelbaseMm;
  }

  /** Mass of a unit in a state, grams. */
  long massG(int unit, int inState) {
    return massG[unit][inState];
  }

  boolean moving(int inState) {
    return fixedMoment[inState] >= 0L;
  }

  /** What the fixed bodies weigh behind the axle in a moving state. */
  long fixedMomentHalfGMm(int inState) {
    return fixedMoment[inState];
  }

  /** Copies what the fixed bodies put on every entry. */
  void fixedInto(long[] loads) {
    System.arraycopy(fixed, 0, loads, 0, fixed.length);
  }

  /** Adds a unit's mass, times a sign, to the entries that its space loads. */
  void addInSpace(long[] loads, int unit, int site, long sign) {
    int[] entries = siteEntries[site];
    long[] weights = siteNumerators[site];
    long[] own = massG[unit];
    for (int i = 0; i < entries.length; i++) {
      loads[entries[i]] += sign * own[state[entries[i]]] * weights[i];
    }
  }

  /**
   * Overload by limit in its worst state, in grams rounded up.
   *
   * @param loads scaled loads by entry, axles left out
   * @param mass mass of all gear by state
   * @param rear lever of all gear on the rear axle by state, gram half-millimetres
   * @param over by limit; filled here
   */
  void overInto(long[] loads, long[] mass, long[] rear, long[] over) {
    java.util.Arrays.fill(over, 0L);
    for (int e : rearEntries) {
      loads[e] = fixed[e] + rear[state[e]];
    }
    for (int e : frontEntries) {
      loads[e] = fixed[e] + 2L * wheelbaseMm * mass[state[e]] - rear[state[e]];
    }
    for (int e = 0; e < loads.length; e++) {
      long excess = loads[e] - limitScaled[e];
      if (excess > 0L) {
        long grams = (excess + denominator[e] - 1L) / denominator[e];
        over[line[e]] = Math.max(over[line[e]], grams);
      }
    }
  }
}
