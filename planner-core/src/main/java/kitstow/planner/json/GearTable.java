package kitstow.planner.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Content;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Mark;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Need;
import kitstow.planner.model.Reach;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.problem.JsonPath;

/**
 * Gear as a plain table, a row for each item: what a spreadsheet can hold. Room to keep clear,
 * growth, pins, further shapes and tolerances of their own have no column.
 */
public final class GearTable {
  /** Where each column stands in an entry. */
  private static final Map<String, String> KEYS = new LinkedHashMap<>();

  static {
    KEYS.put("id", "id");
    KEYS.put("title", "title");
    KEYS.put("lengthMm", "sizeMm.length");
    KEYS.put("widthMm", "sizeMm.width");
    KEYS.put("heightMm", "sizeMm.height");
    KEYS.put("massKg", "massKg");
    KEYS.put("massSource", "massSource");
    KEYS.put("quantity", "quantity");
    KEYS.put("need", "need");
    KEYS.put("value", "value");
    KEYS.put("turns", "turns");
    KEYS.put("bearsKg", "bearsKg");
    KEYS.put("marks", "marks");
    KEYS.put("reach", "reach");
    KEYS.put("group", "group");
    KEYS.put("content", "content.kind");
    KEYS.put("contentKg", "content.contentKg");
  }

  /** Columns in their order. */
  public static final List<String> COLUMNS = List.copyOf(KEYS.keySet());

  /** Columns that every table has: without these nothing can be said of a thing. */
  public static final List<String> NEEDED =
      List.of("title", "lengthMm", "widthMm", "heightMm", "massKg");

  private static final String ID = "id";
  private static final String MASS = "massKg";
  private static final String MASS_SOURCE = "massSource";

  /**
   * What stands for a cell that an entry cannot do without: the careful choice, so a thing of which
   * no more is known stays upright, carries nothing and is thought to be off by as much as a guess.
   */
  private static final Map<String, String> USUAL =
      Map.of(
          MASS_SOURCE,
          Words.of(MassSource.ESTIMATE),
          "turns",
          "upright",
          "bearsKg",
          "0",
          "reach",
          Words.of(Reach.FEW_DAYS));

  /** The words that a column may have. */
  private static final Map<String, List<String>> WORDS =
      Map.of(
          MASS_SOURCE,
          all(MassSource.values()),
          "need",
          all(Need.values()),
          "marks",
          all(Mark.values()),
          "reach",
          all(Reach.values()),
          "content",
          all(SupplyKind.values()));

  private static final String ROW = "$.gear[";

  /** Before the id of an entry made of a row, so that it is none of the catalogue's. */
  private static final String OWN = "own-";

  private GearTable() {}

  /**
   * Reads a table. A thing without an id has that of the known one of its title, else one made of
   * its title. In columns that the table does not have, a known thing keeps what it has; what else
   * is left open is the careful choice: a guessed mass, upright, carrying nothing, wanted every few
   * days.
   *
   * @param columns the columns it has
   * @param rows what stands in each row, by column; empty cells left out
   * @param known what there is already
   * @param source where the figures come from
   * @return the items, or all faults; {@link #row} and {@link #column} tell where one is
   */
  public static Outcome<List<Item>> read(
      Collection<String> columns, List<Map<String, String>> rows, List<Item> known, String source) {
    Faults faults = new Faults();
    Names names = new Names(faults, "items of the list");
    List<Item> items = new ArrayList<>();
    List<Map<String, String>> whole = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Map<String, String> row : rows) {
      whole.add(completed(row, columns, known, ids));
    }
    Optional<Fields> root =
        Document.open(text(whole, source), JsonPath.root(), "catalogue", faults);
    if (root.isPresent()) {
      root.get().text("title", "");
      for (Fields row : root.get().objectsIfGiven("gear")) {
        Item item = item(row, faults);
        if (row.good("id")) {
          names.claim(item.id(), row.place("id"));
        }
        items.add(item);
      }
    }
    return faults.outcome(items);
  }

  /** A row with what its table has no column for. */
  private static Map<String, String> completed(
      Map<String, String> row, Collection<String> columns, List<Item> known, Set<String> ids) {
    Map<String, String> whole = new LinkedHashMap<>(row);
    String title = row.getOrDefault("title", "");
    if (!columns.contains(ID)) {
      whole.put(ID, idOf(title, known, ids));
    }
    ids.add(whole.getOrDefault(ID, ""));
    known.stream()
        .filter(item -> item.id().equals(whole.get(ID)))
        .findFirst()
        .ifPresent(item -> complete(whole, columns, cells(item)));
    USUAL.forEach(whole::putIfAbsent);
    return whole;
  }

  private static void complete(
      Map<String, String> row, Collection<String> columns, List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      String column = COLUMNS.get(i);
      // Another mass is not weighed because the one before it was.
      boolean keeps =
          !column.equals(MASS_SOURCE) || cells.get(COLUMNS.indexOf(MASS)).equals(row.get(MASS));
      if (!columns.contains(column) && keeps && !cells.get(i).isEmpty()) {
        row.putIfAbsent(column, cells.get(i));
      }
    }
  }

  /** The id of the known thing of a title, else one made of it that nothing has. */
  private static String idOf(String title, List<Item> known, Set<String> ids) {
    Set<String> taken = new HashSet<>(ids);
    for (Item item : known) {
      if (item.title().equals(title) && !ids.contains(item.id())) {
        return item.id();
      }
      taken.add(item.id());
    }
    String words = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String stem = words.replaceAll("^-+|-+$", "");
    String first = stem.isEmpty() ? "item" : stem;
    String id = first;
    for (int i = 2; taken.contains(id); i++) {
      id = first + "-" + i;
    }
    return id;
  }

  private static Item item(Fields row, Faults faults) {
    int quantity = row.wholeOr("quantity", Measure.QUANTITY, 1);
    Need need = row.wordOr("need", Words.NEED, Need.MUST);
    int value = ChoiceFields.value(row, need);
    Optional<String> group = row.idIfGiven("group");
    Item item = new GearReader(Figures.DEFAULTS, faults).read(row);
    return new Item(
        item.id(),
        item.title(),
        OWN + item.id(),
        item.source(),
        item.shapes(),
        item.mass(),
        item.content(),
        item.turns(),
        item.bearsG(),
        item.keepClear(),
        item.marks(),
        item.reach(),
        group,
        need,
        value,
        quantity,
        item.growth(),
        item.pin());
  }

  private static String text(List<Map<String, String>> rows, String source) {
    return Output.text(
        out -> {
          out.whole("schemaVersion", 1);
          out.text("kind", "catalogue");
          out.text("title", "gear list");
          out.listAlways("gear", rows, row -> row(row, source, out));
        });
  }

  private static void row(Map<String, String> row, String source, Output out) {
    out.text("source", source);
    out.object("sizeMm", size -> inner("sizeMm.", row, size));
    if (row.containsKey("content") || row.containsKey("contentKg")) {
      out.object("content", content -> inner("content.", row, content));
    }
    row.forEach(
        (column, value) -> {
          String key = KEYS.getOrDefault(column, column);
          switch (column) {
            case "marks" -> out.textsAlways(key, asWritten(column, words(value)));
            case "turns" -> turns(key, value, out);
            default -> {
              if (key.indexOf('.') < 0) {
                cell(column, key, value, out);
              }
            }
          }
        });
  }

  /** Cells of a row that stand in an object within the entry. */
  private static void inner(String prefix, Map<String, String> row, Output out) {
    row.forEach(
        (column, value) -> {
          String key = KEYS.getOrDefault(column, column);
          if (key.startsWith(prefix)) {
            cell(column, key.substring(prefix.length()), value, out);
          }
        });
  }

  private static void cell(String column, String key, String value, Output out) {
    switch (column) {
      case "lengthMm",
          "widthMm",
          "heightMm",
          "massKg",
          "bearsKg",
          "quantity",
          "value",
          "contentKg" ->
          out.typed(key, value);
      default -> out.text(key, asWritten(column, List.of(value)).get(0));
    }
  }

  private static void turns(String key, String value, Output out) {
    if (value.matches("[LWH]{3}([ ;,]+[LWH]{3})*")) {
      out.textsAlways(key, words(value));
    } else {
      out.text(key, value.toLowerCase(Locale.ROOT));
    }
  }

  /** Words as files have them, whatever letters of theirs are capital here. */
  private static List<String> asWritten(String column, List<String> words) {
    List<String> known = WORDS.getOrDefault(column, List.of());
    List<String> written = new ArrayList<>();
    for (String word : words) {
      written.add(known.stream().filter(word::equalsIgnoreCase).findFirst().orElse(word));
    }
    return written;
  }

  private static List<String> all(Enum<?>[] constants) {
    List<String> words = new ArrayList<>();
    for (Enum<?> constant : constants) {
      words.add(Words.of(constant));
    }
    return words;
  }

  private static List<String> words(String value) {
    return new ArrayList<>(new LinkedHashSet<>(Arrays.asList(value.trim().split("[ ;,]+", -1))));
  }

  /** Row of a fault, from 0; -1 where it is in none. */
  public static int row(String jsonPath) {
    if (!jsonPath.startsWith(ROW)) {
      return -1;
    }
    return Integer.parseInt(jsonPath.substring(ROW.length(), jsonPath.indexOf(']')));
  }

  /** Column of a fault; "" where it is about the whole row. */
  public static String column(String jsonPath) {
    String path = jsonPath.substring(jsonPath.indexOf(']') + 1);
    for (Map.Entry<String, String> column : KEYS.entrySet()) {
      String key = "." + column.getValue();
      if (path.equals(key) || path.startsWith(key + "[")) {
        return column.getKey();
      }
    }
    return "";
  }

  /** The column that a heading names, whatever letters of it are capital. */
  public static Optional<String> columnOf(String heading) {
    return COLUMNS.stream().filter(heading::equalsIgnoreCase).findFirst();
  }

  /** The cells of an item in the order of the columns; of several shapes the first. */
  public static List<String> cells(Item item) {
    SizeMm size = item.shapes().get(0);
    Optional<Content> content = item.content();
    return List.of(
        item.id(),
        item.title(),
        String.valueOf(size.lengthMm()),
        String.valueOf(size.widthMm()),
        String.valueOf(size.heightMm()),
        Decimals.text(item.mass().massG(), 3),
        Words.of(item.mass().source()),
        String.valueOf(item.quantity()),
        Words.of(item.need()),
        String.valueOf(item.value()),
        TurnsField.text(item.turns()),
        Decimals.text(item.bearsG(), 3),
        joined(item.marks()),
        Words.of(item.reach()),
        item.group().orElse(""),
        content.map(holds -> Words.of(holds.kind())).orElse(""),
        content.map(holds -> Decimals.text(holds.contentG(), 3)).orElse(""));
  }

  private static String joined(Set<? extends Enum<?>> values) {
    List<String> words = new ArrayList<>();
    values.stream().sorted().forEach(value -> words.add(Words.of(value)));
    return String.join(" ", words);
  }

  /** Whether an item has something that no column holds. */
  public static boolean losesSomething(Item item) {
    return item.shapes().size() > 1
        || !item.mass().equals(usual(item))
        || !item.keepClear().isEmpty()
        || item.growth().isPresent()
        || item.pin().isPresent();
  }

  private static KnownMass usual(Item item) {
    return Figures.DEFAULTS.known(item.mass().massG(), item.mass().source(), OptionalLong.empty());
  }

  /** The entries for "define" and the lines of "gear" of a scenario, as a JSON text. */
  public static String write(List<Item> items) {
    return Output.text(
        out -> {
          GearWriter writer = new GearWriter(out, items);
          out.object(
              "define", define -> define.listAlways("gear", writer.entries(), writer::entry));
          out.listAlways("gear", items, writer::choice);
        });
  }
}
