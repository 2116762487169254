package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Item;
import kitstow.tui.edit.Gear;
import kitstow.tui.edit.GearEditor;
import kitstow.tui.keys.Action;

/** Editing the gear list: change, add from the catalogue, remove. */
final class GearUpdate {
  private GearUpdate() {}

  /** The item of the marked row. */
  static Optional<Item> marked(Work work) {
    List<Item> items = work.design().scenario().items();
    return items.isEmpty()
        ? Optional.empty()
        : Optional.of(items.get(Math.min(work.looking().row(), items.size() - 1)));
  }

  /** Body key of the first unit of the marked item, or "". */
  static String firstUnit(Work work) {
    return marked(work).map(item -> item.keyOf(1)).orElse("");
  }

  static Step apply(AppState state, Work work, Action action) {
    if (action == Action.ADD) {
      return Step.to(state.with(new Overlay.Pick(Picked.GEAR, "", 0)));
    }
    Item item = marked(work).orElseThrow();
    return action == Action.EDIT
        ? FormUpdate.open(state, new GearEditor(item))
        : FormUpdate.done(state, "remove " + item.title(), Gear.without(work.design(), item));
  }

  /** Why the marked item cannot be removed. */
  static Optional<String> needed(Work work) {
    Optional<Item> item = marked(work);
    return item.isEmpty()
        ? Optional.of("the list is empty; n adds from the catalogue")
        : Gear.needed(work.design().scenario(), item.get());
  }
}
