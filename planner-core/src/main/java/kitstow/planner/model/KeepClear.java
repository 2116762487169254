package kitstow.planner.model;

/**
 * A face of an item before which room must stay free.
 *
 * @param face which face, in the item's own terms
 * @param clearMm how much room, above zero
 * @param kind why: air at all times, or a lid where it is opened
 */
public record KeepClear(Face face, int clearMm, Kind kind) {
  /** Faces in the item's own terms. */
  public enum Face {
    /** What is uppermost as the item stands. */
    TOP,
    /** At least one of the two ends of its listed length: it may be turned end for end. */
    LENGTH_END,
    /** At least one of the two ends of its listed width. */
    WIDTH_END
  }

  /** Why the room is needed. */
  public enum Kind {
    /** Ventilation: at all times and against walls too. */
    AIR,
    /** A lid: judged where it is opened. Only with {@link Face#TOP}. */
    LID
  }
}
