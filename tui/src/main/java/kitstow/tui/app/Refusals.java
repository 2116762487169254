package kitstow.tui.app;

import java.util.Optional;
import kitstow.planner.model.Item;
import kitstow.tui.keys.Action;
import kitstow.tui.view.CompareText;

/** Why an action cannot be done just now. */
public final class Refusals {
  private static final String JUDGING = "the plan is still being judged";

  private Refusals() {}

  /** The reason; none if it can be done. */
  public static Optional<String> why(AppState state, Action action) {
    return state.work().flatMap(work -> why(state, work, action));
  }

  private static Optional<String> why(AppState state, Work work, Action action) {
    boolean searching = work.searching().isPresent();
    return switch (action) {
      case CARRY -> anyOf(busy(searching), unchosen(work), pinned(work));
      case TURN, HOME -> anyOf(busy(searching), unchosen(work), athome(work), pinned(work));
      case PIN -> anyOf(busy(searching), unchosen(work), unpinnable(work));
      case BRING -> anyOf(busy(searching), unchosen(work), aboard(work));
      case UNDO ->
          anyOf(busy(searching), when(work.past().done().isEmpty(), "there is nothing to undo"));
      case REDO ->
          anyOf(
              busy(searching),
              when(work.past().undone().isEmpty(), "there is nothing to do again"));
      case SAVE -> anyOf(busy(searching), when(!work.unsaved(), "the files hold all this already"));
      case SEARCH_LONGER -> busy(searching);
      case IMPORT -> busy(searching);
      case EDIT, ADD, REMOVE, EARLIER, LATER ->
          anyOf(
              busy(searching),
              work.looking().sheet() == Sheet.GEAR
                  ? gear(work, action)
                  : EditUpdate.whyNot(work, action));
      case LEVER -> anyOf(busy(searching), Levers.whyNot(work));
      case MEND -> anyOf(busy(searching), Mends.whyNot(work));
      case KEEP ->
          anyOf(
              busy(searching),
              when(!work.judged(), JUDGING),
              when(
                  state.kept().size() >= CompareText.MOST_COLUMNS - 1,
                  "no more columns fit; K forgets those that are kept"));
      case FORGET_KEPT -> when(state.kept().isEmpty(), "no column is kept");
      case NEXT_STATE, PREVIOUS_STATE -> when(work.states().isEmpty(), JUDGING);
      default -> Optional.empty();
    };
  }

  private static Optional<String> gear(Work work, Action action) {
    return switch (action) {
      case EDIT -> when(GearUpdate.marked(work).isEmpty(), "the list is empty; n adds to it");
      case ADD -> when(work.catalogue().gear().isEmpty(), "there is no catalogue");
      case REMOVE -> GearUpdate.needed(work);
      default -> Optional.empty();
    };
  }

  @SafeVarargs
  private static Optional<String> anyOf(Optional<String>... reasons) {
    for (Optional<String> reason : reasons) {
      if (reason.isPresent()) {
        return reason;
      }
    }
    return Optional.empty();
  }

  private static Optional<String> when(boolean holds, String reason) {
    return holds ? Optional.of(reason) : Optional.empty();
  }

  private static Optional<String> busy(boolean searching) {
    return when(searching, "a search is running; s stops it");
  }

  private static Optional<Item> chosen(Work work) {
    return Things.item(work.loading(), work.looking().chosen());
  }

  private static Optional<String> unchosen(Work work) {
    return when(chosen(work).isEmpty(), "nothing is chosen; an arrow, Tab or / chooses");
  }

  private static Optional<String> pinned(Work work) {
    return when(
        chosen(work).flatMap(Item::pin).isPresent() && isAboard(work),
        "it is pinned; p takes the pin off");
  }

  private static Optional<String> unpinnable(Work work) {
    return when(
        !isAboard(work) && chosen(work).flatMap(Item::pin).isEmpty(),
        "it is at home; only what is aboard can be pinned");
  }

  private static Optional<String> athome(Work work) {
    return when(!isAboard(work), "it is at home; b brings it aboard");
  }

  private static Optional<String> aboard(Work work) {
    return when(isAboard(work), "it is aboard already; m carries it");
  }

  private static boolean isAboard(Work work) {
    return work.loading().placed().containsKey(work.looking().chosen());
  }
}
