package kitstow.tui.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.tui.app.AppState;
import kitstow.tui.app.Sheet;
import kitstow.tui.app.Work;
import kitstow.tui.keys.Action;
import kitstow.tui.keys.Binding;
import kitstow.tui.keys.KeyMap;
import kitstow.tui.keys.Target;
import kitstow.tui.view.HomeText;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;

/** The lower rows: what has just happened, and the keys that matter here. */
final class FootView {
  private static final Set<Action> ALWAYS = EnumSet.of(Action.BACK, Action.HELP, Action.QUIT);

  /** What pages of text are there to do. */
  private static final Map<Sheet, Set<Action>> OWN =
      Map.of(
          Sheet.FINDINGS, EnumSet.of(Action.MEND, Action.LEVER),
          Sheet.COMPARE, EnumSet.of(Action.KEEP));

  private FootView() {}

  static void draw(Frame frame, Area area, AppState state) {
    String note = state.note().isEmpty() ? homeSoFar(state) : state.note();
    frame.text(area.top(1), 1, 0, note, Ink.STRONG);
    Area keys = area.belowTop(1);
    frame.paint(keys, Ink.BAR);
    int end = right(frame, keys, state);
    int x = 1;
    for (Binding binding : ownFirst(state)) {
      if (binding.label().isEmpty() || ALWAYS.contains(binding.action())) {
        continue;
      }
      if (x + text(binding).length() + 1 > end) {
        break;
      }
      x += key(frame, keys, x, binding) + 2;
    }
  }

  /** The keys of the place, those first that the page is there for, and to save what is not. */
  private static List<Binding> ownFirst(AppState state) {
    Set<Action> own = EnumSet.noneOf(Action.class);
    state
        .work()
        .ifPresent(
            work -> {
              own.addAll(OWN.getOrDefault(work.looking().sheet(), Set.of()));
              if (work.unsaved()) {
                own.add(Action.SAVE);
              }
            });
    List<Binding> keys = new ArrayList<>(KeyMap.in(state.place()));
    keys.sort(Comparator.comparing(binding -> !own.contains(binding.action())));
    return keys;
  }

  /** What a search still leaves home. */
  private static String homeSoFar(AppState state) {
    Optional<Work> searching = state.work().filter(work -> work.searching().isPresent());
    return searching
        .filter(work -> !work.loading().home().isEmpty())
        .map(work -> "At home so far: " + HomeText.inWords(work.loading()))
        .orElse("");
  }

  /** The keys that are told on every page; returns the column where they begin. */
  private static int right(Frame frame, Area keys, AppState state) {
    int x = keys.columns() - 1;
    for (Binding binding : KeyMap.in(state.place())) {
      if (ALWAYS.contains(binding.action())) {
        x -= text(binding).length() + 2;
      }
    }
    int begin = x;
    for (Binding binding : KeyMap.in(state.place())) {
      if (ALWAYS.contains(binding.action())) {
        x += 2 + key(frame, keys, x + 2, binding);
      }
    }
    return begin;
  }

  private static int key(Frame frame, Area keys, int x, Binding binding) {
    int taken = frame.text(keys, x, 0, text(binding), Ink.BAR);
    frame.target(keys.rightOf(x).left(taken), new Target.Press(binding.keys().get(0)));
    return taken;
  }

  private static String text(Binding binding) {
    return binding.keys().get(0).shown() + " " + binding.label();
  }
}
