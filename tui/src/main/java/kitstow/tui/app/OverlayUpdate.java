package kitstow.tui.app;

import java.util.List;
import kitstow.tui.keys.KeyName;
import kitstow.tui.keys.KeyPress;

/** What keys do while something lies over the page. */
final class OverlayUpdate {
  private static final int SCREENFUL = 10;

  private OverlayUpdate() {}

  static Step keys(AppState state, Overlay.Keys keys, KeyPress key) {
    int by =
        switch (key.key()) {
          case UP -> -1;
          case DOWN -> 1;
          case PAGE_UP -> -SCREENFUL;
          case PAGE_DOWN -> SCREENFUL;
          default -> 0;
        };
    return Step.to(
        state.with(by == 0 ? Overlay.NONE : new Overlay.Keys(Math.max(0, keys.row() + by))));
  }

  static Step ask(AppState state, Overlay.Ask ask, KeyPress key) {
    boolean yes = key.key() == KeyName.ENTER || key.equals(KeyPress.sign('y'));
    boolean no = key.equals(KeyPress.sign('n'));
    if (key.key() == KeyName.ESCAPE && ask.about().isEmpty()) {
      return Step.to(state.with(Overlay.NONE));
    }
    return yes || no
        ? LeaveUpdate.decided(state.with(Overlay.NONE), yes ? ask.ifYes() : ask.ifNo(), ask.about())
        : Step.to(state);
  }

  static Step find(AppState state, Overlay.Find find, KeyPress key) {
    if (state.work().isEmpty()) {
      return Step.to(state.with(Overlay.NONE));
    }
    Work work = state.work().get();
    String typed = find.typed();
    return switch (key.key()) {
      case ESCAPE -> Step.to(state.with(work.with(find.before())).with(Overlay.NONE));
      case ENTER -> Step.to(state.with(Overlay.NONE));
      case DOWN, TAB -> next(state, work, find, 1);
      case UP, BACK_TAB -> next(state, work, find, -1);
      case BACKSPACE ->
          found(
              state,
              work,
              new Overlay.Find(
                  typed.isEmpty()
                      ? typed
                      : typed.substring(0, typed.offsetByCodePoints(typed.length(), -1)),
                  find.before()));
      case SIGN ->
          found(
              state, work, new Overlay.Find(typed + Character.toString(key.sign()), find.before()));
      default -> Step.to(state);
    };
  }

  private static Step found(AppState state, Work work, Overlay.Find find) {
    List<String> named = Things.named(work.loading(), find.typed());
    AppState typed = state.with(find);
    return named.isEmpty() ? Step.to(typed) : ActionUpdate.chosen(typed, work, named.get(0));
  }

  private static Step next(AppState state, Work work, Overlay.Find find, int by) {
    List<String> named = Things.named(work.loading(), find.typed());
    if (named.isEmpty()) {
      return Step.to(state);
    }
    int at = named.indexOf(work.looking().chosen());
    return ActionUpdate.chosen(state, work, named.get(Math.floorMod(at + by, named.size())));
  }
}
