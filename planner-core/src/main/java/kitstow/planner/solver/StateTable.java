package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.statics.Lever;
import kitstow.planner.trip.Timeline;

/**
 * The states of a trip as arrays: what the fixed bodies put on every limit in every state, and what
 * each item weighs there. Valid for one rig and one set of places of the things that are used up or
 * grow; what else is aboard does not matter to it.
 */
final class StateTable {
  private final List<LoadState> states = new ArrayList<>();
  private final List<List<LimitShape.Line>> lines = new ArrayList<>();
  private final List<long[]> fixedLoads = new ArrayList<>();
  private final long[] fixedMoment;
  private final Map<String, long[]> varying = new HashMap<>();
  private final int wheelbaseMm;
  private final LimitShape shape;

  StateTable(Loading loading, LimitShape shape) {
    this.shape = shape;
    this.wheelbaseMm = loading.scenario().ute().wheelbaseMm();
    for (LoadState state : Timeline.of(loading).states()) {
      if (!state.noteOnly() && state.kind() != LoadKind.CERTIFICATION) {
        states.add(state);
      }
    }
    this.fixedMoment = new long[states.size()];
    for (int s = 0; s < states.size(); s++) {
      LoadState state = states.get(s);
      List<LimitShape.Line> here = shape.linesIn(state);
      long[] fixed = new long[here.size()];
      for (int l = 0; l < fixed.length; l++) {
        fixed[l] = here.get(l).constantScaled();
        for (LimitShape.FixedTerm term : here.get(l).fixed()) {
          fixed[l] += state.massG(loading.indexOf(term.bodyKey())) * term.numerator();
        }
      }
      lines.add(here);
      fixedLoads.add(fixed);
      fixedMoment[s] = state.kind() == LoadKind.MOVING ? fixedMomentOf(loading, state) : -1L;
    }
    for (PlacedItem item : loading.placed().values()) {
      if (varies(item)) {
        int body = loading.indexOf(item.key());
        long[] massG = new long[states.size()];
        for (int s = 0; s < massG.length; s++) {
          massG[s] = states.get(s).massG(body);
        }
        varying.put(item.key(), massG);
      }
    }
  }

  /** Whether an item's mass changes on a trip. */
  static boolean varies(PlacedItem item) {
    return item.item().content().isPresent() || item.item().growth().isPresent();
  }

  private long fixedMomentOf(Loading loading, LoadState state) {
    long sum = 0L;
    for (int i = 0; i < state.size(); i++) {
      Body body = loading.bodies().get(i);
      if (body.inOverhang() && body.kind() != BodyKind.ITEM && state.massG(i) != 0L) {
        long shift = state.shift(i).xMm();
        sum +=
            Lever.overhangHalfGMm(
                state.massG(i),
                body.box().minXMm() + shift,
                body.box().maxXMm() + shift,
                wheelbaseMm);
      }
    }
    return sum;
  }

  /** What the gear puts on the limits, and the worst moving moment. */
  Worst worstOf(List<PlacedItem> placed, BarLoads bars) {
    int count = states.size();
    long[] mass = new long[count];
    long[] rear = new long[count];
    long[] moment = new long[count];
    long[][] bySpace = new long[shape.spaces()][];
    long constantMass = 0L;
    long constantRear = 0L;
    long constantMoment = 0L;
    long[] constantBySpace = new long[bySpace.length];
    for (PlacedItem item : placed) {
      BoxMm box = item.box();
      long centre = (long) box.minXMm() + box.maxXMm();
      int space = shape.indexOf(item.space().id());
      long[] own = varying.get(item.key());
      if (own == null) {
        long massG = item.item().mass().massG();
        constantMass += massG;
        constantRear += Lever.rearHalfGMm(massG, centre);
        constantMoment += Lever.overhangHalfGMm(massG, box.minXMm(), box.maxXMm(), wheelbaseMm);
        constantBySpace[space] += massG;
        continue;
      }
      if (bySpace[space] == null) {
        bySpace[space] = new long[count];
      }
      for (int s = 0; s < count; s++) {
        mass[s] += own[s];
        bySpace[space][s] += own[s];
        rear[s] += Lever.rearHalfGMm(own[s], centre);
        if (fixedMoment[s] >= 0L) {
          moment[s] += Lever.overhangHalfGMm(own[s], box.minXMm(), box.maxXMm(), wheelbaseMm);
        }
      }
    }
    for (int s = 0; s < count; s++) {
      mass[s] += constantMass;
      rear[s] += constantRear;
      moment[s] += constantMoment;
    }
    long over = overG(mass, rear, bySpace, constantBySpace, bars.overG(placed, this));
    return new Worst(over, worst(moment));
  }

  private long worst(long[] moment) {
    long worst = 0L;
    for (int s = 0; s < moment.length; s++) {
      if (fixedMoment[s] >= 0L) {
        worst = Math.max(worst, fixedMoment[s] + moment[s]);
      }
    }
    return worst;
  }

  private long overG(
      long[] mass,
      long[] rear,
      long[][] bySpace,
      long[] constantBySpace,
      Map<String, Long> overOfBars) {
    long[] over = new long[shape.lines()];
    for (int s = 0; s < states.size(); s++) {
      List<LimitShape.Line> here = lines.get(s);
      long[] fixed = fixedLoads.get(s);
      for (int l = 0; l < fixed.length; l++) {
        LimitShape.Line line = here.get(l);
        long scaled = fixed[l];
        switch (line.lever()) {
          case REAR -> scaled += rear[s];
          case FRONT -> scaled += 2L * wheelbaseMm * mass[s] - rear[s];
          case SPACE -> scaled += inSpaces(line, bySpace, constantBySpace, s);
        }
        long excess = scaled - line.limitScaled();
        if (excess > 0L) {
          long grams = (excess + line.denominator() - 1L) / line.denominator();
          over[line.index()] = Math.max(over[line.index()], grams);
        }
      }
    }
    long sum = 0L;
    for (long grams : over) {
      sum += grams;
    }
    for (long grams : overOfBars.values()) {
      sum += grams;
    }
    return sum;
  }

  private static long inSpaces(
      LimitShape.Line line, long[][] bySpace, long[] constantBySpace, int state) {
    long sum = 0L;
    for (LimitShape.Member member : line.members()) {
      long[] varyingLoad = bySpace[member.space()];
      long massG =
          constantBySpace[member.space()] + (varyingLoad == null ? 0L : varyingLoad[state]);
      sum += massG * member.numerator();
    }
    return sum;
  }

  List<LoadState> states() {
    return states;
  }

  /** Mass of an item in a state, grams. */
  long massG(PlacedItem item, int state) {
    long[] own = varying.get(item.key());
    return own == null ? item.item().mass().massG() : own[state];
  }

  /**
   * The figures a score is made of.
   *
   * @param overG overload of every limit in its worst state, rounded up to a gram, summed
   * @param momentHalfGMm worst moving rear overhang moment
   */
  record Worst(long overG, long momentHalfGMm) {}
}
