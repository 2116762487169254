package kitstow.planner.solver;

import kitstow.planner.geometry.PointMm;
import kitstow.planner.model.PlacedItem;
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
  private static final int FIELD = 18;
  private static final long FIELD_MASK = (1L << FIELD) - 1L;
  private static final int OFFSET_MM = 1 << (FIELD - 1);

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
      known = found.place().isPresent() ? packed(wanted, found.place().get()) : NOWHERE;
      memory.put(key, known);
    }
    return known == NOWHERE ? null : unpacked(view, unit, site, known);
  }

  private static long packed(Wanted wanted, PlacedItem item) {
    int pose = 0;
    while (wanted.poses().get(pose).shape() != item.placement().shape()
        || wanted.poses().get(pose).turn() != item.placement().turn()) {
      pose++;
    }
    return ((((long) pose << FIELD | field(item.box().minXMm())) << FIELD
                | field(item.box().minYMm()))
            << FIELD)
        | field(item.box().minZMm());
  }

  private static long field(int mm) {
    long shifted = (long) mm + OFFSET_MM;
    if (shifted < 0L || shifted > FIELD_MASK) {
      throw new IllegalArgumentException("place out of reach: " + mm + " mm");
    }
    return shifted;
  }

  private static int unfield(long packed, int index) {
    return (int) (packed >> (index * FIELD) & FIELD_MASK) - OFFSET_MM;
  }

  /** The same object for the same place as long as it can be kept, so that changes show. */
  private PlacedItem unpacked(RigView view, int unit, int site, long packed) {
    int x = unfield(packed, 2);
    int y = unfield(packed, 1);
    int z = unfield(packed, 0);
    int pose = (int) (packed >> (3 * FIELD));
    Wanted wanted = problem.units().get(unit);
    for (int i = 0; i < 2; i++) {
      PlacedItem old = last[2 * unit + i];
      if (old != null
          && old.box().minXMm() == x
          && old.box().minYMm() == y
          && old.box().minZMm() == z
          && old.space().equals(view.sites().space(site))
          && old.placement().turn() == wanted.poses().get(pose).turn()
          && old.placement().shape() == wanted.poses().get(pose).shape()) {
        return old;
      }
    }
    PlacedItem item = Decoder.placed(wanted, view.sites().space(site), pose, new PointMm(x, y, z));
    last[2 * unit + 1] = last[2 * unit];
    last[2 * unit] = item;
    return item;
  }
}
