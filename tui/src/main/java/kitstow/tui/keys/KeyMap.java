package kitstow.tui.keys;

import static kitstow.tui.keys.Place.CARRY;
import static kitstow.tui.keys.Place.LOAD;
import static kitstow.tui.keys.Place.ROWS;
import static kitstow.tui.keys.Place.SHELF;
import static kitstow.tui.keys.Place.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every key there is: what it does, where, and what is said of it. */
public final class KeyMap {
  private static final Set<Place> EVERYWHERE = Set.of(SHELF, LOAD, CARRY, ROWS, TEXT);
  private static final Set<Place> SHEETS = Set.of(LOAD, ROWS, TEXT);
  private static final Set<Place> LISTS = Set.of(SHELF, ROWS, TEXT);
  private static final Set<Place> WITH_STATES = Set.of(LOAD, CARRY, ROWS, TEXT);
  private static final Set<Place> PICTURES = Set.of(LOAD, CARRY);
  private static final Set<Place> PICTURES_ONLY = Set.of(LOAD);

  private static final List<Binding> ALL = all();

  private KeyMap() {}

  private static List<Binding> all() {
    List<Binding> all = new ArrayList<>();
    add(all, Action.TAKE, "open", "open what is marked", Set.of(SHELF), of(KeyName.ENTER));
    add(
        all,
        Action.FIND,
        "find",
        "find a thing by a part of its name",
        SHEETS,
        sign('/'),
        KeyPress.control('f'));
    add(all, Action.NEXT_THING, "next", "the next thing", PICTURES_ONLY, of(KeyName.TAB));
    add(all, Action.PREVIOUS_THING, "", "the thing before", PICTURES_ONLY, of(KeyName.BACK_TAB));
    add(all, Action.UP, "", "up: the neighbour above, the row above", EVERYWHERE, of(KeyName.UP));
    add(all, Action.DOWN, "", "down: the neighbour or row below", EVERYWHERE, of(KeyName.DOWN));
    add(all, Action.LEFT, "", "left: the neighbour to the left", PICTURES, of(KeyName.LEFT));
    add(all, Action.RIGHT, "", "right: the neighbour to the right", PICTURES, of(KeyName.RIGHT));
    add(all, Action.PAGE_UP, "", "a screen up", LISTS, of(KeyName.PAGE_UP));
    add(all, Action.PAGE_DOWN, "", "a screen down", LISTS, of(KeyName.PAGE_DOWN));
    add(
        all,
        Action.NEXT_VIEW,
        "view",
        "the next view: sides, above, roofs, rear",
        PICTURES,
        sign('v'));
    add(all, Action.ZOOM_IN, "nearer", "nearer", PICTURES, sign('+'), sign('='));
    add(all, Action.ZOOM_OUT, "", "farther", PICTURES, sign('-'));
    add(all, Action.PAN_LEFT, "", "move the picture", PICTURES, KeyPress.shifted(KeyName.LEFT));
    add(all, Action.PAN_RIGHT, "", "move the picture", PICTURES, KeyPress.shifted(KeyName.RIGHT));
    add(all, Action.PAN_UP, "", "move the picture", PICTURES, KeyPress.shifted(KeyName.UP));
    add(all, Action.PAN_DOWN, "", "move the picture", PICTURES, KeyPress.shifted(KeyName.DOWN));
    add(all, Action.NEXT_STATE, "state", "the next moment of the trip", WITH_STATES, sign('.'));
    add(all, Action.PREVIOUS_STATE, "", "the moment before", WITH_STATES, sign(','));
    add(
        all,
        Action.WORST_STATE,
        "worst",
        "the moment that decides the answer",
        WITH_STATES,
        sign('w'));
    add(all, Action.SHEET_LOAD, "", "the load in pictures", SHEETS, sign('1'));
    add(all, Action.SHEET_LIMITS, "", "every limit", SHEETS, sign('2'));
    add(all, Action.SHEET_PACK, "", "the pack list", SHEETS, sign('3'));
    add(all, Action.SHEET_HOME, "", "what stays home, and why", SHEETS, sign('4'));
    add(all, Action.SHEET_ROOM, "", "room left in each space", SHEETS, sign('5'));
    add(all, Action.SHEET_FINDINGS, "", "what is broken or in doubt", SHEETS, sign('6'));
    add(all, Action.NEXT_SHEET, "", "the next page", SHEETS, sign(']'));
    add(all, Action.PREVIOUS_SHEET, "", "the page before", SHEETS, sign('['));
    add(all, Action.BACK, "back", "back; from a page to the list", EVERYWHERE, of(KeyName.ESCAPE));
    add(all, Action.HELP, "keys", "all keys", EVERYWHERE, sign('?'), of(KeyName.F1));
    add(
        all,
        Action.QUIT,
        "quit",
        "end the program",
        EVERYWHERE,
        sign('q'),
        KeyPress.control('c'),
        KeyPress.control('q'));
    return List.copyOf(all);
  }

  private static void add(
      List<Binding> all,
      Action action,
      String label,
      String help,
      Set<Place> places,
      KeyPress... keys) {
    all.add(new Binding(action, List.of(keys), label, help, places));
  }

  private static KeyPress sign(int sign) {
    return KeyPress.sign(sign);
  }

  private static KeyPress of(KeyName key) {
    return KeyPress.of(key);
  }

  /** What a key does in a place. */
  public static Optional<Action> action(Place place, KeyPress key) {
    for (Binding binding : ALL) {
      if (binding.places().contains(place) && binding.keys().contains(key)) {
        return Optional.of(binding.action());
      }
    }
    return Optional.empty();
  }

  /** All rows that hold in a place, in the order in which they are told. */
  public static List<Binding> in(Place place) {
    List<Binding> here = new ArrayList<>();
    for (Binding binding : ALL) {
      if (binding.places().contains(place)) {
        here.add(binding);
      }
    }
    return here;
  }
}
