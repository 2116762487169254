package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitstow.planner.model.Item;

/** Gear of the catalogue by its name. */
public final class Catalogued {
  private Catalogued() {}

  /** Gear whose name holds what was typed. */
  public static List<Item> found(AppState state, Overlay.Pick pick) {
    String wanted = pick.typed().toLowerCase(Locale.ROOT).strip();
    List<Item> found = new ArrayList<>();
    for (Item item : state.work().map(Work::catalogue).orElse(List.of())) {
      if (item.title().toLowerCase(Locale.ROOT).contains(wanted)) {
        found.add(item);
      }
    }
    return found;
  }
}
