package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Content;
import kitstow.planner.model.Density;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Mark;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Reach;

/**
 * A piece of gear: name, mass, size, number, need, how it may stand, what it may carry, how soon it
 * must be at hand, what it is like. With other figures it is an entry of its own.
 */
public final class GearEditor implements Editor {
  private static final long MOST_G = 2_000_000L;
  private static final Field.Range SIZE = new Field.Range(1L, 10_000L);

  /** Ways to stand that have a word. */
  private static final Map<String, Set<Turn>> STANDS = new LinkedHashMap<>();

  static {
    STANDS.put("upright", EnumSet.of(Turn.LWH, Turn.WLH));
    STANDS.put("upright or on edge", EnumSet.of(Turn.LWH, Turn.WLH, Turn.LHW, Turn.HLW));
    STANDS.put("any way", EnumSet.allOf(Turn.class));
  }

  private final Item item;
  private final Field name = Field.text("Name");
  private final Field mass = Field.mass("Mass", MOST_G);
  private final Field source = Field.words("Known by", Words.all(Words.SOURCES));
  private final Field length = Field.length("Length", SIZE);
  private final Field width = Field.length("Width", SIZE);
  private final Field height = Field.length("Height", SIZE);
  private final Field quantity =
      Field.figure("How many", Measures::count, new Field.Range(1L, 200L), "1 to 200");
  private final Field need = Field.words("Need", Words.all(Words.NEEDS));
  private final Field stands;
  private final Field bears =
      Field.figureIfAny(
          "Carries on top",
          Measures::massG,
          new Field.Range(0L, MOST_G),
          "e.g. 20 kg; nothing where it is left empty");
  private final Field reach = Field.words("At hand", ReachWords.all());
  private final Field marks = Field.manyWords("Marks", Words.all(Words.MARKS));

  /** By word; one that has none keeps its own. */
  private final Map<String, Set<Turn>> turns = new LinkedHashMap<>(STANDS);

  /** An editor of a piece as it is. */
  public GearEditor(Item item) {
    this.item = item;
    if (!turns.containsValue(item.turns())) {
      turns.put("as in its entry", item.turns());
    }
    this.stands = Field.words("Stands", List.copyOf(turns.keySet()));
  }

  @Override
  public String title() {
    return item.title();
  }

  @Override
  public String deed() {
    return "change " + item.title();
  }

  @Override
  public List<Field> fields() {
    return List.of(
        name, mass, source, length, width, height, quantity, need, stands, bears, reach, marks);
  }

  @Override
  public List<String> texts() {
    SizeMm size = item.shapes().get(0);
    return List.of(
        item.title(),
        Words.kg(item.mass().massG()),
        Words.of(item.mass().source()),
        Words.mm(size.lengthMm()),
        Words.mm(size.widthMm()),
        Words.mm(size.heightMm()),
        String.valueOf(item.quantity()),
        Words.of(item.need()),
        turns.entrySet().stream()
            .filter(stand -> stand.getValue().equals(item.turns()))
            .map(Map.Entry::getKey)
            .findFirst()
            .orElseThrow(),
        item.bearsG() == 0L ? "" : Words.kg(item.bearsG()),
        ReachWords.of(item.reach()),
        String.join(", ", Words.all(item.marks().stream().sorted().toList())));
  }

  @Override
  public Optional<String> fault(Form form, Field field) {
    long contentG = item.content().map(Content::contentG).orElse(0L);
    if (field == mass && form.value(mass) < contentG) {
      return Optional.of("its content alone is " + Words.kg(contentG));
    }
    boolean figures = List.of(mass, length, width, height).contains(field);
    return figures && isSound(form) && Density.isBeyondLead(form.value(mass), size(form))
        ? Optional.of("heavier than lead of that size: are these cm?")
        : Optional.empty();
  }

  private boolean isSound(Form form) {
    return Stream.of(mass, length, width, height)
        .allMatch(field -> field.fault(form.text(field)).isEmpty());
  }

  private SizeMm size(Form form) {
    return new SizeMm(
        Math.toIntExact(form.value(length)),
        Math.toIntExact(form.value(width)),
        Math.toIntExact(form.value(height)));
  }

  @Override
  public Design after(Design before, Form form) {
    Item changed = changed(form);
    List<Item> items = new ArrayList<>();
    for (Item one : before.scenario().items()) {
      items.add(one.id().equals(item.id()) ? changed : one);
    }
    return Tidy.plan(before.scenario().withItems(items), before.plan());
  }

  private Item changed(Form form) {
    long massG = form.value(mass);
    MassSource known = Words.SOURCES.get(form.word(source));
    SizeMm size = size(form);
    KnownMass weight = Words.mass(massG, known, Optional.of(item.mass()));
    Set<Turn> stand = turns.getOrDefault(form.text(stands), item.turns());
    long bearsG = form.value(bears);
    Set<Mark> marked = Words.chosen(Words.MARKS, form.value(marks));
    Reach wanted = ReachWords.REACHES.get(form.word(reach));
    boolean same =
        weight.equals(item.mass())
            && size.equals(item.shapes().get(0))
            && stand.equals(item.turns())
            && bearsG == item.bearsG()
            && marked.equals(item.marks())
            && wanted == item.reach();
    List<SizeMm> shapes = new ArrayList<>(item.shapes());
    shapes.set(0, size);
    return new Item(
        item.id(),
        form.text(name).strip(),
        same ? item.entryId() : Ids.OWN + item.id(),
        same ? item.source() : Words.OWN_FIGURES,
        shapes,
        weight,
        item.content(),
        stand,
        bearsG,
        item.keepClear(),
        marked,
        wanted,
        item.group(),
        Words.NEEDS.get(form.word(need)),
        item.value(),
        Math.toIntExact(form.value(quantity)),
        item.growth(),
        item.pin());
  }
}
