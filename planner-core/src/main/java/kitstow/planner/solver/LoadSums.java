package kitstow.planner.solver;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.statics.Lever;
import org.jspecify.annotations.Nullable;

/**
 * What the gear aboard puts on every limit, kept up to date as units come and go. What does not
 * change on the trip loads a limit alike in every state, so the worst state of the rest is kept.
 */
final class LoadSums {
  /** Less than any load, and far enough from the least number to add to. */
  private static final long NONE = Long.MIN_VALUE / 4L;

  private final TripTable table;
  private final long[] mass;
  private final long[] rear;
  private final long[] moment;
  private final long[] side;
  private final long[] varying;
  private final long[][] constant;
  private final long[][] worst;
  private final long[] over;
  private final long[] overWith;
  private final long[] credit;
  private final @Nullable LimitGroup[] groupsInUse;
  private final BarSums bars;
  private boolean worstKnown;
  private long worstMoment;
  private long mostSide;
  private long leastSide;
  private boolean overKnown;
  private long overG;
  private long constantMass;
  private long constantRear;
  private long constantMoment;
  private long constantSide;
  private long heightGMm;
  private long nominalMassG;
  private final @Nullable PlacedItem[] counted;
  private final int[] countedSite;

  /**
   * Sums of no gear.
   *
   * @param units number of units that there are
   * @param unavoidable overload by limit that gear cannot help, grams; it does not count
   */
  LoadSums(TripTable table, int units, Map<String, Long> unavoidable) {
    this.table = table;
    this.counted = new PlacedItem[units];
    this.countedSite = new int[units];
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
    this.worst = new long[groups][];
    this.groupsInUse = new LimitGroup[groups];
    for (int s = 0; s < mass.length; s++) {
      LimitGroup group = table.group(s);
      groupsInUse[group.number()] = group;
      constant[group.number()] = new long[group.size()];
      worst[group.number()] = new long[group.size()];
    }
    this.over = new long[table.lineCount()];
    this.overWith = new long[table.lineCount()];
    this.credit = new long[table.lineCount()];
    for (int line = 0; line < credit.length; line++) {
      credit[line] = unavoidable.getOrDefault(table.lineKey(line), 0L);
    }
    this.bars = new BarSums(table);
  }

  TripTable table() {
    return table;
  }

  /**
   * Counts what is aboard now.
   *
   * @param placed what stands where, by unit; null where a unit stands nowhere
   * @param site its space, by unit
   */
  @SuppressWarnings("ReferenceEquality") // Finds keeps one object a place; a copy costs only time.
  void follow(@Nullable PlacedItem[] placed, int[] site) {
    for (int unit = 0; unit < placed.length; unit++) {
      PlacedItem was = counted[unit];
      PlacedItem is = placed[unit];
      if (was != is) {
        if (was != null) {
          change(unit, was, countedSite[unit], -1L);
          counted[unit] = null;
        }
        if (is != null) {
          add(unit, is, site[unit]);
        }
      }
    }
  }

  /** Counts a unit that was not aboard. */
  void add(int unit, PlacedItem item, int site) {
    change(unit, item, site, 1L);
    counted[unit] = item;
    countedSite[unit] = site;
  }

  private void change(int unit, PlacedItem item, int site, long sign) {
    BoxMm box = item.box();
    long centre = (long) box.minXMm() + box.maxXMm();
    long across = (long) box.minYMm() + box.maxYMm();
    long nominal = sign * item.item().mass().massG();
    nominalMassG += nominal;
    heightGMm += nominal * ((long) box.minZMm() + box.maxZMm());
    overKnown = false;
    bars.change(unit, item, sign);
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
    worstKnown = false;
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

  /** Works out the worst states anew if anything that changes on the trip has come or gone. */
  private void findWorst() {
    if (worstKnown) {
      return;
    }
    worstKnown = true;
    for (long[] loads : worst) {
      if (loads != null) {
        Arrays.fill(loads, NONE);
      }
    }
    worstMoment = NONE;
    mostSide = NONE;
    leastSide = -NONE;
    for (int s = 0; s < mass.length; s++) {
      table.worst(s, varying, axles(mass[s], rear[s]), worst[table.group(s).number()]);
      if (table.moving(s)) {
        worstMoment = Math.max(worstMoment, table.fixedMomentHalfGMm(s) + moment[s]);
        long lever = table.fixedSideHalfGMm(s) + side[s];
        mostSide = Math.max(mostSide, lever);
        leastSide = Math.min(leastSide, lever);
      }
    }
  }

  private LimitGroup.Axles axles(long massG, long rearHalfGMm) {
    return new LimitGroup.Axles(rearHalfGMm, 2L * table.wheelbaseMm() * massG - rearHalfGMm);
  }

  /**
   * Overload of every limit in its worst state, rounded up to a gram, summed, less what no gear can
   * help.
   */
  long overG() {
    if (!overKnown) {
      overKnown = true;
      findWorst();
      Arrays.fill(over, 0L);
      LimitGroup.Axles axles = axles(constantMass, constantRear);
      for (LimitGroup group : groupsInUse) {
        if (group != null) {
          group.raise(worst[group.number()], constant[group.number()], axles, over);
        }
      }
      overG = sumOf(over) + bars.overG();
    }
    return overG;
  }

  private long sumOf(long[] grams) {
    long sum = 0L;
    for (int line = 0; line < grams.length; line++) {
      sum += Math.max(0L, grams[line] - credit[line]);
    }
    return sum;
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
    overG();
    System.arraycopy(over, 0, overWith, 0, over.length);
    BoxMm box = item.box();
    long centre = (long) box.minXMm() + box.maxXMm();
    if (table.varies(unit)) {
      for (int s = 0; s < mass.length; s++) {
        long massG = table.massG(unit, s);
        table.raiseWith(
            s,
            varying,
            constant[table.group(s).number()],
            axles(
                mass[s] + constantMass + massG,
                rear[s] + constantRear + Lever.rearHalfGMm(massG, centre)),
            site,
            massG,
            overWith);
      }
    } else {
      long massG = table.massG(unit, 0);
      LimitGroup.Axles axles =
          axles(constantMass + massG, constantRear + Lever.rearHalfGMm(massG, centre));
      for (LimitGroup group : groupsInUse) {
        if (group != null) {
          int number = group.number();
          group.raiseWith(worst[number], constant[number], axles, site, massG, overWith);
        }
      }
    }
    return sumOf(overWith) + bars.overWithG(unit, item);
  }

  /** Worst moving rear overhang moment. */
  long momentHalfGMm() {
    findWorst();
    return Math.max(0L, worstMoment + constantMoment);
  }

  /** How far the worst moving state is beyond the allowed difference of the sides, grams. */
  long sideOverG(long limitG) {
    findWorst();
    if (mostSide < leastSide) {
      return 0L;
    }
    long lever = Math.max(Math.abs(mostSide + constantSide), Math.abs(leastSide + constantSide));
    // Right less left, by the lever rule on the mean track: m 2y / track. [S10]
    return Math.max(0L, 2L * lever / table.trackSumMm() - limitG);
  }

  /** Mean height of the centres of all gear, as loaded, millimetres. */
  long meanHeightMm() {
    return nominalMassG == 0L ? 0L : heightGMm / (2L * nominalMassG);
  }
}
