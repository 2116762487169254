package kitstow.planner.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The convex hull of contact areas, to judge whether a centre of mass stands over it. Exact: all
 * coordinates are whole half-millimetres.
 */
public final class ContactHull {
  private record Corner(long x2, long y2) {}

  private ContactHull() {}

  /**
   * Whether the centre of a body's base lies inside or on the hull of the areas in which the body
   * touches its supports.
   *
   * @param body the body whose centre is judged
   * @param supports the bodies or floors beneath it, already at contact height
   */
  public static boolean holdsCentre(BoxMm body, List<BoxMm> supports) {
    List<Corner> corners = new ArrayList<>();
    for (BoxMm support : supports) {
      if (Boxes.footprintOverlapMm2(body, support) == 0L) {
        continue;
      }
      long x0 = 2L * Math.max(body.minXMm(), support.minXMm());
      long x1 = 2L * Math.min(body.maxXMm(), support.maxXMm());
      long y0 = 2L * Math.max(body.minYMm(), support.minYMm());
      long y1 = 2L * Math.min(body.maxYMm(), support.maxYMm());
      corners.add(new Corner(x0, y0));
      corners.add(new Corner(x0, y1));
      corners.add(new Corner(x1, y0));
      corners.add(new Corner(x1, y1));
    }
    if (corners.isEmpty()) {
      return false;
    }
    Corner centre =
        new Corner((long) body.minXMm() + body.maxXMm(), (long) body.minYMm() + body.maxYMm());
    List<Corner> hull = hullOf(corners);
    for (int i = 0; i < hull.size(); i++) {
      if (cross(hull.get(i), hull.get((i + 1) % hull.size()), centre) < 0) {
        return false;
      }
    }
    return true;
  }

  /** Counter-clockwise hull by the monotone chain (A. M. Andrew, 1979). */
  private static List<Corner> hullOf(List<Corner> corners) {
    List<Corner> sorted = new ArrayList<>(corners);
    sorted.sort(Comparator.comparingLong(Corner::x2).thenComparingLong(Corner::y2));
    List<Corner> hull = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      int start = hull.size();
      for (int i = 0; i < sorted.size(); i++) {
        Corner next = sorted.get(pass == 0 ? i : sorted.size() - 1 - i);
        while (hull.size() >= start + 2
            && cross(hull.get(hull.size() - 2), hull.get(hull.size() - 1), next) <= 0) {
          hull.remove(hull.size() - 1);
        }
        hull.add(next);
      }
      hull.remove(hull.size() - 1);
    }
    return hull;
  }

  private static long cross(Corner a, Corner b, Corner c) {
    return (b.x2() - a.x2()) * (c.y2() - a.y2()) - (b.y2() - a.y2()) * (c.x2() - a.x2());
  }
}
