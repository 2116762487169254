package kitstow.tui.view;

import kitstow.planner.model.Ute;

/** Axle lines, their names below a drawing, and the sign of the centre of mass. */
final class AxleMarks {
  private AxleMarks() {}

  /** The sign of the centre of mass. */
  static char centre(Page page) {
    return page.ascii() ? '@' : '⊕';
  }

  /** Dotted lines at the axles from top to bottom. */
  static void lines(Ute ute, Drawing drawing, Page page) {
    for (int row = 0; row < drawing.scale().rows(); row++) {
      for (int xMm : new int[] {0, ute.wheelbaseMm()}) {
        drawing.canvas().sign(drawing.scale().column(xMm), row, page.ascii() ? ':' : '┊');
      }
    }
  }

  /** A line with the names of the axles below their lines. */
  static String captions(Ute ute, Scale scale) {
    StringBuilder line = new StringBuilder(" ".repeat(scale.columns()));
    caption("rear axle", ute.wheelbaseMm(), scale, line);
    caption("front axle", 0, scale, line);
    return line.toString().stripTrailing();
  }

  private static void caption(String name, int xMm, Scale scale, StringBuilder line) {
    int column = scale.column(xMm);
    if (column >= 0 && column < scale.columns()) {
      String text = "^ " + name;
      int start = column + text.length() <= line.length() ? column : column - text.length() + 1;
      String shown = start == column ? text : name + " ^";
      line.replace(Math.max(0, start), Math.max(0, start) + shown.length(), shown);
    }
  }
}
