package kitstow.planner.exact;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;

/**
 * Boxes that all go into one space, measured from its foremost, left, lowest corner.
 *
 * @param room size of the space
 * @param axleMm rear axle line behind the front end of the space; not above 0 where all of the
 *     space lies behind it
 * @param supportPermille least supported share of a base, per mille
 * @param boxes the boxes
 */
public record BoxCase(SizeMm room, int axleMm, int supportPermille, List<Box> boxes) {
  /** Copies its boxes. */
  public BoxCase {
    boxes = List.copyOf(boxes);
  }

  /**
   * A box.
   *
   * @param listed its size as listed
   * @param massG mass, grams
   * @param turns the ways it may stand
   */
  public record Box(SizeMm listed, long massG, List<Turn> turns) {
    /** Copies its turns. */
    public Box {
      turns = List.copyOf(turns);
    }

    /** The different sizes it has in its turns. */
    List<SizeMm> sizes() {
      return turns.stream().map(turn -> turn.applyTo(listed)).distinct().toList();
    }
  }

  /**
   * Where all boxes stand in a plan of least moment.
   *
   * @param momentHalfGMm its moment about the rear axle line of what lies behind it, gram
   *     half-millimetres
   * @param places the boxes in their order
   */
  public record Optimum(long momentHalfGMm, List<BoxMm> places) {
    /** Copies its places. */
    public Optimum {
      places = List.copyOf(places);
    }
  }

  /**
   * Moment of a box from its foremost to its rearmost millimetre, gram half-millimetres, rounded
   * up: its slices of one millimetre are added up one by one, each with the distance of its middle
   * behind the axle.
   */
  public long momentHalfGMm(Box box, int minXMm, int maxXMm) {
    long doubledDistances = 0L;
    for (int x = Math.max(minXMm, axleMm); x < maxXMm; x++) {
      doubledDistances += 2L * (x - axleMm) + 1L;
    }
    long length = (long) maxXMm - minXMm;
    return (box.massG() * doubledDistances + length - 1L) / length;
  }

  /** Volume of all boxes as a share of the space. */
  double fill() {
    long volumeMm3 = boxes.stream().mapToLong(box -> box.listed().volumeMm3()).sum();
    return (double) volumeMm3 / room.volumeMm3();
  }
}
