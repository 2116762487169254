package kitstow.planner.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;

/**
 * The least moment with which all boxes of a case go into its space, proved by trying every place
 * on a coarse grid: enough of each base rests on the floor or on boxes whose tops are level with
 * it, and the middle of the base lies in the convex hull of where it rests. Boxes are set down from
 * below upward, so that what one stands on is there before it. For up to four boxes.
 *
 * <p>Between the places of the grid there may be better ones, since a base can lie over an edge by
 * any length. The search sets things only against walls and against each other; where all sizes are
 * whole in the grid its places are on it too, and so it cannot be better than what is proved here.
 */
final class CoarsePacking {
  static final int GRID_MM = 100;

  private final BoxCase boxes;
  private final List<List<Place>> places = new ArrayList<>();
  private final BoxMm[] now;
  private List<BoxMm> best = List.of();
  private long bestMoment = Long.MAX_VALUE;

  /** A way for a box to stand, and how far back and to the right, with the moment it has there. */
  private record Place(int xMm, int yMm, SizeMm size, long momentHalfGMm) {
    BoxMm at(int zMm) {
      return new BoxMm(
          xMm, yMm, zMm, xMm + size.lengthMm(), yMm + size.widthMm(), zMm + size.heightMm());
    }
  }

  private CoarsePacking(BoxCase boxes) {
    this.boxes = boxes;
    this.now = new BoxMm[boxes.boxes().size()];
    for (BoxCase.Box box : boxes.boxes()) {
      places.add(placesOf(box));
    }
  }

  /** The optimum, or nothing where they do not all go in. */
  static Optional<BoxCase.Optimum> solve(BoxCase boxes) {
    CoarsePacking packing = new CoarsePacking(boxes);
    if (packing.places.stream().noneMatch(List::isEmpty)) {
      packing.branch(0L, 0, -1);
    }
    return packing.best.isEmpty()
        ? Optional.empty()
        : Optional.of(new BoxCase.Optimum(packing.bestMoment, packing.best));
  }

  private List<Place> placesOf(BoxCase.Box box) {
    List<Place> all = new ArrayList<>();
    for (SizeMm size : box.sizes()) {
      for (int x = 0; x + size.lengthMm() <= boxes.room().lengthMm(); x += GRID_MM) {
        for (int y = 0; y + size.widthMm() <= boxes.room().widthMm(); y += GRID_MM) {
          all.add(new Place(x, y, size, boxes.momentHalfGMm(box.massG(), x, x + size.lengthMm())));
        }
      }
    }
    all.sort(Comparator.comparingLong(Place::momentHalfGMm));
    return all;
  }

  /**
   * Sets down one more box, no lower than the last one and, at its height, of a later number.
   *
   * @param lowestZMm height of the last one
   * @param last number of the last one
   */
  private void branch(long momentNow, int lowestZMm, int last) {
    if (momentNow + leastOfTheRest() >= bestMoment) {
      return;
    }
    boolean all = true;
    for (int i = 0; i < now.length; i++) {
      if (now[i] == null) {
        all = false;
        for (int z : levels(lowestZMm)) {
          if (z > lowestZMm || i > last) {
            setDown(i, z, momentNow);
          }
        }
      }
    }
    if (all) {
      bestMoment = momentNow;
      best = List.of(now.clone());
    }
  }

  private void setDown(int i, int zMm, long momentNow) {
    for (Place place : places.get(i)) {
      if (momentNow + place.momentHalfGMm() >= bestMoment) {
        return;
      }
      BoxMm box = place.at(zMm);
      if (box.maxZMm() <= boxes.room().heightMm() && isFree(box) && isSupported(box)) {
        now[i] = box;
        branch(momentNow + place.momentHalfGMm(), zMm, i);
        now[i] = null;
      }
    }
  }

  private long leastOfTheRest() {
    long sum = 0L;
    for (int i = 0; i < now.length; i++) {
      sum += now[i] == null ? places.get(i).get(0).momentHalfGMm() : 0L;
    }
    return sum;
  }

  /** The heights at which something can stand. */
  private List<Integer> levels(int lowestZMm) {
    List<Integer> levels = new ArrayList<>(List.of(0));
    for (BoxMm box : now) {
      if (box != null && !levels.contains(box.maxZMm())) {
        levels.add(box.maxZMm());
      }
    }
    levels.removeIf(z -> z < lowestZMm);
    return levels;
  }

  private boolean isFree(BoxMm box) {
    for (BoxMm other : now) {
      if (other != null
          && box.minXMm() < other.maxXMm()
          && other.minXMm() < box.maxXMm()
          && box.minYMm() < other.maxYMm()
          && other.minYMm() < box.maxYMm()
          && box.minZMm() < other.maxZMm()
          && other.minZMm() < box.maxZMm()) {
        return false;
      }
    }
    return true;
  }

  private boolean isSupported(BoxMm box) {
    if (box.minZMm() == 0) {
      return true;
    }
    Rests rests = new Rests(box);
    for (BoxMm other : now) {
      if (other != null && other.maxZMm() == box.minZMm()) {
        rests.on(other);
      }
    }
    return rests.enough(boxes.supportPermille());
  }
}
