package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.ModuleChoice;
import kitstow.tui.edit.AccessoryEditor;
import kitstow.tui.edit.Design;
import kitstow.tui.edit.Form;
import kitstow.tui.edit.Gear;
import kitstow.tui.edit.ModuleEditor;
import kitstow.tui.edit.Modules;
import kitstow.tui.keys.KeyPress;

/** Picking something from the catalogue. */
final class PickUpdate {
  private static final int SCREENFUL = 10;

  private PickUpdate() {}

  static Step pressed(AppState state, Overlay.Pick pick, KeyPress key) {
    List<Catalogued.Entry> found = Catalogued.found(state, pick);
    String typed = pick.typed();
    int last = Math.max(0, found.size() - 1);
    return switch (key.key()) {
      case ESCAPE -> Step.to(state.with(Overlay.NONE));
      case UP -> Step.to(state.with(pick.at(typed, pick.row() - 1)));
      case DOWN, TAB -> Step.to(state.with(pick.at(typed, Math.min(last, pick.row() + 1))));
      case PAGE_UP -> Step.to(state.with(pick.at(typed, pick.row() - SCREENFUL)));
      case PAGE_DOWN -> Step.to(state.with(pick.at(typed, Math.min(last, pick.row() + SCREENFUL))));
      case BACKSPACE -> Step.to(state.with(pick.at(FormUpdate.shorter(typed), 0)));
      case SIGN -> Step.to(state.with(pick.at(typed + Character.toString(key.sign()), 0)));
      case ENTER ->
          found.isEmpty()
              ? Step.to(state.saying("The catalogue has nothing of that name."))
              : picked(state, pick.what(), found.get(Math.min(pick.row(), last)).id());
      default -> Step.to(state);
    };
  }

  private static Step picked(AppState state, Picked what, String id) {
    Work work = state.work().orElseThrow();
    return switch (what) {
      case GEAR ->
          work.catalogue().gear().stream()
              .filter(item -> item.id().equals(id))
              .findFirst()
              .map(item -> added(state, work, item))
              .orElse(Step.to(state));
      case MODULE ->
          work.catalogue().modules().stream()
              .filter(module -> module.id().equals(id))
              .findFirst()
              .map(module -> added(state, work, module))
              .orElse(Step.to(state));
      case ACCESSORY ->
          work.catalogue().accessories().stream()
              .filter(accessory -> accessory.id().equals(id))
              .findFirst()
              .map(one -> AccessoryEditor.added(work.design().scenario(), one))
              .map(editor -> FormUpdate.open(state, editor))
              .orElse(Step.to(state));
    };
  }

  private static Step added(AppState state, Work work, Item entry) {
    Design after = Gear.with(work.design(), List.of(entry));
    List<Item> items = after.scenario().items();
    Item added = items.get(items.size() - 1);
    Work at = work.with(work.looking().at(added.id()).atRow(items.size() - 1));
    return FormUpdate.done(state.with(at), "add " + entry.title(), after);
  }

  private static Step added(AppState state, Work work, FitOutModule entry) {
    Optional<Design> after = Modules.with(work.design(), entry);
    if (after.isEmpty()) {
      return Step.to(
          state.saying(
              "No free bay takes its "
                  + entry.size().lengthMm()
                  + " (deep) x "
                  + entry.size().widthMm()
                  + " x "
                  + entry.size().heightMm()
                  + " mm."));
    }
    List<ModuleChoice> modules = after.get().scenario().modules();
    ModuleChoice last = modules.get(modules.size() - 1);
    int row = EditRows.rowOf(work.with(after.get()), EditRow.Part.MODULE, last.module().id());
    Work at = work.with(work.looking().atRow(row));
    Step added = FormUpdate.done(state.with(at), "add " + entry.title(), after.get());
    return added.state().overlay().equals(Overlay.NONE)
        ? added.to(bayOf(after.get(), last))
        : added;
  }

  /** The form of a module that was added just now, at the field of its bay. */
  private static Overlay bayOf(Design design, ModuleChoice added) {
    return new Overlay.Editing(Form.of(new ModuleEditor(design, added)).in(ModuleEditor.BAY_FIELD));
  }
}
