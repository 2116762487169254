package kitstow.planner.exact;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;

/**
 * Boxes that all go into some spaces beside each other, measured from the foremost, left, lowest
 * corner of the room in which these lie.
 *
 * @param spaces the spaces; their floors are level, at 0
 * @param axleMm rear axle line behind the front end of the room; not above 0 where all of it lies
 *     behind it
 * @param supportPermille least supported share of a base, per mille
 * @param mostFrontHalfGMm most lever about the rear axle line that the boxes may put on the front
 *     axle, gram half-millimetres, at the start and at the end
 * @param boxes the boxes
 */
public record BoxCase(
    List<Space> spaces, int axleMm, int supportPermille, long mostFrontHalfGMm, List<Box> boxes) {
  /** Copies its spaces and boxes. */
  public BoxCase {
    spaces = List.copyOf(spaces);
    boxes = List.copyOf(boxes);
  }

  /** Boxes that all go into one space, which may carry anything. */
  public BoxCase(SizeMm room, int axleMm, int supportPermille, List<Box> boxes) {
    this(
        List.of(new Space(new PointMm(0, 0, 0), room, Long.MAX_VALUE)),
        axleMm,
        supportPermille,
        Long.MAX_VALUE,
        boxes);
  }

  /** The same with another limit of the front axle. */
  BoxCase withMostFront(long halfGMm) {
    return new BoxCase(spaces, axleMm, supportPermille, halfGMm, boxes);
  }

  /**
   * A space.
   *
   * @param corner its foremost, left, lowest corner in the room
   * @param size its size
   * @param ratingG what it may carry, grams
   */
  public record Space(PointMm corner, SizeMm size, long ratingG) {
    /** Where it is in the room. */
    public BoxMm box() {
      return BoxMm.at(corner, size);
    }

    /** Whether a place lies wholly in it. */
    public boolean holds(BoxMm place) {
      BoxMm own = box();
      return place.minXMm() >= own.minXMm()
          && place.maxXMm() <= own.maxXMm()
          && place.minYMm() >= own.minYMm()
          && place.maxYMm() <= own.maxYMm()
          && place.maxZMm() <= own.maxZMm();
    }
  }

  /** Size of the room in which all spaces lie. */
  public SizeMm room() {
    return new SizeMm(
        spaces.stream().mapToInt(space -> space.box().maxXMm()).max().orElseThrow(),
        spaces.stream().mapToInt(space -> space.box().maxYMm()).max().orElseThrow(),
        spaces.stream().mapToInt(space -> space.box().maxZMm()).max().orElseThrow());
  }

  /**
   * A box.
   *
   * @param listed its size as listed
   * @param massG mass at the start, grams
   * @param endG mass at the end, grams
   * @param turns the ways it may stand
   */
  public record Box(SizeMm listed, long massG, long endG, List<Turn> turns) {
    /** Copies its turns. */
    public Box {
      turns = List.copyOf(turns);
    }

    /** A box whose mass does not change. */
    Box(SizeMm listed, long massG, List<Turn> turns) {
      this(listed, massG, massG, turns);
    }

    /** The same with another mass at the end. */
    Box withEnd(long grams) {
      return new Box(listed, massG, grams, turns);
    }

    /** The different sizes it has in its turns. */
    List<SizeMm> sizes() {
      return turns.stream().map(turn -> turn.applyTo(listed)).distinct().toList();
    }
  }

  /**
   * Where all boxes stand in a plan of least moment.
   *
   * @param momentHalfGMm its moment at the start or at the end, whichever is more, about the rear
   *     axle line of what lies behind it, gram half-millimetres
   * @param places the boxes in their order
   */
  public record Optimum(long momentHalfGMm, List<BoxMm> places) {
    /** Copies its places. */
    public Optimum {
      places = List.copyOf(places);
    }
  }

  /** Whether any box weighs something else at the end. */
  public boolean changes() {
    return boxes.stream().anyMatch(box -> box.endG() != box.massG());
  }

  /** Lever about the rear axle line of boxes in some places, ahead positive, at the start. */
  long frontHalfGMm(List<BoxMm> places) {
    long sum = 0L;
    for (int i = 0; i < places.size(); i++) {
      long doubledCentre = (long) places.get(i).minXMm() + places.get(i).maxXMm();
      sum += boxes.get(i).massG() * (2L * axleMm - doubledCentre);
    }
    return sum;
  }

  /**
   * Moment of a mass from its foremost to its rearmost millimetre, gram half-millimetres, rounded
   * up: its slices of one millimetre are added up one by one, each with the distance of its middle
   * behind the axle.
   */
  public long momentHalfGMm(long massG, int minXMm, int maxXMm) {
    long doubledDistances = 0L;
    for (int x = Math.max(minXMm, axleMm); x < maxXMm; x++) {
      doubledDistances += 2L * (x - axleMm) + 1L;
    }
    long length = (long) maxXMm - minXMm;
    return (massG * doubledDistances + length - 1L) / length;
  }

  /** Volume of all boxes as a share of that of the spaces. */
  double fill() {
    long volumeMm3 = boxes.stream().mapToLong(box -> box.listed().volumeMm3()).sum();
    long ofMm3 = spaces.stream().mapToLong(space -> space.size().volumeMm3()).sum();
    return (double) volumeMm3 / ofMm3;
  }
}
