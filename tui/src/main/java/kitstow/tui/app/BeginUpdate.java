package kitstow.tui.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Item;
import kitstow.tui.edit.Design;
import kitstow.tui.edit.Form;
import kitstow.tui.edit.Founding;
import kitstow.tui.edit.Gear;
import kitstow.tui.edit.Tidy;
import kitstow.tui.keys.KeyPress;

/** Beginning a scenario from the catalogue, and reading gear from a table. */
final class BeginUpdate {
  private BeginUpdate() {}

  static Step catalogueRead(AppState state, Catalogue catalogue) {
    if (state.work().isPresent()) {
      return Step.to(state);
    }
    if (catalogue.utes().isEmpty()) {
      return Step.to(state.saying("The catalogue has no ute to begin with."));
    }
    Founding founding = new Founding(catalogue);
    return Step.to(
        state.saying("").with(new Overlay.Begin(founding, Form.of(founding), catalogue)));
  }

  static Step pressed(AppState state, Overlay.Begin begin, KeyPress key) {
    Form form = begin.form();
    return switch (key.key()) {
      case ESCAPE -> Step.to(state.with(Overlay.NONE));
      case ENTER -> form.sound() ? made(state, begin) : FormUpdate.refused(state);
      default ->
          Step.to(
              state.with(
                  new Overlay.Begin(
                      begin.founding(), FormUpdate.filled(form, key), begin.catalogue())));
    };
  }

  /** Opens it, and has it written at once, so that a crash loses no more than of any other. */
  private static Step made(AppState state, Overlay.Begin begin) {
    Design design = begin.founding().made(begin.form());
    List<String> faults = Tidy.faults(design.scenario());
    if (!faults.isEmpty()) {
      return FormUpdate.notTogether(state, faults);
    }
    String name = begin.founding().fileName(begin.form());
    Path folder = state.shelf().folder();
    Source source = new Source(folder.resolve(name + ".json"), folder.resolve(name + ".plan.json"));
    Work work = Work.of(source, design, begin.catalogue());
    return Step.to(
            state.with(work.with(work.looking().on(Sheet.UTE))).with(Overlay.NONE).saying(""),
            new Effect.Judge(design))
        .and(new Effect.Save(source, design, /* scenarioChanged= */ true));
  }

  static Step fileName(AppState state, Overlay.FileName asked, KeyPress key) {
    String typed = asked.typed();
    return switch (key.key()) {
      case ESCAPE -> Step.to(state.with(Overlay.NONE));
      case BACKSPACE -> Step.to(state.with(new Overlay.FileName(FormUpdate.shorter(typed))));
      case DELETE -> Step.to(state.with(new Overlay.FileName("")));
      case SIGN ->
          Step.to(state.with(new Overlay.FileName(typed + Character.toString(key.sign()))));
      case ENTER ->
          typed.isBlank()
              ? Step.to(state.saying("Give the name of a file, e.g. gear.csv, or Esc to leave."))
              : Step.to(
                  state.with(Overlay.NONE).saying("reading " + typed + " ..."),
                  readGear(typed, state.work().orElseThrow()));
      default -> Step.to(state);
    };
  }

  private static Effect readGear(String file, Work work) {
    List<Item> known = new ArrayList<>(work.design().scenario().items());
    known.addAll(work.catalogue().gear());
    return new Effect.ReadGear(file, work.source(), known);
  }

  static Step gearRead(AppState state, List<Item> items) {
    if (state.work().isEmpty() || state.work().get().searching().isPresent()) {
      return Step.to(state);
    }
    Design before = state.work().get().design();
    Design after = Gear.merged(before, items);
    int known = before.scenario().items().size();
    List<Item> added = after.scenario().items().subList(known, after.scenario().items().size());
    long bare = added.stream().filter(item -> item.marks().isEmpty()).count();
    String deed =
        "read a table: "
            + (items.size() - added.size())
            + " known, "
            + added.size()
            + " new"
            + (bare > 0L ? ", " + bare + " of these without marks" : "");
    return FormUpdate.done(state, deed, after);
  }
}
