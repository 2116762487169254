package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.KeepClear;

/** The regions before an item's faces that must stay free. */
public final class KeptRoom {
  private KeptRoom() {}

  /** The region above an item. */
  public static BoxMm above(BoxMm item, int clearMm) {
    return item.withHeights(item.maxZMm(), item.maxZMm() + clearMm);
  }

  /**
   * The regions of which one must be free: one above for {@code TOP}, the two beyond the ends
   * otherwise.
   */
  public static List<BoxMm> alternatives(BoxMm item, Turn turn, KeepClear keep) {
    List<BoxMm> regions = new ArrayList<>();
    int clear = keep.clearMm();
    switch (axisOf(turn, keep.face())) {
      case 'x' -> {
        regions.add(
            new BoxMm(
                item.minXMm() - clear,
                item.minYMm(),
                item.minZMm(),
                item.minXMm(),
                item.maxYMm(),
                item.maxZMm()));
        regions.add(
            new BoxMm(
                item.maxXMm(),
                item.minYMm(),
                item.minZMm(),
                item.maxXMm() + clear,
                item.maxYMm(),
                item.maxZMm()));
      }
      case 'y' -> {
        regions.add(
            new BoxMm(
                item.minXMm(),
                item.minYMm() - clear,
                item.minZMm(),
                item.maxXMm(),
                item.minYMm(),
                item.maxZMm()));
        regions.add(
            new BoxMm(
                item.minXMm(),
                item.maxYMm(),
                item.minZMm(),
                item.maxXMm(),
                item.maxYMm() + clear,
                item.maxZMm()));
      }
      default -> {
        regions.add(above(item, clear));
        if (keep.face() != KeepClear.Face.TOP) {
          regions.add(item.withHeights(item.minZMm() - clear, item.minZMm()));
        }
      }
    }
    return regions;
  }

  /** The axis along which a face looks: x, y or z. */
  private static char axisOf(Turn turn, KeepClear.Face face) {
    char dimension =
        switch (face) {
          case TOP -> ' ';
          case LENGTH_END -> 'L';
          case WIDTH_END -> 'W';
        };
    int at = turn.name().indexOf(dimension);
    return at < 0 ? 'z' : "xyz".charAt(at);
  }
}
