package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Door;
import kitstow.planner.model.FittedDoor;

/** What passes a door: its clear opening less what struts and catches take away. */
public final class DoorOpenings {
  /** A clear rectangle of a door: along the side and in height, vehicle frame. */
  public record Opening(int fromMm, int toMm, int lowerZMm, int upperZMm) {
    /** Clear width along the side. */
    public int alongMm() {
      return toMm - fromMm;
    }

    /** Clear height. */
    public int upMm() {
      return upperZMm - lowerZMm;
    }
  }

  private DoorOpenings() {}

  /** The largest clear rectangles of a door. */
  public static List<Opening> of(FittedDoor door) {
    List<Opening> openings = new ArrayList<>();
    openings.add(new Opening(door.fromMm(), door.toMm(), door.sillZMm(), door.headZMm()));
    for (Door.Strut strut : door.struts()) {
      List<Opening> left = new ArrayList<>();
      for (Opening opening : openings) {
        cut(opening, strut, left);
      }
      openings = left;
    }
    return openings;
  }

  private static void cut(Opening opening, Door.Strut strut, List<Opening> left) {
    boolean apart =
        strut.toMm() <= opening.fromMm()
            || strut.fromMm() >= opening.toMm()
            || strut.upperZMm() <= opening.lowerZMm()
            || strut.lowerZMm() >= opening.upperZMm();
    if (apart) {
      left.add(opening);
      return;
    }
    keep(left, opening.fromMm(), strut.fromMm(), opening.lowerZMm(), opening.upperZMm());
    keep(left, strut.toMm(), opening.toMm(), opening.lowerZMm(), opening.upperZMm());
    keep(left, opening.fromMm(), opening.toMm(), opening.lowerZMm(), strut.lowerZMm());
    keep(left, opening.fromMm(), opening.toMm(), strut.upperZMm(), opening.upperZMm());
  }

  private static void keep(List<Opening> left, int from, int to, int lower, int upper) {
    if (from < to && lower < upper) {
      left.add(new Opening(from, to, lower, upper));
    }
  }

  /**
   * How far a section is too large for the best opening of a door; zero or less where it passes.
   *
   * @param alongMm section along the side, clearance included
   * @param upMm section in height, clearance included
   */
  public static int shortMm(FittedDoor door, int alongMm, int upMm) {
    int best = Math.max(alongMm, upMm);
    for (Opening opening : of(door)) {
      best = Math.min(best, Math.max(alongMm - opening.alongMm(), upMm - opening.upMm()));
    }
    return best;
  }
}
