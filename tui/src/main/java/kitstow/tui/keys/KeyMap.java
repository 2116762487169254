package kitstow.tui.keys;

import static kitstow.tui.keys.Place.CARRY;
import static kitstow.tui.keys.Place.EDITING;
import static kitstow.tui.keys.Place.GEAR;
import static kitstow.tui.keys.Place.LOAD;
import static kitstow.tui.keys.Place.PACKING;
import static kitstow.tui.keys.Place.ROWS;
import static kitstow.tui.keys.Place.SHELF;
import static kitstow.tui.keys.Place.TEXT;
import static kitstow.tui.keys.Place.TRIP;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every key there is: what it does, where, and what is said of it. */
public final class KeyMap {
  private static final Set<Place> EVERYWHERE =
      Set.of(SHELF, LOAD, CARRY, ROWS, PACKING, GEAR, EDITING, TRIP, TEXT);
  private static final Set<Place> SHEETS = Set.of(LOAD, ROWS, PACKING, GEAR, EDITING, TRIP, TEXT);
  private static final Set<Place> LISTS = Set.of(SHELF, ROWS, PACKING, GEAR, EDITING, TRIP, TEXT);
  private static final Set<Place> WITH_STATES =
      Set.of(LOAD, CARRY, ROWS, PACKING, GEAR, EDITING, TRIP, TEXT);
  private static final Set<Place> HANDLED = Set.of(LOAD, ROWS, PACKING, GEAR, TEXT);
  private static final Set<Place> EDITORS = Set.of(EDITING, TRIP);
  private static final Set<Place> PICTURES = Set.of(LOAD, CARRY);
  private static final Set<Place> UNCARRIED =
      Set.of(SHELF, LOAD, ROWS, PACKING, GEAR, EDITING, TRIP, TEXT);

  private static final List<Binding> ALL = all();

  private KeyMap() {}

  private static List<Binding> all() {
    List<Binding> all = new ArrayList<>();
    add(all, Action.TAKE, "open", "open what is marked", Set.of(SHELF), of(KeyName.ENTER));
    add(all, Action.BEGIN, "new", "begin a scenario from the catalogue", Set.of(SHELF), sign('n'));
    add(all, Action.TICK, "tick", "tick it off, or take the tick away", Set.of(PACKING), sign(' '));
    add(
        all,
        Action.EDIT,
        "change",
        "change mass, size, number, need",
        Set.of(GEAR),
        of(KeyName.ENTER));
    add(all, Action.ADD, "new", "add gear from the catalogue", Set.of(GEAR), sign('n'));
    add(
        all,
        Action.IMPORT,
        "table",
        "read gear from a table of comma-separated values",
        Set.of(GEAR),
        sign('i'));
    add(
        all,
        Action.REMOVE,
        "remove",
        "remove it from the list",
        Set.of(GEAR),
        sign('d'),
        of(KeyName.DELETE));
    add(all, Action.EDIT, "change", "change what is marked", EDITORS, of(KeyName.ENTER));
    add(all, Action.ADD, "new", "add one of what is marked", EDITORS, sign('n'));
    add(
        all,
        Action.REMOVE,
        "remove",
        "remove what is marked",
        EDITORS,
        sign('d'),
        of(KeyName.DELETE));
    add(
        all,
        Action.EARLIER,
        "earlier",
        "drive the marked leg earlier",
        Set.of(TRIP),
        sign('<'),
        KeyPress.shifted(KeyName.UP));
    add(
        all,
        Action.LATER,
        "later",
        "drive the marked leg later",
        Set.of(TRIP),
        sign('>'),
        KeyPress.shifted(KeyName.DOWN));
    add(all, Action.DROP, "put down", "put it down here", Set.of(CARRY), of(KeyName.ENTER));
    add(
        all,
        Action.SEARCH,
        "search",
        "search for a better plan for 15 s; stop the search",
        SHEETS,
        sign('s'));
    add(all, Action.SEARCH_LONGER, "", "search from nothing for a minute", SHEETS, sign('S'));
    add(
        all,
        Action.FIND,
        "find",
        "find a thing by a part of its name",
        SHEETS,
        sign('/'),
        KeyPress.control('f'));
    add(all, Action.CARRY, "carry", "carry the chosen thing", HANDLED, sign('m'));
    add(
        all,
        Action.NEXT_SPACE,
        "next space",
        "into the next space that takes it",
        Set.of(CARRY),
        of(KeyName.TAB));
    add(
        all,
        Action.PREVIOUS_SPACE,
        "",
        "into the space before that takes it",
        Set.of(CARRY),
        of(KeyName.BACK_TAB));
    add(all, Action.TURN, "turn", "turn it", HANDLED, sign('t'));
    add(all, Action.TURN, "turn", "turn it", Set.of(CARRY), sign('t'));
    add(all, Action.PIN, "pin", "pin it where it is, or take the pin off", HANDLED, sign('p'));
    add(all, Action.HOME, "home", "send it home", HANDLED, sign('h'));
    add(all, Action.HOME, "home", "send it home", Set.of(CARRY), sign('h'));
    add(all, Action.BRING, "bring", "bring it aboard, where it is best", HANDLED, sign('b'));
    add(all, Action.UNDO, "undo", "undo", SHEETS, sign('u'), KeyPress.control('z'));
    add(all, Action.REDO, "", "do again", SHEETS, sign('r'), KeyPress.control('y'));
    add(all, Action.NEXT_THING, "next", "the next thing", Set.of(LOAD), of(KeyName.TAB));
    add(all, Action.PREVIOUS_THING, "", "the thing before", Set.of(LOAD), of(KeyName.BACK_TAB));
    add(all, Action.UP, "", "the neighbour above, the row above", UNCARRIED, of(KeyName.UP));
    add(all, Action.DOWN, "", "the neighbour or row below", UNCARRIED, of(KeyName.DOWN));
    add(all, Action.LEFT, "", "the neighbour to the left", Set.of(LOAD), of(KeyName.LEFT));
    add(all, Action.RIGHT, "", "the neighbour to the right", Set.of(LOAD), of(KeyName.RIGHT));
    add(all, Action.LEFT, "push", "push it left in this view", Set.of(CARRY), of(KeyName.LEFT));
    add(all, Action.RIGHT, "", "push it right", Set.of(CARRY), of(KeyName.RIGHT));
    add(all, Action.UP, "", "push or lift it up", Set.of(CARRY), of(KeyName.UP));
    add(all, Action.DOWN, "", "push or lower it down", Set.of(CARRY), of(KeyName.DOWN));
    add(all, Action.PAGE_UP, "", "push it away from you", Set.of(CARRY), of(KeyName.PAGE_UP));
    add(all, Action.PAGE_DOWN, "", "pull it to you", Set.of(CARRY), of(KeyName.PAGE_DOWN));
    pan(all, Set.of(CARRY), "10 mm only");
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
    pan(all, Set.of(LOAD), "move the picture");
    add(all, Action.NEXT_STATE, "moment", "the next moment of the trip", WITH_STATES, sign('.'));
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
    add(
        all,
        Action.MEND,
        "mend",
        "carry out what would mend the first thing that is broken",
        Set.of(TEXT),
        sign('a'));
    add(
        all,
        Action.LEVER,
        "lever",
        "carry out the first lever on the tightest limit",
        Set.of(TEXT),
        sign('l'));
    add(all, Action.SHEET_COMPARE, "", "plans side by side", SHEETS, sign('7'));
    add(all, Action.SHEET_GEAR, "", "the gear list", SHEETS, sign('8'));
    add(all, Action.SHEET_TRIP, "", "people, legs, trailers, what is used", SHEETS, sign('9'));
    add(
        all,
        Action.SHEET_UTE,
        "",
        "tray and canopy, modules, tanks, accessories, weighing",
        SHEETS,
        sign('0'));
    add(all, Action.KEEP, "keep", "keep this plan as a column of page 7", SHEETS, sign('k'));
    add(all, Action.FORGET_KEPT, "", "forget the columns that were kept", SHEETS, sign('K'));
    add(all, Action.NEXT_SHEET, "", "the next page", SHEETS, sign(']'));
    add(all, Action.PREVIOUS_SHEET, "", "the page before", SHEETS, sign('['));
    add(
        all,
        Action.SAVE,
        "save",
        "save the plan, and the scenario if it has changed",
        SHEETS,
        sign('W'),
        KeyPress.control('s'));
    add(all, Action.BACK, "put back", "put it back", Set.of(CARRY), of(KeyName.ESCAPE));
    add(
        all,
        Action.BACK,
        "back",
        "back: to the load, then to the list",
        SHEETS,
        of(KeyName.ESCAPE));
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

  private static void pan(List<Binding> all, Set<Place> places, String help) {
    add(all, Action.PAN_LEFT, "", help, places, KeyPress.shifted(KeyName.LEFT));
    add(all, Action.PAN_RIGHT, "", help, places, KeyPress.shifted(KeyName.RIGHT));
    add(all, Action.PAN_UP, "", help, places, KeyPress.shifted(KeyName.UP));
    add(all, Action.PAN_DOWN, "", help, places, KeyPress.shifted(KeyName.DOWN));
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

  /** The first row of a key, wherever it holds. */
  public static Optional<Binding> anywhere(KeyPress key) {
    return ALL.stream().filter(binding -> binding.keys().contains(key)).findFirst();
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
