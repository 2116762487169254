package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.packing.Wanted;
import kitstow.planner.statics.Lever;
import kitstow.planner.trip.Timeline;

/**
 * The states of a trip as arrays: what the fixed bodies put on every limit in every state, and what
 * each unit weighs there. Valid for one rig and one set of things aboard that are used up or grow;
 * what else is aboard, and where, does not matter to it.
 */
final class TripTable {
  private static final long[] NOT_VARYING = {};

  private final List<LoadState> states = new ArrayList<>();
  private final int wheelbaseMm;
  private final List<String> lineKeys;
  private final LimitGroup[] group;
  private final int[] offset;
  private final long[] fixed;
  private final long[] fixedMoment;
  private final long[] fixedSide;
  private final int trackSumMm;
  private final long[] nominalG;
  private final long[][] varyingG;

  TripTable(Loading loading, LimitShape shape, List<Wanted> units) {
    this.wheelbaseMm = loading.scenario().ute().wheelbaseMm();
    for (LoadState one : Timeline.of(loading).states()) {
      if (!one.noteOnly() && one.kind() != LoadKind.CERTIFICATION) {
        states.add(one);
      }
    }
    this.group = new LimitGroup[states.size()];
    this.offset = new int[states.size()];
    this.fixedMoment = new long[states.size()];
    this.fixedSide = new long[states.size()];
    this.trackSumMm =
        loading.scenario().ute().frontTrackMm() + loading.scenario().ute().rearTrackMm();
    int entries = 0;
    for (int s = 0; s < group.length; s++) {
      group[s] = shape.groupOf(states.get(s));
      offset[s] = entries;
      entries += group[s].size();
      boolean moving = states.get(s).kind() == LoadKind.MOVING;
      fixedSide[s] = fixedSideOf(loading, states.get(s));
      fixedMoment[s] = moving ? fixedMomentOf(loading, states.get(s)) : -1L;
    }
    this.fixed = new long[entries];
    for (int s = 0; s < group.length; s++) {
      for (int i = 0; i < group[s].size(); i++) {
        fixed[offset[s] + i] = fixedLoad(loading, states.get(s), group[s].line(i));
      }
    }
    this.lineKeys = shape.keys();
    this.nominalG = units.stream().mapToLong(unit -> unit.item().mass().massG()).toArray();
    this.varyingG = new long[units.size()][];
    for (int unit = 0; unit < varyingG.length; unit++) {
      String key = units.get(unit).key();
      varyingG[unit] =
          loading.placed().containsKey(key) ? masses(loading.indexOf(key)) : NOT_VARYING;
    }
  }

  private static long fixedLoad(Loading loading, LoadState state, LimitShape.Line line) {
    long load = line.constantScaled();
    for (LimitShape.FixedTerm term : line.fixed()) {
      load += state.massG(loading.indexOf(term.bodyKey())) * term.numerator();
    }
    return load;
  }

  private long[] masses(int body) {
    long[] masses = new long[states.size()];
    for (int s = 0; s < masses.length; s++) {
      masses[s] = states.get(s).massG(body);
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

  /** Lever of all that is no gear about the centre plane, gram half-millimetres to the right. */
  private static long fixedSideOf(Loading loading, LoadState one) {
    long sum = 0L;
    for (int i = 0; i < one.size(); i++) {
      Body body = loading.bodies().get(i);
      if (body.kind() != BodyKind.ITEM) {
        long doubledY = (long) body.box().minYMm() + body.box().maxYMm();
        sum += one.massG(i) * (doubledY + 2L * one.shift(i).yMm());
      }
    }
    return sum;
  }

  /** Lever of all that is no gear about the centre plane, gram half-millimetres to the right. */
  long fixedSideHalfGMm(int state) {
    return fixedSide[state];
  }

  /** Front and rear track together. */
  int trackSumMm() {
    return trackSumMm;
  }

  List<LoadState> states() {
    return states;
  }

  int stateCount() {
    return fixedMoment.length;
  }

  /** Limits of a state. */
  LimitGroup group(int state) {
    return group[state];
  }

  /** Where the loads of a state start. */
  int offset(int state) {
    return offset[state];
  }

  /** Number of limits in all states together. */
  int entryCount() {
    return fixed.length;
  }

  /** Number of different limits; those of one rule and subject share an index. */
  int lineCount() {
    return lineKeys.size();
  }

  /** Rule and subject of a limit. */
  String lineKey(int line) {
    return lineKeys.get(line);
  }

  int wheelbaseMm() {
    return wheelbaseMm;
  }

  /** Whether the mass of a unit changes along this trip. */
  boolean varies(int unit) {
    return varyingG[unit].length > 0;
  }

  /** Mass of a unit in a state, grams. */
  long massG(int unit, int state) {
    long[] own = varyingG[unit];
    return own.length == 0 ? nominalG[unit] : own[state];
  }

  boolean moving(int state) {
    return fixedMoment[state] >= 0L;
  }

  /** What the fixed bodies weigh behind the axle in a moving state. */
  long fixedMomentHalfGMm(int state) {
    return fixedMoment[state];
  }

  /** Raises the worst loads to those of one state; see {@link LimitGroup#worst}. */
  void worst(int state, long[] varying, LimitGroup.Axles axles, long[] worst) {
    group[state].worst(fixed, varying, offset[state], axles, worst);
  }

  /**
   * Raises the overloads by limit to those of one state with one more thing in a space; see {@link
   * LimitGroup#raiseWith}.
   */
  void raiseWith(
      int state,
      long[] varying,
      long[] constant,
      LimitGroup.Axles axles,
      int site,
      long massG,
      long[] over) {
    group[state].raiseWith(fixed, varying, offset[state], constant, axles, site, massG, over);
  }
}
