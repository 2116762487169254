package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Leg;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Person;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Trailer;
import kitstow.tui.app.EditRow.Part;
import kitstow.tui.edit.TankEditor;

/** The rows of the pages of things to edit, and what they stand for. */
public final class EditRows {
  private static final List<Part> TRIP =
      List.of(Part.PERSON, Part.LEG, Part.TRAILER, Part.USE, Part.NAME);
  private static final List<Part> UTE =
      List.of(Part.VEHICLE, Part.MODULE, Part.TANK, Part.ACCESSORY, Part.PART, Part.WEIGHING);

  private EditRows() {}

  /** The rows of the page that is shown; none where it is no such page. */
  public static List<EditRow> of(Work work) {
    List<EditRow> rows = new ArrayList<>();
    for (Part part : parts(work.looking().sheet())) {
      ids(work.design().scenario(), part).forEach(id -> rows.add(new EditRow(part, id)));
      if (!part.more().isEmpty()) {
        rows.add(new EditRow(part, ""));
      }
    }
    return rows;
  }

  private static List<Part> parts(Sheet sheet) {
    return switch (sheet) {
      case TRIP -> TRIP;
      case UTE -> UTE;
      case LOAD, LIMITS, PACK, HOME, ROOM, FINDINGS, COMPARE, GEAR -> List.of();
    };
  }

  private static List<String> ids(Scenario scenario, Part part) {
    return switch (part) {
      case PERSON -> scenario.trip().people().stream().map(Person::id).toList();
      case LEG -> scenario.trip().legs().stream().map(Leg::id).toList();
      case TRAILER -> scenario.trailers().stream().map(Trailer::id).toList();
      case PART -> scenario.ute().parts().stream().map(RemovablePart::id).toList();
      case TANK -> TankEditor.all(scenario).stream().map(Tank::id).toList();
      case MODULE -> scenario.modules().stream().map(choice -> choice.module().id()).toList();
      case ACCESSORY -> scenario.accessories().stream().map(Accessory::id).toList();
      case NAME, USE, WEIGHING, VEHICLE -> List.of(part.title());
    };
  }

  /** The number of a row; that of the first where there is none such. */
  static int rowOf(Work work, Part part, String id) {
    return Math.max(0, of(work).indexOf(new EditRow(part, id)));
  }

  /** The marked row. */
  public static Optional<EditRow> marked(Work work) {
    List<EditRow> rows = of(work);
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(rows.get(Math.min(work.looking().row(), rows.size() - 1)));
  }

  /** The person of an id. */
  public static Optional<Person> person(Scenario scenario, String id) {
    return scenario.trip().people().stream().filter(one -> one.id().equals(id)).findFirst();
  }

  /** The leg of an id. */
  public static Optional<Leg> leg(Scenario scenario, String id) {
    return scenario.trip().legs().stream().filter(one -> one.id().equals(id)).findFirst();
  }

  /** The trailer of an id. */
  public static Optional<Trailer> trailer(Scenario scenario, String id) {
    return scenario.trailers().stream().filter(one -> one.id().equals(id)).findFirst();
  }

  /** The part of an id. */
  public static Optional<RemovablePart> part(Scenario scenario, String id) {
    return scenario.ute().parts().stream().filter(one -> one.id().equals(id)).findFirst();
  }

  /** The tank of an id. */
  public static Optional<Tank> tank(Scenario scenario, String id) {
    return TankEditor.all(scenario).stream().filter(one -> one.id().equals(id)).findFirst();
  }

  /** The accessory of an id. */
  public static Optional<Accessory> accessory(Scenario scenario, String id) {
    return scenario.accessories().stream().filter(one -> one.id().equals(id)).findFirst();
  }

  /** The module of an id. */
  public static Optional<ModuleChoice> module(Scenario scenario, String id) {
    return scenario.modules().stream().filter(one -> one.module().id().equals(id)).findFirst();
  }
}
