package kitstow.planner.json;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import kitstow.planner.problem.Code;

/**
 * Entries of one type by id: those of the catalogue and those a scenario describes itself.
 *
 * @param <T> what an entry describes
 */
final class Shelf<T> {
  private final String key;
  private final Function<T, String> idOf;
  private final Faults faults;
  private final Names names;
  private final Map<String, T> entries = new LinkedHashMap<>();
  private final Set<String> ofCatalogue = new HashSet<>();
  private final Map<String, Fields> own = new LinkedHashMap<>();
  private final Map<String, Place> unused = new LinkedHashMap<>();

  /**
   * An empty shelf.
   *
   * @param key key of its list in a file, which is also the plural of what it holds
   */
  Shelf(String key, Function<T, String> idOf, Faults faults) {
    this.key = key;
    this.idOf = idOf;
    this.faults = faults;
    this.names = new Names(faults, key + " of the catalogue and of \"define\"");
  }

  /** Puts in entries of the catalogue, each as it stands under the scenario's settings. */
  void stock(List<T> catalogue, UnaryOperator<T> restated) {
    for (T entry : catalogue) {
      entries.put(idOf.apply(entry), restated.apply(entry));
      ofCatalogue.add(idOf.apply(entry));
      names.add(idOf.apply(entry));
    }
  }

  /** Reads the entries of a list. */
  void read(Fields lists, Function<Fields, T> reader) {
    for (Fields fields : lists.objectsIfGiven(key)) {
      T entry = reader.apply(fields);
      String id = idOf.apply(entry);
      Place place = fields.place("id");
      if (ofCatalogue.contains(id)) {
        faults.error(
            Code.ID_IN_CATALOGUE,
            place,
            "is " + Shown.quoted(id) + ", which is an entry of the catalogue",
            "choose another id, e.g. my-" + id + ", and name that under \"entry\"");
      } else {
        names.claim(id, place);
        own.putIfAbsent(id, fields);
        unused.putIfAbsent(id, fields.place());
      }
      entries.putIfAbsent(id, entry);
    }
  }

  /** All entries, in the order in which they were put in. */
  List<T> all() {
    return new ArrayList<>(entries.values());
  }

  /** The entry that is named under "entry", if there is one. */
  Optional<T> named(Fields choice) {
    String id = choice.name("entry", "name one of the " + key);
    if (choice.good("entry")) {
      names.check(id, choice.place("entry"));
    }
    unused.remove(id);
    return Optional.ofNullable(entries.get(id));
  }

  /** Whether the entry that is named is there, with the ids in all these lists of it. */
  boolean idsKnown(Fields choice, String... lists) {
    String id = choice.again().text("entry");
    Fields described = own.get(id);
    return entries.containsKey(id) && (described == null || described.idsKnown(lists));
  }

  /** Notes own entries that nothing names. */
  void noteUnused() {
    for (Map.Entry<String, Place> entry : unused.entrySet()) {
      faults.warning(
          Code.UNUSED_ENTRY,
          entry.getValue(),
          "is the entry " + Shown.quoted(entry.getKey()) + ", which nothing names",
          "take it out, or name it under \"entry\"");
    }
  }
}
