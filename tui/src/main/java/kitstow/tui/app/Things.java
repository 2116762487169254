package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.tui.view.Eye;
import kitstow.tui.view.Keys;

/** Units of gear: in a row, by name, and by where they stand. */
public final class Things {
  private Things() {}

  /** Every unit: what is aboard in the order of its numbers, then what is at home. */
  public static List<String> keys(Loading loading) {
    List<String> keys = new ArrayList<>(Keys.of(loading).items().keySet());
    keys.addAll(loading.home());
    return keys;
  }

  /** The item of a unit. */
  public static Optional<Item> item(Loading loading, String key) {
    for (Item item : loading.scenario().items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        if (item.keyOf(unit).equals(key)) {
          return Optional.of(item);
        }
      }
    }
    return Optional.empty();
  }

  /** Unit number in a body key, 1 where the item has one unit. */
  public static int unit(Item item, String key) {
    for (int unit = 1; unit <= item.quantity(); unit++) {
      if (item.keyOf(unit).equals(key)) {
        return unit;
      }
    }
    return 1;
  }

  /** Name of a unit. */
  public static String name(Loading loading, String key) {
    return item(loading, key)
        .map(item -> item.title() + (item.quantity() > 1 ? " " + unit(item, key) : ""))
        .orElse(key);
  }

  /** Units whose name holds a text, those in which a word starts with it first. */
  public static List<String> named(Loading loading, String typed) {
    String wanted = typed.toLowerCase(Locale.ROOT).strip();
    List<String> starting = new ArrayList<>();
    List<String> holding = new ArrayList<>();
    for (String key : keys(loading)) {
      String name = " " + name(loading, key).toLowerCase(Locale.ROOT);
      if (!wanted.isEmpty() && name.contains(wanted)) {
        (name.contains(" " + wanted) ? starting : holding).add(key);
      }
    }
    starting.addAll(holding);
    return starting;
  }

  /** The next unit in the row, or the one before. */
  public static String beside(Loading loading, String key, int by) {
    List<String> keys = keys(loading);
    if (keys.isEmpty()) {
      return "";
    }
    int at = keys.indexOf(key);
    return at < 0
        ? keys.get(by > 0 ? 0 : keys.size() - 1)
        : keys.get(Math.floorMod(at + by, keys.size()));
  }

  /** A view in which a unit is seen: the present one if it is, else the first that does. */
  public static Eye seenFrom(Loading loading, String key, Eye now) {
    PlacedItem item = loading.placed().get(key);
    if (item == null || now.sees(item.box(), item.space().zone())) {
      return now;
    }
    for (Eye eye : List.of(Eye.ROOFS, Eye.LEFT, Eye.RIGHT, Eye.ABOVE)) {
      if (eye.sees(item.box(), item.space().zone())) {
        return eye;
      }
    }
    return now;
  }

  /**
   * The nearest unit in a direction of a view.
   *
   * @param across -1 to the left, 1 to the right, else 0
   * @param up 1 up, -1 down, else 0
   */
  public static Optional<String> neighbour(
      Loading loading, String key, Eye eye, int across, int up) {
    PlacedItem from = loading.placed().get(key);
    String nearest = null;
    long least = Long.MAX_VALUE;
    for (PlacedItem item : loading.placed().values()) {
      if (!eye.sees(item.box(), item.space().zone()) || item.key().equals(key)) {
        continue;
      }
      long distance = from == null ? 0L : distance(eye, from.box(), item.box(), across, up);
      if (distance >= 0L && distance < least) {
        least = distance;
        nearest = item.key();
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** How far a box is in a direction, what lies aside counted threefold; -1 if it is not there. */
  private static long distance(Eye eye, BoxMm from, BoxMm to, int across, int up) {
    long dx =
        middle(eye.minAcrossMm(to), eye.maxAcrossMm(to))
            - middle(eye.minAcrossMm(from), eye.maxAcrossMm(from));
    long dy =
        middle(eye.minUpMm(to), eye.maxUpMm(to)) - middle(eye.minUpMm(from), eye.maxUpMm(from));
    long along = across * dx + up * dy;
    long aside = Math.abs(across == 0 ? dx : dy);
    return along <= 0L ? -1L : along + 3L * aside;
  }

  private static long middle(int minMm, int maxMm) {
    return (minMm + (long) maxMm) / 2L;
  }
}
