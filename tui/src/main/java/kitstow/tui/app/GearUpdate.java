package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Need;
import kitstow.planner.model.Placement;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.SupplyOrder;
import kitstow.tui.keys.Action;
import kitstow.tui.keys.KeyPress;

/** Editing the gear list: change, add from the catalogue, remove. */
final class GearUpdate {
  private static final String OWN = "own-";
  private static final int PERMILLE = 1000;

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
      return Step.to(state.with(new Overlay.Pick("", 0)));
    }
    Item item = marked(work).orElseThrow();
    return action == Action.EDIT
        ? Step.to(state.with(new Overlay.Form(GearForm.of(item))))
        : CarryUpdate.done(
            state, work, "remove " + item.title(), with(work.design(), item, Optional.empty()));
  }

  /** Why the marked item cannot be removed. */
  static Optional<String> needed(Work work) {
    Optional<Item> item = marked(work);
    if (item.isEmpty()) {
      return Optional.of("the list is empty; n adds from the catalogue");
    }
    String id = item.get().id();
    for (SupplyOrder order : work.design().scenario().trip().orders()) {
      for (List<String> group : order.groups()) {
        if (group.stream().anyMatch(key -> key.equals(id) || key.startsWith(id + "#"))) {
          return Optional.of("the trip uses up what is in it");
        }
      }
    }
    for (RemovablePart part : work.design().scenario().ute().parts()) {
      if (part.stowedAsItemId().filter(id::equals).isPresent()) {
        return Optional.of("it is a part of the ute that is stowed");
      }
    }
    return Optional.empty();
  }

  static Step form(AppState state, Overlay.Form form, KeyPress key) {
    GearForm edited = form.form();
    String text = edited.texts().get(edited.at());
    boolean words = !GearForm.words(GearForm.FIELDS.get(edited.at())).isEmpty();
    return switch (key.key()) {
      case ESCAPE -> Step.to(state.with(Overlay.NONE).saying("Not changed."));
      case TAB, DOWN -> shown(state, edited.in(edited.at() + 1));
      case BACK_TAB, UP -> shown(state, edited.in(edited.at() - 1));
      case LEFT -> shown(state, edited.turned(-1));
      case RIGHT -> shown(state, edited.turned(1));
      case BACKSPACE ->
          shown(
              state,
              words || text.isEmpty()
                  ? edited
                  : edited.with(text.substring(0, text.offsetByCodePoints(text.length(), -1))));
      case DELETE -> shown(state, words ? edited : edited.with(""));
      case SIGN ->
          shown(
              state, words ? edited.turned(1) : edited.with(text + Character.toString(key.sign())));
      case ENTER -> taken(state, edited);
      default -> Step.to(state);
    };
  }

  private static Step shown(AppState state, GearForm form) {
    return Step.to(state.with(new Overlay.Form(form)));
  }

  private static Step taken(AppState state, GearForm form) {
    if (!form.sound() || state.work().isEmpty()) {
      return Step.to(state.saying("Put right what is marked first, or Esc to leave it."));
    }
    Work work = state.work().get();
    Item changed = changed(form);
    Design after = with(work.design(), form.item(), Optional.of(changed));
    return CarryUpdate.done(state.with(Overlay.NONE), work, "change " + changed.title(), after);
  }

  /** The item with what stands in the fields; with other figures it is an entry of its own. */
  private static Item changed(GearForm form) {
    Item item = form.item();
    long massG = Measures.massG(form.text(GearForm.Field.MASS)).orElseThrow();
    MassSource source =
        MassSource.valueOf(form.text(GearForm.Field.SOURCE).toUpperCase(Locale.ROOT));
    SizeMm size =
        new SizeMm(
            mm(form, GearForm.Field.LENGTH),
            mm(form, GearForm.Field.WIDTH),
            mm(form, GearForm.Field.HEIGHT));
    boolean sameMass = massG == item.mass().massG() && source == item.mass().source();
    boolean sameSize = size.equals(item.shapes().get(0));
    List<SizeMm> shapes = new ArrayList<>(item.shapes());
    shapes.set(0, size);
    return new Item(
        item.id(),
        form.text(GearForm.Field.NAME).strip(),
        sameMass && sameSize ? item.entryId() : OWN + item.id(),
        sameMass && sameSize ? item.source() : "own figures",
        shapes,
        sameMass ? item.mass() : new KnownMass(massG, source, tolerance(massG, source)),
        item.content(),
        item.turns(),
        item.bearsG(),
        item.keepClear(),
        item.marks(),
        item.reach(),
        item.group(),
        Need.valueOf(form.text(GearForm.Field.NEED).toUpperCase(Locale.ROOT)),
        item.value(),
        (int) Measures.count(form.text(GearForm.Field.QUANTITY)).orElseThrow(),
        item.growth(),
        item.pin());
  }

  private static int mm(GearForm form, GearForm.Field field) {
    return (int) Measures.lengthMm(form.text(field)).orElseThrow();
  }

  /** Half width by how the mass is known: 1, 3, 5 and 20 %, as files are read (our judgement). */
  private static long tolerance(long massG, MassSource source) {
    int permille =
        switch (source) {
          case WEIGHED -> 10;
          case PLATE -> 30;
          case LABEL -> 50;
          case ESTIMATE -> 200;
        };
    return massG * permille / PERMILLE;
  }

  /** A design with an item changed or removed; units that are no more are taken out. */
  private static Design with(Design design, Item old, Optional<Item> changed) {
    List<Item> items = new ArrayList<>();
    for (Item item : design.scenario().items()) {
      if (!item.id().equals(old.id())) {
        items.add(item);
      } else {
        changed.ifPresent(items::add);
      }
    }
    int units = changed.map(Item::quantity).orElse(0);
    List<Placement> kept = new ArrayList<>();
    for (Placement placement : design.plan().placements()) {
      if (!placement.itemId().equals(old.id()) || placement.unit() <= units) {
        kept.add(placement);
      }
    }
    LoadPlan plan = design.plan();
    return new Design(
        design.scenario().withItems(items),
        new LoadPlan(plan.scenarioId(), plan.moduleBays(), kept, LoadPlan.Origin.HAND));
  }

  static Step pick(AppState state, Overlay.Pick pick, KeyPress key) {
    List<Item> found = Catalogued.found(state, pick);
    String typed = pick.typed();
    int last = Math.max(0, found.size() - 1);
    return switch (key.key()) {
      case ESCAPE -> Step.to(state.with(Overlay.NONE));
      case UP -> Step.to(state.with(new Overlay.Pick(typed, Math.max(0, pick.row() - 1))));
      case DOWN, TAB ->
          Step.to(state.with(new Overlay.Pick(typed, Math.min(last, pick.row() + 1))));
      case BACKSPACE ->
          Step.to(
              state.with(
                  new Overlay.Pick(
                      typed.isEmpty()
                          ? typed
                          : typed.substring(0, typed.offsetByCodePoints(typed.length(), -1)),
                      0)));
      case SIGN -> Step.to(state.with(new Overlay.Pick(typed + Character.toString(key.sign()), 0)));
      case ENTER ->
          found.isEmpty()
              ? Step.to(state.saying("The catalogue has nothing of that name."))
              : added(state.with(Overlay.NONE), found.get(Math.min(pick.row(), last)));
      default -> Step.to(state);
    };
  }

  private static Step added(AppState state, Item entry) {
    Work work = state.work().orElseThrow();
    Set<String> taken =
        work.design().scenario().items().stream().map(Item::id).collect(Collectors.toSet());
    String id = entry.id();
    for (int i = 2; taken.contains(id); i++) {
      id = entry.id() + "-" + i;
    }
    List<Item> items = new ArrayList<>(work.design().scenario().items());
    items.add(
        new Item(
            id,
            entry.title(),
            entry.entryId(),
            entry.source(),
            entry.shapes(),
            entry.mass(),
            entry.content(),
            entry.turns(),
            entry.bearsG(),
            entry.keepClear(),
            entry.marks(),
            entry.reach(),
            entry.group(),
            entry.need(),
            entry.value(),
            /* quantity= */ 1,
            entry.growth(),
            Optional.empty()));
    Design after = new Design(work.design().scenario().withItems(items), work.design().plan());
    Work at = work.with(work.looking().at(id).atRow(items.size() - 1));
    return CarryUpdate.done(state.with(at), at, "add " + entry.title(), after);
  }
}
