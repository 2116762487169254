package kitstow.planner.solver;

import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.packing.Decoder;
import kitstow.planner.packing.Ground;
import kitstow.planner.packing.Wanted;
import org.jspecify.annotations.Nullable;

/**
 * Places found so far: the same unit in the same space among the same things around it stands in
 * the same place, so it is searched once. A search meets most situations many times over.
 */
final class Finds {
  private static final int BITS = 18;
  private static final long NOWHERE = -1L;

  private final PackingProblem problem;
  private final LongMemory memory = new LongMemory(BITS);
  private final @Nullable PlacedItem[] last;
  private final long[] lastSite;

  Finds(PackingProblem problem) {
    this.problem = problem;
    this.last = new PlacedItem[2 * problem.units().size()];
    this.lastSite = new long[last.length];
  }

  /** Fingerprint of all that decides where a unit stands in a space as it is. */
  long keyOf(RigView view, int unit, long stance, int site, Ground ground) {
    return Ground.mix(
        ground.fingerprint(site)
            ^ Ground.mix(
                ((long) view.number() << 44) ^ ((long) site << 32) ^ (long) problem.kindOf(unit))
            ^ Ground.mix(stance ^ 0x5DEECE66DL));
  }

  /**
   * Where a unit stands in a space as it is, or null.
   *
   * @param key its {@link #keyOf}
   */
  @Nullable PlacedItem find(
      long key, RigView view, int unit, long stance, int site, Ground ground) {
    long known = memory.get(key);
    if (known == LongMemory.UNKNOWN) {
      Wanted wanted = problem.units().get(unit);
      Decoder.Found found = view.decoder().find(Stance.of(wanted, stance), site, ground);
      known =
          found.place().isPresent()
              ? Stance.asIn(wanted, found.place().get().placement())
              : NOWHERE;
      memory.put(key, known);
    }
    return known == NOWHERE ? null : placed(view, unit, site, known);
  }

  /** The same object for the same place as long as it can be kept, so that changes show. */
  private PlacedItem placed(RigView view, int unit, int site, long there) {
    Wanted wanted = problem.units().get(unit);
    long siteOfRig = ((long) view.number() << 32) | site;
    int pose = Stance.poseOf(there);
    SpacePointMm corner = Stance.cornerOf(there);
    for (int i = 0; i < 2; i++) {
      PlacedItem old = last[2 * unit + i];
      if (old != null
          && lastSite[2 * unit + i] == siteOfRig
          && old.placement().corner().equals(corner)
          && old.placement().turn() == wanted.poses().get(pose).turn()
          && old.placement().shape() == wanted.poses().get(pose).shape()) {
        return old;
      }
    }
    Space space = view.sites().space(site);
    PlacedItem item = Decoder.placed(wanted, space, pose, space.pointAt(corner));
    last[2 * unit + 1] = last[2 * unit];
    lastSite[2 * unit + 1] = lastSite[2 * unit];
    last[2 * unit] = item;
    lastSite[2 * unit] = siteOfRig;
    return item;
  }
}
