package kitstow.planner.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.problem.Code;
import kitstow.planner.problem.JsonPath;
import kitstow.planner.problem.ProblemReport;

/**
 * Reads a plan of a scenario. A plan that was read can be carried out: its modules stand in bays
 * they may stand in, and every unit is in a space that is there. Whether it keeps the rules is for
 * the judges. Corners are whole millimetres from a space's front, left, lower corner.
 */
public final class PlanReader {
  private final Fields fields;
  private final Optional<Scenario> scenario;
  private final Faults faults;

  private PlanReader(Fields fields, Optional<Scenario> scenario, Faults faults) {
    this.fields = fields;
    this.scenario = scenario;
    this.faults = faults;
  }

  /**
   * Reads a plan.
   *
   * @param text JSON text
   * @param scenario the scenario it is for
   * @return the plan, or every fault in the order of the text; bad input is never an exception
   */
  public static Outcome<LoadPlan> read(String text, Scenario scenario) {
    Faults faults = new Faults();
    Optional<LoadPlan> plan =
        Document.open(text, JsonPath.root(), "plan", faults)
            .map(fields -> new PlanReader(fields, Optional.of(scenario), faults).read());
    return plan.map(faults::outcome).orElseGet(faults::refused);
  }

  /**
   * Looks through a plan whose scenario cannot be read, so that its faults need not wait for that.
   *
   * @param text JSON text
   * @return every fault that shows without a scenario: of syntax, keys, types, ranges and words,
   *     and of bays that cannot go together
   */
  public static ProblemReport readAlone(String text) {
    Faults faults = new Faults();
    Document.open(text, JsonPath.root(), "plan", faults)
        .ifPresent(fields -> new PlanReader(fields, Optional.empty(), faults).read());
    return faults.report();
  }

  private LoadPlan read() {
    String scenarioId = fields.name("scenario", "name the scenario it was made for");
    scenario.ifPresent(known -> checkScenario(scenarioId, known.id()));
    LoadPlan.Origin origin =
        new LoadPlan.Origin(
            Words.of(fields.word("packedBy", Packer.WORDS)),
            fields.numberIfGiven("seed", Measure.ANY_WHOLE),
            fields.numberIfGiven("steps", Measure.STEPS),
            fields.numberIfGiven("momentStepNm", Measure.MOMENT_STEP));
    PlannedModules modules = new PlannedModules(scenario, faults);
    Map<String, String> moduleBays =
        modules.read(fields.object("modules", "give the bay of each module, or write {}"));
    List<Placement> placements = placements(modules);
    fields.done();
    return new LoadPlan(scenarioId, moduleBays, placements, origin);
  }

  private void checkScenario(String named, String id) {
    if (fields.good("scenario") && !named.equals(id)) {
      fields.error(
          Code.WRONG_SCENARIO,
          "scenario",
          "is " + Shown.quoted(named) + ", must be " + Shown.quoted(id),
          "give the plan that was made for this scenario");
    }
  }

  private List<Placement> placements(PlannedModules modules) {
    List<Placement> placements = new ArrayList<>();
    Map<String, Item> items = new LinkedHashMap<>();
    Names itemIds = new Names(faults, "gear of the scenario");
    if (!scenario.isPresent()) {
      itemIds.incomplete();
    }
    for (Item item : scenario.map(Scenario::items).orElse(List.of())) {
      items.put(item.id(), item);
      itemIds.add(item.id());
    }
    Map<String, String> placed = new HashMap<>();
    String hint = "list the placed units, or write [] for none";
    for (Fields placement : fields.objects("placements", 0, hint)) {
      String itemId = placement.name("item", "name an item of the scenario");
      if (placement.good("item")) {
        itemIds.check(itemId, placement.place("item"));
      }
      Optional<Item> item = Optional.ofNullable(items.get(itemId));
      int unit = unit(placement, item);
      String spaceId = placement.name("space", "name a space");
      modules.checkSpace(spaceId, placement);
      int shape = placement.wholeOr("shape", Measure.INDEX, 0);
      Turn turn = placement.word("turn", Words.TURN);
      SpacePointMm corner = BoxFields.spaceCorner(placement);
      placement.done();
      item.ifPresent(found -> checkUnit(found, unit, shape, placement, placed));
      placements.add(new Placement(itemId, unit, spaceId, shape, turn, corner));
    }
    return placements;
  }

  private static int unit(Fields placement, Optional<Item> item) {
    OptionalLong given = placement.numberIfGiven("unit", Measure.UNIT);
    if (!given.isPresent() && !placement.has("unit") && item.isPresent()) {
      int quantity = item.get().quantity();
      if (quantity > 1) {
        placement.error(
            Code.MISSING_KEY,
            "unit",
            "is missing for an item of " + quantity + " units",
            "give the unit, from 1 to " + quantity);
      }
    }
    return Math.toIntExact(given.orElse(1L));
  }

  private static void checkUnit(
      Item item, int unit, int shape, Fields placement, Map<String, String> placed) {
    boolean unitGiven = item.quantity() == 1 || placement.has("unit");
    if (unit > item.quantity()) {
      placement.error(
          Code.NO_SUCH_UNIT_OR_SHAPE,
          "unit",
          "is " + unit + ", must be within the item's quantity of " + item.quantity(),
          "count units from 1");
    } else if (unitGiven && placement.good("unit", "item")) {
      String first = placed.putIfAbsent(item.keyOf(unit), placement.place().path().toString());
      if (first != null) {
        placement.error(
            Code.PLACED_TWICE,
            item.quantity() == 1 ? "item" : "unit",
            "is " + Shown.quoted(item.keyOf(unit)) + ", which is placed at " + first + " before",
            "place each unit once");
      }
    }
    if (shape >= item.shapes().size() && placement.good("shape")) {
      placement.error(
          Code.NO_SUCH_UNIT_OR_SHAPE,
          "shape",
          "is " + shape + ", must be below the item's number of shapes, " + item.shapes().size(),
          "count shapes from 0");
    }
  }

  /** Who packed a plan. */
  enum Packer {
    /** A person. */
    HAND,
    /** The solver. */
    SOLVER;

    static final Words<Packer> WORDS = Words.camel(values());
  }
}
