package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.PlacedItem;

/** Titles of items in a sentence. */
final class Names {
  private static final int MOST = 3;

  private Names() {}

  /** The first titles, and how many more there are. */
  static String of(List<PlacedItem> items) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < items.size() && i < MOST; i++) {
      text.append(i == 0 ? "" : ", ").append(items.get(i).item().title());
    }
    if (items.size() > MOST) {
      text.append(" and ").append(items.size() - MOST).append(" more");
    }
    return text.toString();
  }
}
