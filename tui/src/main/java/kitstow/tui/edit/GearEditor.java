package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Content;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.MassSource;

/**
 * A piece of gear: name, mass, size, number, need. With other figures it is an entry of its own.
 */
public final class GearEditor implements Editor {
  private static final long MOST_G = 2_000_000L;
  private static final Field.Range SIZE = new Field.Range(1L, 10_000L);

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

  /** An editor of a piece as it is. */
  public GearEditor(Item item) {
    this.item = item;
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
    return List.of(name, mass, source, length, width, height, quantity, need);
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
        Words.of(item.need()));
  }

  @Override
  public Optional<String> fault(Form form, Field field) {
    long contentG = item.content().map(Content::contentG).orElse(0L);
    return field == mass && form.value(mass) < contentG
        ? Optional.of("its content alone is " + Words.kg(contentG))
        : Optional.empty();
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
    SizeMm size =
        new SizeMm(
            Math.toIntExact(form.value(length)),
            Math.toIntExact(form.value(width)),
            Math.toIntExact(form.value(height)));
    KnownMass weight = Words.mass(massG, known, Optional.of(item.mass()));
    boolean same = weight.equals(item.mass()) && size.equals(item.shapes().get(0));
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
        item.turns(),
        item.bearsG(),
        item.keepClear(),
        item.marks(),
        item.reach(),
        item.group(),
        Words.NEEDS.get(form.word(need)),
        item.value(),
        Math.toIntExact(form.value(quantity)),
        item.growth(),
        item.pin());
  }
}
