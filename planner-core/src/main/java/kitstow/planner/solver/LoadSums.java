package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Arrays;
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
import org.jspecify.annotations.Nullable;

/** What the gear aboard puts on every limit, kept up to date as units come and go. */
final class LoadSums {
  private final TripTable table;
  private final long[] mass;
  private final long[] rear;
  private final long[] moment;
  private final long[] side;
  private final long[] varying;
  private final long[][] constant;
  private final long[] over;
  private final long[] overWith;
  private final long[] credit;
  private final @Nullable LimitGroup[] groupsInUse;
  private final Map<Integer, PlacedItem> onBars = new LinkedHashMap<>();
  private long barsOverG;
  private boolean barsKnown = true;
  private long constantMass;
  private long constantRear;
  private long constantMoment;
  private long constantSide;
  private long heightGMm;
  private long nominalMassG;

  /**
   * Sums of no gear.
   *
   * @param unavoidable overload by limit that gear cannot help, grams; it does not count
   */
  LoadSums(TripTable table, Map<String, Long> unavoidable) {
    this.table = table;
    this.mass = new long[table.stateCount()];
    this.rear = new long[table.stateCount()];
    this.moment = new long[table.stateCount()];
    this.side = new long[table.stateCount()];
    this.varying = new long[table.entryCount()];
    int groups = 0;
    for (int s = 0; s < mass.length; s++) {
      groups = Math.max(groups, table.group(s).number() + 1);
    }
    this.constant = new long[groups][];
    for (int s = 0; s < mass.length; s++) {
      constant[table.group(s).number()] = new long[table.group(s).size()];
    }
    this.over = new long[table.lineCount()];
    this.overWith = new long[table.lineCount()];
    this.credit = new long[table.lineCount()];
    for (int line = 0; line < credit.length; line++) {
      credit[line] = unavoidable.getOrDefault(table.lineKey(line), 0L);
    }
    this.groupsInUse = new LimitGroup[groups];
    for (int s = 0; s < mass.length; s++) {
      groupsInUse[table.group(s).number()] = table.group(s);
    }
  }

  TripTable table() {
    return table;
  }

  void add(int unit, PlacedItem item, int site) {
    change(unit, item, site, 1L);
    if (item.space().bars().isPresent()) {
      onBars.put(unit, item);
      barsKnown = false;
    }
  }

  void remove(int unit, PlacedItem item, int site) {
    change(unit, item, site, -1L);
    if (onBars.remove(unit) != null) {
      barsKnown = false;
    }
  }

  private void change(int unit, PlacedItem item, int site, long sign) {
    BoxMm box = item.box();
    long centre = (long) box.minXMm() + box.maxXMm();
    long across = (long) box.minYMm() + box.maxYMm();
    long nominal = sign * item.item().mass().massG();
    nominalMassG += nominal;
    heightGMm += nominal * ((long) box.minZMm() + box.maxZMm());
    if (!table.varies(unit)) {
      long massG = table.massG(unit, 0);
      constantSide += sign * massG * across;
      constantMass += sign * massG;
      constantRear += sign * Lever.rearHalfGMm(massG, centre);
      constantMoment += sign * momentOf(massG, box);
      for (LimitGroup group : groupsInUse) {
        if (group != null) {
          group.addInSpace(constant[group.number()], 0, site, sign * massG);
        }
      }
      return;
    }
    long knownMass = -1L;
    long knownMoment = 0L;
    for (int s = 0; s < mass.length; s++) {
      long massG = table.massG(unit, s);
      mass[s] += sign * massG;
      side[s] += sign * massG * across;
      rear[s] += sign * Lever.rearHalfGMm(massG, centre);
      if (table.moving(s)) {
        if (massG != knownMass) {
          knownMass = massG;
          knownMoment = momentOf(massG, box);
        }
        moment[s] += sign * knownMoment;
      }
      table.group(s).addInSpace(varying, table.offset(s), site, sign * massG);
    }
  }

  private long momentOf(long massG, BoxMm box) {
    return Lever.overhangHalfGMm(massG, box.minXMm(), box.maxXMm(), table.wheelbaseMm());
  }

  /**
   * Overload of every limit in its worst state, rounded up to a gram, summed, less what no gear can
   * help.
   */
  long overG() {
    Arrays.fill(over, 0L);
    for (int s = 0; s < mass.length; s++) {
      long allRear = rear[s] + constantRear;
      long allFront = 2L * table.wheelbaseMm() * (mass[s] + constantMass) - allRear;
      table.raise(
          s,
          varying,
          constant[table.group(s).number()],
          new LimitGroup.Axles(allRear, allFront),
          over);
    }
    return sumOf(over);
  }

  private long sumOf(long[] grams) {
    long sum = 0L;
    for (int line = 0; line < grams.length; line++) {
      sum += Math.max(0L, grams[line] - credit[line]);
    }
    if (!barsKnown) {
      barsOverG = onBars.isEmpty() ? 0L : barsOverG();
      barsKnown = true;
    }
    return sum + barsOverG;
  }

  /** Overload by limit, only where there is any, without what gear on single bars does. */
  Map<String, Long> overByLimit() {
    overG();
    Map<String, Long> byLimit = new HashMap<>();
    for (int line = 0; line < over.length; line++) {
      if (over[line] > 0L) {
        byLimit.put(table.lineKey(line), over[line]);
      }
    }
    return byLimit;
  }

  /** What {@link #overG} would be with one more unit aboard; nothing changes. */
  long overWithG(int unit, PlacedItem item, int site) {
    if (item.space().bars().isPresent()) {
      add(unit, item, site);
      long with = overG();
      remove(unit, item, site);
      overG();
      return with;
    }
    System.arraycopy(over, 0, overWith, 0, over.length);
    BoxMm box = item.box();
    long centre = (long) box.minXMm() + box.maxXMm();
    for (int s = 0; s < mass.length; s++) {
      long massG = table.massG(unit, s);
      long allRear = rear[s] + constantRear + Lever.rearHalfGMm(massG, centre);
      long allMass = mass[s] + constantMass + massG;
      table.raiseWith(
          s,
          varying,
          constant[table.group(s).number()],
          new LimitGroup.Axles(allRear, 2L * table.wheelbaseMm() * allMass - allRear),
          site,
          massG,
          overWith);
    }
    return sumOf(overWith);
  }

  /** Worst moving rear overhang moment. */
  long momentHalfGMm() {
    long worst = 0L;
    for (int s = 0; s < moment.length; s++) {
      if (table.moving(s)) {
        worst = Math.max(worst, table.fixedMomentHalfGMm(s) + moment[s] + constantMoment);
      }
    }
    return worst;
  }

  /** How far the worst moving state is beyond the allowed difference of the sides, grams. */
  long sideOverG(long limitG) {
    long worst = 0L;
    for (int s = 0; s < side.length; s++) {
      if (table.moving(s)) {
        long lever = Math.abs(table.fixedSideHalfGMm(s) + side[s] + constantSide);
        // Right less left, by the lever rule on the mean track: m 2y / track. [S10]
        worst = Math.max(worst, 2L * lever / table.trackSumMm() - limitG);
      }
    }
    return worst;
  }

  /** Mean height of the centres of all gear, as loaded, millimetres. */
  long meanHeightMm() {
    return nominalMassG == 0L ? 0L : heightGMm / (2L * nominalMassG);
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
