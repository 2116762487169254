package kitstow.planner.solver;

import java.util.Optional;
import kitstow.planner.model.Placement;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.packing.Wanted;

/**
 * How a unit is to stand, as one number, since that is what a search changes: as is cheapest, in
 * one pose if it can, rather on top of others, or at one place if it can stand there.
 */
final class Stance {
  /** As is cheapest. */
  static final long ANY = 0L;

  /** Added for what goes rather on top of others than further back. */
  static final long STACKED = 100L;

  private static final long PLACE = 1L << 62;
  private static final int FIELD = 18;
  private static final long FIELD_MASK = (1L << FIELD) - 1L;
  private static final int OFFSET_MM = 1 << (FIELD - 1);

  private Stance() {}

  /** One pose before all others, by its index. */
  static long preferring(int pose) {
    return pose + 1L;
  }

  /**
   * One pose at one place.
   *
   * @param corner foremost, left, lowest corner, in the frame of the space
   */
  static long at(int pose, SpacePointMm corner) {
    return PLACE
        | ((((long) pose << FIELD | field(corner.xMm())) << FIELD | field(corner.yMm())) << FIELD)
        | field(corner.zMm());
  }

  /** The pose and place in which a unit stands. */
  static long asIn(Wanted unit, Placement placement) {
    return at(unit.poseIn(placement).getAsInt(), placement.corner());
  }

  private static long field(int mm) {
    long shifted = (long) mm + OFFSET_MM;
    if (shifted < 0L || shifted > FIELD_MASK) {
      throw new IllegalArgumentException("place out of reach: " + mm + " mm");
    }
    return shifted;
  }

  private static boolean isPlace(long stance) {
    return (stance & PLACE) != 0L;
  }

  /** What is wanted of a unit, or of the cheapest pose where it has no such pose. */
  static Wanted of(Wanted unit, long stance) {
    if (isPlace(stance)) {
      return unit.standing(
          poseOf(stance), /* ratherStacked= */ false, Optional.of(cornerOf(stance)));
    }
    int pose = (int) (stance % STACKED) - 1;
    return unit.standing(
        pose < unit.poses().size() ? pose : -1, stance >= STACKED, Optional.empty());
  }

  /** The pose of one that names a place. */
  static int poseOf(long stance) {
    return (int) ((stance & ~PLACE) >> (3 * FIELD));
  }

  /** The place of one that names a place. */
  static SpacePointMm cornerOf(long stance) {
    return new SpacePointMm(unfield(stance, 2), unfield(stance, 1), unfield(stance, 0));
  }

  private static int unfield(long stance, int index) {
    return (int) (stance >> (index * FIELD) & FIELD_MASK) - OFFSET_MM;
  }
}
