package kitstow.planner.json;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Content;
import kitstow.planner.model.Density;
import kitstow.planner.model.Growth;
import kitstow.planner.model.Item;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Need;
import kitstow.planner.model.Reach;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.problem.Code;

/** Reads the gear of a catalogue; there is one of each and it must come, until a scenario says. */
final class GearReader {
  private final Figures figures;
  private final Faults faults;

  GearReader(Figures figures, Faults faults) {
    this.figures = figures;
    this.faults = faults;
  }

  Item read(Fields fields) {
    String id = fields.id("id");
    String title = fields.text("title", "name it as it shall be shown");
    String source = fields.text("source", "name where the figures come from");
    List<SizeMm> shapes = shapes(fields);
    KnownMass mass = figures.mass(fields, Measure.MASS);
    Optional<Content> content =
        fields.objectIfGiven("content").map(holds -> content(fields, holds, mass));
    Set<Turn> turns = TurnsField.read(fields, faults);
    long bearsG = fields.number("bearsKg", Measure.RATING);
    List<KeepClear> keepClear = new ArrayList<>();
    for (Fields clear : fields.objectsIfGiven("keepClear")) {
      keepClear.add(keepClear(clear));
    }
    Set<Mark> marks = EnumSet.noneOf(Mark.class);
    marks.addAll(fields.words("marks", Words.MARK, Mark.class));
    content.flatMap(GearReader::mark).ifPresent(marks::add);
    notBeyondLead(fields, shapes, mass);
    Reach reach = fields.word("reach", Words.REACH);
    Optional<Growth> growth = fields.objectIfGiven("growth").map(GearReader::growth);
    fields.done();
    return new Item(
        id,
        title,
        /* entryId= */ id,
        source,
        shapes,
        mass,
        content,
        turns,
        bearsG,
        keepClear,
        marks,
        reach,
        /* group= */ Optional.empty(),
        Need.MUST,
        ChoiceFields.usualValue(Need.MUST),
        /* quantity= */ 1,
        growth,
        /* pin= */ Optional.empty());
  }

  private List<SizeMm> shapes(Fields fields) {
    if (fields.has("sizeMm") && fields.has("shapesMm")) {
      fields.error(
          Code.UNKNOWN_KEY,
          "shapesMm",
          "stands beside sizeMm, must stand alone",
          "keep shapesMm for a soft bag with several shapes, sizeMm for anything else");
    }
    if (!fields.has("shapesMm")) {
      fields.ask("shapesMm");
      return List.of(BoxFields.size(fields, "sizeMm"));
    }
    List<SizeMm> shapes = new ArrayList<>();
    for (Fields shape : fields.objects("shapesMm", /* least= */ 1, "list the shapes")) {
      shapes.add(BoxFields.size(shape));
    }
    if (fields.has("sizeMm")) {
      BoxFields.size(fields, "sizeMm");
    }
    fields.ask("sizeMm");
    return shapes.isEmpty() ? List.of(new SizeMm(1, 1, 1)) : shapes;
  }

  private static Content content(Fields item, Fields fields, KnownMass mass) {
    SupplyKind kind = fields.word("kind", Words.SUPPLY);
    long contentG = fields.number("contentKg", Measure.MASS);
    fields.done();
    if (contentG > mass.massG() && item.good("massKg") && fields.good("contentKg")) {
      fields.error(
          Code.CONTENT_ABOVE_MASS,
          "contentKg",
          "is "
              + Decimals.kg(contentG)
              + ", must be within the item's mass of "
              + Decimals.kg(mass.massG()),
          "massKg is the mass as carried, full");
    }
    return new Content(kind, contentG);
  }

  /** What holds fuel or gas is kept apart as such, though nobody has marked it. */
  private static Optional<Mark> mark(Content content) {
    return switch (content.kind()) {
      case FUEL -> Optional.of(Mark.FUEL);
      case GAS -> Optional.of(Mark.GAS);
      case WATER, FOOD -> Optional.empty();
    };
  }

  /** Centimetres for millimetres make things a thousand times as dense as they are. */
  private static void notBeyondLead(Fields fields, List<SizeMm> shapes, KnownMass mass) {
    boolean sized = fields.good(fields.has("shapesMm") ? "shapesMm" : "sizeMm");
    for (SizeMm shape : shapes) {
      if (sized && fields.good("massKg") && Density.isBeyondLead(mass.massG(), shape)) {
        fields.error(
            Code.HEAVIER_THAN_LEAD,
            "massKg",
            "is "
                + Decimals.kg(mass.massG())
                + " in "
                + Decimals.text(shape.volumeMm3() / 1000L, 3)
                + " L, must be less than lead weighs",
            "give sizes in millimetres and the mass in kilograms");
        return;
      }
    }
  }

  private static KeepClear keepClear(Fields fields) {
    KeepClear.Face face = fields.word("face", Words.FACE);
    int clearMm = fields.whole("clearMm", Measure.SIZE);
    KeepClear.Kind kind = fields.word("kind", Words.CLEAR_KIND);
    fields.done();
    if (kind == KeepClear.Kind.LID && face != KeepClear.Face.TOP && fields.good("face", "kind")) {
      fields.error(
          Code.LID_NOT_ON_TOP,
          "kind",
          "is a lid on the face " + Words.of(face) + ", must be on the top",
          "write \"air\" if the room is for ventilation");
    }
    return new KeepClear(face, clearMm, kind);
  }

  private static Growth growth(Fields fields) {
    Growth growth =
        new Growth(
            fields.numberOr("perPersonDayKg", Measure.MASS_OR_ZERO, 0L),
            fields.numberOr("upToKg", Measure.MASS_OR_ZERO, 0L),
            fields.numberOr("wetKg", Measure.MASS_OR_ZERO, 0L));
    fields.done();
    if (growth.perPersonDayG() > 0L
        && growth.upToG() == 0L
        && fields.good("perPersonDayKg", "upToKg")) {
      fields.error(
          Code.GROWTH_WITHOUT_LIMIT,
          "upToKg",
          "is 0 kg although "
              + Decimals.kg(growth.perPersonDayG())
              + " are gained per person and day, must be above zero",
          "give the most it can gain, e.g. 8");
    }
    return growth;
  }
}
