package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.packing.BarCarriage;
import kitstow.planner.statics.Lever;

/** What the gear aboard puts on every limit, kept up to date as units come and go. */
final class LoadSums {
  private final TripTable table;
  private final long[] mass;
  private final long[] rear;
  private final long[] moment;
  private final long[] loads;
  private final long[] over;
  private final Map<Integer, PlacedItem> onBars = new LinkedHashMap<>();

  LoadSums(TripTable table) {
    this.table = table;
    this.mass = new long[table.stateCount()];
    this.rear = new long[table.stateCount()];
    this.moment = new long[table.stateCount()];
    this.loads = new long[table.entryCount()];
    this.over = new long[table.lineCount()];
    table.fixedInto(loads);
  }

  TripTable table() {
    return table;
  }

  void add(int unit, PlacedItem item, int site) {
    change(unit, item, site, 1L);
    if (item.space().bars().isPresent()) {
      onBars.put(unit, item);
    }
  }

  void remove(int unit, PlacedItem item, int site) {
    change(unit, item, site, -1L);
    onBars.remove(unit);
  }

  private void change(int unit, PlacedItem item, int site, long sign) {
    BoxMm box = item.box();
    long centre = (long) box.minXMm() + box.maxXMm();
    long knownMass = -1L;
    long knownMoment = 0L;
    for (int s = 0; s < mass.length; s++) {
      long massG = table.massG(unit, s);
      mass[s] += sign * massG;
      rear[s] += sign * Lever.rearHalfGMm(massG, centre);
      if (table.moving(s)) {
        if (massG != knownMass) {
          knownMass = massG;
          knownMoment =
              Lever.overhangHalfGMm(massG, box.minXMm(), box.maxXMm(), table.wheelbaseMm());
        }
        moment[s] += sign * knownMoment;
      }
    }
    table.addInSpace(loads, unit, site, sign);
  }

  /** Overload of every limit in its worst state, rounded up to a gram, summed. */
  long overG() {
    table.overInto(loads, mass, rear, over);
    long sum = 0L;
    for (long grams : over) {
      sum += grams;
    }
    return onBars.isEmpty() ? sum : sum + barsOverG();
  }

  /** Worst moving rear overhang moment. */
  long momentHalfGMm() {
    long worst = 0L;
    for (int s = 0; s < moment.length; s++) {
      if (table.moving(s)) {
        worst = Math.max(worst, table.fixedMomentHalfGMm(s) + moment[s]);
      }
    }
    return worst;
  }

  /** Overload of single bars, where the place of an item on them matters. */
  private long barsOverG() {
    Map<String, long[]> shares = new HashMap<>();
    Map<String, RoofBars.Bar> bars = new HashMap<>();
    List<String> keys = new ArrayList<>();
    for (Map.Entry<Integer, PlacedItem> entry : onBars.entrySet()) {
      PlacedItem item = entry.getValue();
      Space space = item.space();
      for (BarCarriage.Share share :
          BarCarriage.shares(
              item.box(), space, space.bars().orElseThrow(IllegalStateException::new))) {
        String key = RuleId.BAR_LIMIT + " " + space.id() + ":" + share.bar().id();
        long[] load =
            shares.computeIfAbsent(
                key,
                k -> {
                  keys.add(k);
                  return new long[mass.length];
                });
        bars.put(key, share.bar());
        for (int s = 0; s < load.length; s++) {
          load[s] += share.parts() * table.massG(entry.getKey(), s);
        }
      }
    }
    long sum = 0L;
    for (String key : keys) {
      RoofBars.Bar bar = bars.get(key);
      long[] load = shares.get(key);
      if (bar != null && load != null) {
        sum += barOverG(bar, load);
      }
    }
    return sum;
  }

  private long barOverG(RoofBars.Bar bar, long[] load) {
    long worst = 0L;
    for (int s = 0; s < load.length; s++) {
      LoadState state = table.states().get(s);
      long limitG = bar.ratings().inG(state.kind(), state.surface());
      long excess = load[s] - limitG * BarCarriage.SHARE_PARTS;
      if (excess > BarCarriage.SHARE_PARTS / 2L) {
        worst = Math.max(worst, (excess + BarCarriage.SHARE_PARTS - 1L) / BarCarriage.SHARE_PARTS);
      }
    }
    return worst;
  }
}
