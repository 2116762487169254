package kitstow.planner.solver;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.Space;
import kitstow.planner.packing.BarCarriage;

/**
 * What gear puts on single bars of roofs and racks, where its place on them matters, kept up to
 * date as units come and go.
 */
final class BarSums {
  private final TripTable table;
  private final Map<String, Rack> racks = new HashMap<>();
  private long overG;

  BarSums(TripTable table) {
    this.table = table;
  }

  /** Adds a unit, or with a sign of -1 takes it away again. */
  void change(int unit, PlacedItem item, long sign) {
    Space space = item.space();
    if (!space.bars().isPresent()) {
      return;
    }
    Rack rack = racks.computeIfAbsent(space.id(), id -> new Rack(table, space.bars().get()));
    overG -= rack.overG;
    rack.change(table, unit, item, sign);
    overG += rack.overG;
  }

  /** Overload of each bar in its worst state, rounded up to a gram, summed. */
  long overG() {
    return overG;
  }

  /** What {@link #overG} would be with one more unit; nothing changes. */
  long overWithG(int unit, PlacedItem item) {
    if (!item.space().bars().isPresent()) {
      return overG;
    }
    long before = overG;
    change(unit, item, 1L);
    long with = overG;
    change(unit, item, -1L);
    if (overG != before) {
      throw new IllegalStateException("bars do not add up: " + overG + " g, " + before + " g");
    }
    return with;
  }

  /** The bars of one space. */
  private static final class Rack {
    private final List<RoofBars.Bar> bars;
    private final long[][] limit;
    private final long[][] load;
    private final long[] over;
    private long overG;

    Rack(TripTable table, RoofBars of) {
      this.bars = of.bars();
      this.limit = new long[bars.size()][table.stateCount()];
      this.load = new long[bars.size()][table.stateCount()];
      this.over = new long[bars.size()];
      for (int bar = 0; bar < limit.length; bar++) {
        for (int s = 0; s < limit[bar].length; s++) {
          LoadState state = table.states().get(s);
          limit[bar][s] =
              bars.get(bar).ratings().inG(state.kind(), state.surface()) * BarCarriage.SHARE_PARTS;
        }
      }
    }

    void change(TripTable table, int unit, PlacedItem item, long sign) {
      Space space = item.space();
      for (BarCarriage.Share share :
          BarCarriage.shares(
              item.box(), space, space.bars().orElseThrow(IllegalStateException::new))) {
        int bar = bars.indexOf(share.bar());
        for (int s = 0; s < load[bar].length; s++) {
          load[bar][s] += sign * share.parts() * table.massG(unit, s);
        }
        over[bar] = worstOverG(bar);
      }
      overG = Arrays.stream(over).sum();
    }

    /** Half a gram is forgiven, since shares are rounded. */
    private long worstOverG(int bar) {
      long worst = 0L;
      for (int s = 0; s < load[bar].length; s++) {
        long excess = load[bar][s] - limit[bar][s];
        if (excess > BarCarriage.SHARE_PARTS / 2L) {
          worst =
              Math.max(worst, (excess + BarCarriage.SHARE_PARTS - 1L) / BarCarriage.SHARE_PARTS);
        }
      }
      return worst;
    }
  }
}
