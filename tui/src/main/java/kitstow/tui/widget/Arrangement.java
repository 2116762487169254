package kitstow.tui.widget;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.tui.view.Eye;
import kitstow.tui.view.Scale;

/** Which views stand where in an area, so that all have one scale and stay legible. */
final class Arrangement {
  /** Rows of a view that are not picture: its name above, the axle below. */
  static final int CAPTION_ROWS = 2;

  /** A scale at which a bag of 300 mm is still four cells wide. */
  private static final int LEGIBLE_MM_PER_COLUMN = 76;

  private static final int GAP_COLUMNS = 2;

  /** A view in its place. */
  record Spot(Eye eye, Area area, Scale scale) {}

  private Arrangement() {}

  /** As many views as are legible, the one that one is in first. */
  static List<Spot> of(Eye eye, BoxMm window, Area area) {
    Eye side = eye == Eye.REAR ? Eye.LEFT : eye;
    List<Eye> others = new ArrayList<>();
    for (Eye other : List.of(Eye.LEFT, Eye.ABOVE, Eye.RIGHT)) {
      if (other != side) {
        others.add(other);
      }
    }
    Eye second = side == Eye.LEFT || side == Eye.RIGHT ? Eye.ABOVE : others.get(0);
    others.remove(second);
    Eye third = others.get(0);
    List<List<List<Eye>>> sets =
        List.of(
            List.of(List.of(side, Eye.REAR), List.of(second, third)),
            List.of(List.of(side, Eye.REAR), List.of(second)),
            List.of(List.of(side), List.of(eye == Eye.REAR ? Eye.REAR : second)));
    for (List<List<Eye>> set : sets) {
      List<Spot> spots = grid(set, window, area);
      if (spots.get(0).scale().mmPerColumn() <= LEGIBLE_MM_PER_COLUMN) {
        return spots;
      }
    }
    return List.of(alone(eye, window, area));
  }

  /** One view alone. */
  static Spot alone(Eye eye, BoxMm window, Area area) {
    return grid(List.of(List.of(eye)), window, area).get(0);
  }

  private static List<Spot> grid(List<List<Eye>> rows, BoxMm window, Area area) {
    int mm = 1;
    while (mm < 10_000 && !fits(rows, window, area, mm)) {
      mm++;
    }
    List<Spot> spots = new ArrayList<>();
    int top = 0;
    for (List<Eye> row : rows) {
      int left = 0;
      int height = 0;
      for (int i = 0; i < row.size(); i++) {
        Eye eye = row.get(i);
        Scale scale = scale(eye, window, mm);
        spots.add(
            new Spot(
                eye,
                new Area(
                    area.column() + left,
                    area.row() + top,
                    Math.min(
                        area.columns() - left,
                        Math.max(scale.columns(), width(rows, window, i, mm))),
                    Math.min(area.rows() - top, scale.rows() + CAPTION_ROWS)),
                scale));
        left += width(rows, window, i, mm) + GAP_COLUMNS;
        height = Math.max(height, scale.rows() + CAPTION_ROWS);
      }
      top += height;
    }
    return spots;
  }

  private static boolean fits(List<List<Eye>> rows, BoxMm window, Area area, int mm) {
    int high = 0;
    int most = 0;
    for (List<Eye> row : rows) {
      int height = 0;
      for (Eye eye : row) {
        height = Math.max(height, scale(eye, window, mm).rows());
      }
      high += height + CAPTION_ROWS;
      most = Math.max(most, row.size());
    }
    int wide = GAP_COLUMNS * (most - 1);
    for (int i = 0; i < most; i++) {
      wide += width(rows, window, i, mm);
    }
    return high <= area.rows() && wide <= area.columns();
  }

  /** Columns of the widest view in one column of the grid. */
  private static int width(List<List<Eye>> rows, BoxMm window, int index, int mm) {
    int width = 0;
    for (List<Eye> row : rows) {
      if (index < row.size()) {
        width = Math.max(width, scale(row.get(index), window, mm).columns());
      }
    }
    return width;
  }

  private static Scale scale(Eye eye, BoxMm window, int mm) {
    int across = eye.maxAcrossMm(window) - eye.minAcrossMm(window);
    int up = eye.maxUpMm(window) - eye.minUpMm(window);
    return new Scale(
        eye.minAcrossMm(window),
        eye.maxUpMm(window),
        mm,
        (across + mm - 1) / mm + 1,
        (up + 2 * mm - 1) / (2 * mm) + 1);
  }
}
