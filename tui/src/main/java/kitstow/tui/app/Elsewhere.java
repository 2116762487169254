package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import kitstow.tui.keys.Binding;
import kitstow.tui.keys.KeyMap;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.keys.Place;

/** What is said of a key that does nothing where it was pressed. */
final class Elsewhere {
  private Elsewhere() {}

  static String told(KeyPress key) {
    return KeyMap.anywhere(key)
        .map(binding -> key.shown() + " " + where(binding) + ": " + binding.help() + ".")
        .orElse(key.shown() + " does nothing; ? tells all keys.");
  }

  private static String where(Binding binding) {
    List<String> pages = new ArrayList<>();
    for (Sheet sheet : Sheet.values()) {
      if (binding.places().contains(sheet.place())) {
        pages.add(sheet.number() + " " + sheet.title());
      }
    }
    if (!pages.isEmpty()) {
      return "is for " + String.join(", ", pages);
    }
    return binding.places().contains(Place.CARRY)
        ? "is for what is carried"
        : "is for the list of scenarios";
  }
}
