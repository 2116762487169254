package kitstow.planner.testkit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Content;
import kitstow.planner.model.Growth;
import kitstow.planner.model.Item;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Need;
import kitstow.planner.model.Pin;
import kitstow.planner.model.Reach;

/**
 * An item: at first a box of 400 x 300 x 200 mm and 10 kg that may carry 100 kg and stays upright.
 */
public final class ItemBuilder {
  private final String id;
  private final List<KeepClear> keepClear = new ArrayList<>();
  private List<SizeMm> shapes = List.of(new SizeMm(400, 300, 200));
  private long massG = Masses.kg(10);
  private long toleranceG;
  private Optional<Content> content = Optional.empty();
  private Set<Turn> turns = EnumSet.of(Turn.LWH, Turn.WLH);
  private long bearsG = Masses.kg(100);
  private Set<Mark> marks = Set.of();
  private Reach reach = Reach.RARE;
  private Need need = Need.NICE;
  private int value = 1;
  private int quantity = 1;
  private Optional<Growth> growth = Optional.empty();
  private Optional<Pin> pin = Optional.empty();

  private ItemBuilder(String id) {
    this.id = id;
  }

  /** Starts an item. */
  public static ItemBuilder anItem(String id) {
    return new ItemBuilder(id);
  }

  /** Its only shape. */
  public ItemBuilder size(int lengthMm, int widthMm, int heightMm) {
    shapes = List.of(new SizeMm(lengthMm, widthMm, heightMm));
    return this;
  }

  /** Its shapes. */
  public ItemBuilder shapes(SizeMm... values) {
    shapes = List.of(values);
    return this;
  }

  /** Its mass, full. */
  public ItemBuilder massG(long value) {
    massG = value;
    return this;
  }

  /** By how much its mass may be off. */
  public ItemBuilder toleranceG(long value) {
    toleranceG = value;
    return this;
  }

  /** What is used up of it. */
  public ItemBuilder content(Content value) {
    content = Optional.of(value);
    return this;
  }

  /** How it may stand. */
  public ItemBuilder turns(Turn first, Turn... more) {
    turns = EnumSet.of(first, more);
    return this;
  }

  /** What it may carry on top. */
  public ItemBuilder bearsG(long value) {
    bearsG = value;
    return this;
  }

  /** Room for air before a face. */
  public ItemBuilder air(KeepClear.Face face, int clearMm) {
    keepClear.add(new KeepClear(face, clearMm, KeepClear.Kind.AIR));
    return this;
  }

  /** Room for a lid above it. */
  public ItemBuilder lid(int clearMm) {
    keepClear.add(new KeepClear(KeepClear.Face.TOP, clearMm, KeepClear.Kind.LID));
    return this;
  }

  /** What it is like. */
  public ItemBuilder marks(Mark... values) {
    marks = Set.of(values);
    return this;
  }

  /** How quickly it must be at hand. */
  public ItemBuilder reach(Reach value) {
    reach = value;
    return this;
  }

  /** How much it is wanted along. */
  public ItemBuilder need(Need value) {
    need = value;
    return this;
  }

  /** What leaving one unit home costs. */
  public ItemBuilder value(int cost) {
    value = cost;
    return this;
  }

  /** How many units there are. */
  public ItemBuilder quantity(int value) {
    quantity = value;
    return this;
  }

  /** Mass it gains. */
  public ItemBuilder growth(Growth value) {
    growth = Optional.of(value);
    return this;
  }

  /** Where it must be. */
  public ItemBuilder pin(Pin value) {
    pin = Optional.of(value);
    return this;
  }

  /** The item. */
  public Item build() {
    return new Item(
        id,
        id,
        /* entryId= */ id,
        /* source= */ "test",
        shapes,
        Masses.weighed(massG, toleranceG),
        content,
        turns,
        bearsG,
        keepClear,
        marks,
        reach,
        /* group= */ Optional.empty(),
        need,
        value,
        quantity,
        growth,
        pin);
  }
}
