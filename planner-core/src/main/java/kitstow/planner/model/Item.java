package kitstow.planner.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;

/**
 * A piece of gear.
 *
 * @param id unique in the scenario
 * @param title shown to people
 * @param entryId catalogue entry; units and items of one entry share their error
 * @param source where its figures come from
 * @param shapes outside size as listed (length x width x height); a soft bag may have several
 * @param mass as carried, full
 * @param content what is used up of it
 * @param turns how it may stand
 * @param bearsG what it may carry on top in grams; none means that the column above it stays clear
 * @param keepClear faces before which room must stay free
 * @param marks what it is like
 * @param reach how quickly it must be at hand
 * @param group items of one group want to ride together
 * @param need must, should or nice
 * @param value what leaving one unit home costs
 * @param quantity how many units
 * @param growth mass it gains
 * @param pin where the user wants it
 */
public record Item(
    String id,
    String title,
    String entryId,
    String source,
    List<SizeMm> shapes,
    KnownMass mass,
    Optional<Content> content,
    Set<Turn> turns,
    long bearsG,
    List<KeepClear> keepClear,
    Set<Mark> marks,
    Reach reach,
    Optional<String> group,
    Need need,
    int value,
    int quantity,
    Optional<Growth> growth,
    Optional<Pin> pin) {
  /** Copies its collections. */
  public Item {
    shapes = List.copyOf(shapes);
    turns = Set.copyOf(turns);
    keepClear = List.copyOf(keepClear);
    marks = Set.copyOf(marks);
    if (shapes.isEmpty() || turns.isEmpty() || quantity < 1) {
      throw new IllegalArgumentException("item " + id + " needs a shape, a turn and a quantity");
    }
  }

  /** The same item under another id. */
  public Item renamed(String other) {
    return with(other, pin);
  }

  /** The same item pinned, or no more. */
  public Item pinned(Optional<Pin> where) {
    return with(id, where);
  }

  private Item with(String name, Optional<Pin> where) {
    return new Item(
        name, title, entryId, source, shapes, mass, content, turns, bearsG, keepClear, marks, reach,
        group, need, value, quantity, growth, where);
  }

  /** Body key of one unit: {@code id} when there is one only, else {@code id#unit} from 1. */
  public String keyOf(int unit) {
    return quantity == 1 ? id : id + "#" + unit;
  }
}
