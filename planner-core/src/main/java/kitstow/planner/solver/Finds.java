package kitstow.planner.solver;

import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
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

  Finds(PackingProblem problem) {
    this.problem = problem;
    this.last = new PlacedItem[2 * problem.units().size()];
  }

  /** Where a unit stands in a space as it is, or null. */
  @Nullable PlacedItem find(RigView view, int unit, long stance, int site, Ground ground) {
    Wanted wanted = problem.units().get(unit);
    long key =
        Ground.mix(
            ground.fingerprint(site)
                ^ Ground.mix(
                    ((long) view.number() << 44)
                        ^ ((long) site << 32)
                        ^ (long) problem.kindOf(unit))
                ^ Ground.mix(stance ^ 0x5DEECE66DL));
    long known = memory.get(key);
    if (known == LongMemory.UNKNOWN) {
      Decoder.Found found = view.decoder().find(Stance.of(wanted, stance), site, ground);
      known = found.place().map(item -> placeOf(wanted, item.placement())).orElse(NOWHERE);
      memory.put(key, known);
    }
    return known == NOWHERE ? null : placed(view, unit, site, known);
  }

  private static long placeOf(Wanted wanted, Placement placement) {
    return Stance.at(wanted.poseIn(placement).getAsInt(), placement.corner());
  }

  /** The same object for the same place as long as it can be kept, so that changes show. */
  private PlacedItem placed(RigView view, int unit, int site, long there) {
    Wanted wanted = problem.units().get(unit);
    Space space = view.sites().space(site);
    int pose = Stance.poseOf(there);
    SpacePointMm corner = Stance.cornerOf(there);
    for (int i = 0; i < 2; i++) {
      PlacedItem old = last[2 * unit + i];
      if (old != null
          && old.placement().corner().equals(corner)
          && old.space().equals(space)
          && old.placement().turn() == wanted.poses().get(pose).turn()
          && old.placement().shape() == wanted.poses().get(pose).shape()) {
        return old;
      }
    }
    PlacedItem item = Decoder.placed(wanted, space, pose, space.pointAt(corner));
    last[2 * unit + 1] = last[2 * unit];
    last[2 * unit] = item;
    return item;
  }
}
