package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Scenario;
import kitstow.tui.app.EditRow.Part;
import kitstow.tui.edit.AccessoryEditor;
import kitstow.tui.edit.BodyEditor;
import kitstow.tui.edit.ConsumptionEditor;
import kitstow.tui.edit.Design;
import kitstow.tui.edit.Editor;
import kitstow.tui.edit.LegEditor;
import kitstow.tui.edit.ModuleEditor;
import kitstow.tui.edit.Modules;
import kitstow.tui.edit.NameEditor;
import kitstow.tui.edit.PartEditor;
import kitstow.tui.edit.PersonEditor;
import kitstow.tui.edit.TankEditor;
import kitstow.tui.edit.TrailerEditor;
import kitstow.tui.edit.WeighingEditor;
import kitstow.tui.keys.Action;

/**
 * Editing trip, trailers, tray and canopy, tanks, modules, accessories and weighing: change, add,
 * remove, drive in another order.
 */
final class EditUpdate {
  private EditUpdate() {}

  static Step apply(AppState state, Work work, Action action) {
    EditRow row = EditRows.marked(work).orElseThrow();
    return switch (action) {
      case EDIT -> row.adds() ? added(state, work, row.part()) : changed(state, work, row);
      case ADD -> added(state, work, row.part());
      case REMOVE -> removed(state, work, row);
      case EARLIER -> moved(state, work, row, -1);
      case LATER -> moved(state, work, row, 1);
      default -> Step.to(state);
    };
  }

  private static Step changed(AppState state, Work work, EditRow row) {
    return FormUpdate.open(state, editor(work, row));
  }

  private static Editor editor(Work work, EditRow row) {
    Design design = work.design();
    Scenario scenario = design.scenario();
    return switch (row.part()) {
      case NAME -> new NameEditor(scenario);
      case PERSON -> new PersonEditor(scenario, EditRows.person(scenario, row.id()));
      case LEG -> new LegEditor(scenario, EditRows.leg(scenario, row.id()));
      case TRAILER -> new TrailerEditor(scenario, EditRows.trailer(scenario, row.id()));
      case USE -> new ConsumptionEditor(scenario);
      case VEHICLE -> new BodyEditor(design, work.catalogue());
      case WEIGHING -> new WeighingEditor(scenario);
      case PART -> new PartEditor(EditRows.part(scenario, row.id()).orElseThrow());
      case TANK -> new TankEditor(EditRows.tank(scenario, row.id()).orElseThrow());
      case MODULE -> new ModuleEditor(design, EditRows.module(scenario, row.id()).orElseThrow());
      case ACCESSORY ->
          AccessoryEditor.of(scenario, EditRows.accessory(scenario, row.id()).orElseThrow());
    };
  }

  private static Step added(AppState state, Work work, Part part) {
    return switch (part) {
      // What is added to a vehicle is a module.
      case MODULE, VEHICLE -> Step.to(state.with(new Overlay.Pick(Picked.MODULE, "", 0)));
      case ACCESSORY -> Step.to(state.with(new Overlay.Pick(Picked.ACCESSORY, "", 0)));
      default -> FormUpdate.open(state, editor(work, new EditRow(part, "")));
    };
  }

  private static Step removed(AppState state, Work work, EditRow row) {
    Design design = work.design();
    Scenario scenario = design.scenario();
    return switch (row.part()) {
      case PERSON ->
          EditRows.person(scenario, row.id())
              .map(one -> gone(state, one.title(), PersonEditor.without(design, one)))
              .orElse(Step.to(state));
      case LEG ->
          EditRows.leg(scenario, row.id())
              .map(one -> gone(state, one.title(), LegEditor.without(design, one)))
              .orElse(Step.to(state));
      case TRAILER ->
          EditRows.trailer(scenario, row.id())
              .map(one -> gone(state, one.title(), TrailerEditor.without(design, one)))
              .orElse(Step.to(state));
      case MODULE ->
          EditRows.module(scenario, row.id())
              .map(one -> gone(state, one.module().title(), Modules.without(design, one)))
              .orElse(Step.to(state));
      case ACCESSORY ->
          EditRows.accessory(scenario, row.id())
              .map(one -> gone(state, one.title(), AccessoryEditor.without(design, one)))
              .orElse(Step.to(state));
      case NAME, USE, VEHICLE, WEIGHING, TANK, PART -> Step.to(state);
    };
  }

  private static Step gone(AppState state, String title, Design after) {
    return FormUpdate.done(state, "remove " + title, after);
  }

  private static Step moved(AppState state, Work work, EditRow row, int by) {
    Leg leg = EditRows.leg(work.design().scenario(), row.id()).orElseThrow();
    Design after = LegEditor.moved(work.design(), leg, by);
    if (after.equals(work.design())) {
      return Step.to(state.saying("It is the " + (by < 0 ? "first" : "last") + " leg already."));
    }
    Work following = work.with(work.looking().atRow(work.looking().row() + by));
    return FormUpdate.done(
        state.with(following), "drive " + leg.title() + " at another time", after);
  }

  /** Why the marked row cannot be changed so. */
  static Optional<String> whyNot(Work work, Action action) {
    Optional<EditRow> marked = EditRows.marked(work);
    if (marked.isEmpty()) {
      return Optional.of("nothing is marked");
    }
    EditRow row = marked.get();
    boolean adds = action == Action.ADD || (action == Action.EDIT && row.adds());
    if (adds) {
      return notAdded(work, row.part());
    }
    if (action == Action.EDIT) {
      return Optional.empty();
    }
    if (action == Action.REMOVE) {
      return notRemoved(work.design().scenario(), row);
    }
    return row.part() == Part.LEG && !row.adds()
        ? Optional.empty()
        : Optional.of("only legs have an order");
  }

  private static Optional<String> notAdded(Work work, Part part) {
    if (part.more().isEmpty() && part != Part.VEHICLE) {
      return Optional.of("there is one of this only");
    }
    boolean full =
        part == Part.PERSON
            && PersonEditor.freeSeats(work.design().scenario(), Optional.empty()).isEmpty();
    return full ? Optional.of("every seat is taken") : Optional.empty();
  }

  private static Optional<String> notRemoved(Scenario scenario, EditRow row) {
    if (row.adds()) {
      return Optional.of("nothing is marked that could be removed");
    }
    return switch (row.part()) {
      case PERSON -> only(scenario.trip().people(), "somebody must drive");
      case LEG -> only(scenario.trip().legs(), "a trip has one leg at least");
      case MODULE ->
          EditRows.module(scenario, row.id()).flatMap(one -> Modules.needed(scenario, one));
      case ACCESSORY ->
          EditRows.accessory(scenario, row.id())
              .flatMap(one -> AccessoryEditor.needed(scenario, one));
      case TRAILER -> Optional.empty();
      case NAME, USE, VEHICLE, WEIGHING, TANK, PART ->
          Optional.of("it cannot be removed, only changed");
    };
  }

  private static Optional<String> only(List<?> all, String why) {
    return all.size() > 1 ? Optional.empty() : Optional.of(why);
  }
}
