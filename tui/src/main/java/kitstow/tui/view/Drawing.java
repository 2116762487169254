package kitstow.tui.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Blocks drawn to scale: what is nearer covers what is behind it, and then every block gets its key
 * at a place inside it, so that nothing that is there goes unnamed.
 */
final class Drawing {
  /** Worth that no distance within a drawing outweighs. */
  private static final int STEP = 1_000;

  /** Where a key was put. */
  record Spot(int column, int row) {}

  private final Scale scale;
  private final Canvas canvas;
  private final Map<String, Spot> spots = new LinkedHashMap<>();
  private final List<Block> blocks = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();

  /** A sign at a point, over all lines. */
  private record Mark(int column, int row, char sign) {}

  Drawing(Scale scale) {
    this.scale = scale;
    this.canvas = new Canvas(scale.columns(), scale.rows());
  }

  Scale scale() {
    return scale;
  }

  Canvas canvas() {
    return canvas;
  }

  /** Marks a point, whatever is drawn there. */
  void mark(double xMm, double upMm, char sign) {
    marks.add(new Mark(scale.column(xMm), scale.row(upMm), sign));
  }

  /** Draws blocks over what is there, then marks, then keys. */
  void draw(List<Block> all) {
    List<Block> farFirst = new ArrayList<>(all);
    farFirst.sort(
        Comparator.comparing(Block::solid).thenComparing(Comparator.comparingInt(Block::near)));
    for (Block block : farFirst) {
      blocks.add(block);
      if (block.solid()) {
        canvas.fill(left(block), top(block), right(block), bottom(block), blocks.size());
      }
      canvas.rectangle(left(block), top(block), right(block), bottom(block));
    }
    marks.forEach(mark -> canvas.sign(mark.column(), mark.row(), mark.sign()));
    for (int i = blocks.size() - 1; i >= 0; i--) {
      Block block = blocks.get(i);
      if (!block.key().isEmpty()) {
        name(block, i + 1);
      }
    }
  }

  private int left(Block block) {
    return scale.column(block.minXMm());
  }

  private int right(Block block) {
    return scale.column(block.maxXMm());
  }

  private int top(Block block) {
    return scale.row(block.highMm());
  }

  private int bottom(Block block) {
    return scale.row(block.lowMm());
  }

  /** Puts a key where it reads best: holders at a corner, the rest in the middle. */
  private void name(Block block, int owner) {
    Spot best = null;
    int bestWorth = 0;
    int length = block.key().length();
    int last = Math.max(left(block), right(block) - length + 1);
    for (int row = top(block); row <= bottom(block); row++) {
      for (int column = left(block); column <= last; column++) {
        if (canvas.free(column, row, length)) {
          int worth =
              block.solid()
                  ? worthOfGear(block, owner, column, row)
                  : worthOfHolder(block, column, row);
          if (worth > bestWorth) {
            bestWorth = worth;
            best = new Spot(column, row);
          }
        }
      }
    }
    if (best != null) {
      canvas.text(best.column(), best.row(), block.key());
      spots.put(block.key(), best);
    }
  }

  /** Best where nothing of it is hidden and no line runs, then nearest to its middle. */
  private int worthOfGear(Block block, int owner, int column, int row) {
    int length = block.key().length();
    boolean blank = canvas.blank(column, row, length);
    boolean own = canvas.owned(column, row, length, owner);
    int middleColumn = left(block) + right(block) - length + 1;
    int middleRow = top(block) + bottom(block);
    int away = Math.abs(2 * column - middleColumn) + 2 * Math.abs(2 * row - middleRow);
    return (blank && own ? 2 * STEP : blank ? STEP : 0) + STEP - Math.min(away, STEP - 1);
  }

  /** Best on the upper edge near the front corner. */
  private int worthOfHolder(Block block, int column, int row) {
    boolean edge = row == top(block) && column > left(block);
    int away = column - left(block) + 2 * (row - top(block));
    return (edge ? STEP : 0) + STEP - Math.min(away, STEP - 1);
  }

  /** Where each key stands. */
  Map<String, Spot> spots() {
    return spots;
  }

  List<Block> blocks() {
    return blocks;
  }
}
