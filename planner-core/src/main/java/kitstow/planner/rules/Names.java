package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;

/** Units of gear and their spaces in a sentence. */
final class Names {
  private static final int MOST = 3;

  private Names() {}

  /** A unit: its title, with its number where there are several. */
  static String unit(PlacedItem item) {
    return item.item().title() + (item.item().quantity() > 1 ? " " + item.unit() : "");
  }

  /** A space, with the module it is in. */
  static String space(Loading loading, Space space) {
    FittedModule host = loading.rig().modules().get(space.hostId());
    return host == null ? space.title() : host.module().title() + ": " + space.title();
  }

  /** A unit and where it is. */
  static String placed(Loading loading, PlacedItem item) {
    return unit(item) + " (in " + space(loading, item.space()) + ")";
  }

  /** Two units and where they are; a space they share is named once. */
  static String both(Loading loading, PlacedItem a, PlacedItem b) {
    return a.space().id().equals(b.space().id())
        ? unit(a) + " and " + unit(b) + " (both in " + space(loading, a.space()) + ")"
        : placed(loading, a) + " and " + placed(loading, b);
  }

  /** The first units, and how many more there are. */
  static String of(List<PlacedItem> items) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < items.size() && i < MOST; i++) {
      text.append(i == 0 ? "" : ", ").append(unit(items.get(i)));
    }
    if (items.size() > MOST) {
      text.append(" and ").append(items.size() - MOST).append(" more");
    }
    return text.toString();
  }
}
