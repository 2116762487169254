package kitstow.tui.keys;

import java.util.List;
import java.util.Set;

/**
 * One row of the key map.
 *
 * @param action what it does
 * @param keys keys that do it, the usual one first
 * @param label a word or two for the line of keys
 * @param help a sentence for the page of keys
 * @param places where it holds
 */
public record Binding(
    Action action, List<KeyPress> keys, String label, String help, Set<Place> places) {
  /** Copies its collections. */
  public Binding {
    keys = List.copyOf(keys);
    places = Set.copyOf(places);
  }

  /** The keys as they are written on a keyboard. */
  public String shownKeys() {
    return String.join(" ", keys.stream().map(KeyPress::shown).toList());
  }
}
