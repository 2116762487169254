package kitstow.tui.widget;

import java.util.List;
import kitstow.planner.statics.Margin;
import kitstow.tui.view.Figures;
import kitstow.tui.view.Page;

/**
 * One limit in a row: name, a bar up to the load with the width by which it may be off, the share
 * used, and what is left. The mark in the bar is the limit, with room beyond it for what is over.
 */
public final class Gauge {
  private static final int SHARE_COLUMNS = 6;
  private static final int LEFT_COLUMNS = 9;
  private static final int LEAST_BAR = 4;
  private static final int NARROW_BAR = 5;
  private static final int NAME_SHARE = 3;
  private static final int MOST_NAME = 44;

  /** Below this width the share is left to the bar. */
  private static final int NARROW = 40;

  /** The bar shows loads up to this share of the limit. */
  private static final double MOST_RATIO = 1.2;

  private Gauge() {}

  /**
   * Draws a gauge at the top of an area and returns the rows it takes: one, and more where the name
   * is long and there is room to go on below.
   */
  public static int draw(Frame frame, Area area, String name, Margin margin) {
    boolean narrow = area.columns() < NARROW;
    int share = narrow ? 0 : SHARE_COLUMNS;
    int rest = area.columns() - share - LEFT_COLUMNS - 1;
    int nameColumns =
        narrow ? rest - NARROW_BAR - 1 : Math.max(10, Math.min(MOST_NAME, rest * 2 / NAME_SHARE));
    int barColumns = rest - nameColumns - 1;
    Ink ink = ink(margin.verdict());
    List<String> lines = area.rows() > 1 ? Page.wrapped(name, nameColumns) : List.of(name);
    for (int y = 0; y < lines.size(); y++) {
      frame.text(area.left(nameColumns), y > 0 ? 1 : 0, y, lines.get(y), Ink.PLAIN);
    }
    int bar = nameColumns + 1;
    if (barColumns >= LEAST_BAR) {
      bar(frame, area.rightOf(bar).left(barColumns), margin);
    }
    Area figures = area.rightOf(area.columns() - share - LEFT_COLUMNS);
    if (!narrow) {
      frame.textRight(
          figures.left(SHARE_COLUMNS), 0, Figures.usedPercent(margin.usedRatio()), Ink.PLAIN);
    }
    frame.textRight(figures, 0, left(margin), ink);
    return Math.min(area.rows(), lines.size());
  }

  private static void bar(Frame frame, Area area, Margin margin) {
    int columns = area.columns();
    int limit = (int) Math.floor((columns - 1) / MOST_RATIO);
    double ratio = margin.limitKg() > 0.0 ? margin.loadKg() / margin.limitKg() : 2.0;
    double band = margin.limitKg() > 0.0 ? margin.rssKg() / margin.limitKg() : 0.0;
    Ink ink =
        switch (margin.verdict()) {
          case WITHIN -> Ink.BAR_WITHIN;
          case ON_PAPER_ONLY -> Ink.BAR_DOUBT;
          case OVER -> Ink.BAR_BROKEN;
        };
    for (int x = 0; x < columns; x++) {
      double at = (x + 0.5) / (limit + 0.5);
      if (x == limit) {
        frame.sign(area, x, 0, at <= ratio ? '┃' : '│', '|', Ink.STRONG);
      } else if (at <= ratio) {
        frame.sign(area, x, 0, '█', '#', ink);
      } else if (at <= ratio + band) {
        frame.sign(area, x, 0, '▒', '=', ink);
      } else {
        frame.sign(area, x, 0, x < limit ? '·' : ' ', x < limit ? '.' : ' ', Ink.PLAIN);
      }
    }
  }

  /** What is left, or by how much it is over. */
  private static String left(Margin margin) {
    return switch (margin.verdict()) {
      case WITHIN -> Figures.marginKg(margin.marginKg());
      case ON_PAPER_ONLY -> Figures.marginKg(margin.marginKg()) + "?";
      case OVER -> "+" + Figures.loadKg(-margin.marginKg()) + "!";
    };
  }

  /** The ink of an answer. */
  public static Ink ink(Margin.Verdict verdict) {
    return switch (verdict) {
      case WITHIN -> Ink.PLAIN;
      case ON_PAPER_ONLY -> Ink.DOUBT;
      case OVER -> Ink.BROKEN;
    };
  }
}
