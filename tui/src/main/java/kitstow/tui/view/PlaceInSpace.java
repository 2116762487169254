package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.PlacedItem;

/**
 * Where in its space a thing is, in the words of somebody who stands before it; nothing where it
 * fills the space.
 */
public final class PlaceInSpace {
  private PlaceInSpace() {}

  /** The place of a thing in its space. */
  public static String inWords(PlacedItem item, boolean onOthers) {
    BoxMm space = item.space().box();
    BoxMm box = item.box();
    AccessAxis access = item.space().access();
    boolean slides = !item.space().movesWith().isEmpty();
    String[] along = {"front", "middle", "rear"};
    String[] across = {"left", "middle", "right"};
    if (!slides) {
      switch (access) {
        case LEFT -> across = new String[] {"at the door", "halfway in", "deep in"};
        case RIGHT -> across = new String[] {"deep in", "halfway in", "at the door"};
        case REAR -> along = new String[] {"deep in", "halfway in", "at the door"};
        case FRONT, ABOVE, FACE -> {}
      }
    }
    List<String> words = new ArrayList<>();
    add(words, third(box.minXMm(), box.maxXMm(), space.minXMm(), space.maxXMm()), along);
    add(words, third(box.minYMm(), box.maxYMm(), space.minYMm(), space.maxYMm()), across);
    if (onOthers) {
      words.add("on others");
    }
    return String.join(", ", words);
  }

  private static void add(List<String> words, int third, String[] names) {
    if (third >= 0) {
      words.add(names[third]);
    }
  }

  /** Third of a space in which a thing has its middle; -1 if it takes up most of it. */
  private static int third(int minMm, int maxMm, int fromMm, int toMm) {
    int room = Math.max(1, toMm - fromMm);
    if ((maxMm - minMm) * 3 > room * 2) {
      return -1;
    }
    int doubledMiddle = minMm + maxMm - 2 * fromMm;
    return Math.max(0, Math.min(2, doubledMiddle * 3 / (2 * room)));
  }
}
