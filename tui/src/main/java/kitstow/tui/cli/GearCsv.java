package kitstow.tui.cli;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitstow.planner.json.GearTable;
import kitstow.planner.model.Item;
import kitstow.planner.problem.Code;
import kitstow.planner.problem.Problem;
import kitstow.planner.problem.ProblemReport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/** A table of gear as comma-separated values, and its faults by line and column. */
public final class GearCsv {
  private static final Pattern PATH = Pattern.compile("\\$\\.gear\\[(\\d+)\\][A-Za-z.]*");
  private static final String KG = "Kg";

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).setRecordSeparator("\n").get();

  /** A number with a comma for decimals, which a table with semicolons may have. */
  private static final Pattern COMMA = Pattern.compile("(\\d+),(\\d+)");

  private final String name;
  private final List<Item> known;
  private final InputFaults faults;
  private final List<Map<String, String>> rows = new ArrayList<>();
  private final List<Long> lines = new ArrayList<>();
  private List<String> header = List.of();
  private boolean semicolons;

  private GearCsv(String name, List<Item> known, InputFaults faults) {
    this.name = name;
    this.known = known;
    this.faults = faults;
  }

  /**
   * The items of a file's table; absent, with all its faults noted, where it cannot be used.
   *
   * @param known what there is already, which keeps what the table has no column for
   */
  public static Optional<List<Item>> read(Path file, List<Item> known, InputFaults faults) {
    return TextFile.read(file, faults).flatMap(text -> read(file.toString(), text, known, faults));
  }

  private static Optional<List<Item>> read(
      String name, String text, List<Item> known, InputFaults faults) {
    GearCsv csv = new GearCsv(name, known, faults);
    try {
      csv.rows(text);
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      faults.file(
          name,
          "is no table of comma-separated values from line " + (csv.lastLine() + 1) + " on",
          "close every quotation mark, and double those inside a cell");
      return Optional.empty();
    }
    return csv.items();
  }

  private long lastLine() {
    return lines.isEmpty() ? 1L : lines.get(lines.size() - 1);
  }

  private void rows(String text) throws IOException {
    int end = text.indexOf('\n');
    String first = end < 0 ? text : text.substring(0, end);
    semicolons = first.indexOf(';') >= 0 && first.indexOf(',') < 0;
    CSVFormat format = FORMAT.builder().setDelimiter(semicolons ? ';' : ',').get();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      Iterator<CSVRecord> records = parser.iterator();
      long line = 1L;
      while (records.hasNext()) {
        CSVRecord record = records.next();
        if (line == 1L) {
          header(record);
        } else if (!empty(record)) {
          row(record, line);
        }
        line = parser.getCurrentLineNumber() + 1L;
      }
    }
    if (header.isEmpty()) {
      faults.file(name, "is empty", "write the line of column names first");
    }
  }

  private static boolean empty(CSVRecord record) {
    for (String cell : record) {
      if (!cell.isBlank()) {
        return false;
      }
    }
    return true;
  }

  private void header(CSVRecord record) {
    List<String> names = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    boolean told = false;
    for (String cell : record) {
      String column = GearTable.columnOf(cell.strip()).orElse(cell.strip());
      names.add(column);
      if (!GearTable.COLUMNS.contains(column)) {
        fault(
            1L,
            names.size(),
            "is headed \"" + column + "\", which is no column",
            told
                ? "the columns are named above"
                : "the columns are " + String.join(", ", GearTable.COLUMNS));
        told = true;
      } else if (!seen.add(column)) {
        fault(1L, names.size(), "is headed " + column + " a second time", "take one of them out");
      }
    }
    for (String column : GearTable.NEEDED) {
      if (!seen.contains(column)) {
        faults.file(
            name + " line 1",
            "has no column " + column,
            "add it to the first line; gear SCENARIO --csv writes a table to begin with");
      }
    }
    header = names;
  }

  private void row(CSVRecord record, long line) {
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < record.size(); i++) {
      String cell = record.get(i).strip();
      if (i >= header.size()) {
        if (!cell.isEmpty()) {
          fault(
              line,
              i + 1,
              "lies beyond the " + header.size() + " columns of the first line",
              "put quotation marks round a cell with a comma in it");
        }
      } else if (!cell.isEmpty() && GearTable.COLUMNS.contains(header.get(i))) {
        row.putIfAbsent(header.get(i), semicolons ? withPoint(header.get(i), cell) : cell);
      }
    }
    rows.add(row);
    lines.add(line);
  }

  private static String withPoint(String column, String cell) {
    Matcher number = COMMA.matcher(cell);
    return column.endsWith(KG) && number.matches() ? number.replaceFirst("$1.$2") : cell;
  }

  private void fault(long line, int column, String message, String hint) {
    faults.file(name + " line " + line + ", column " + column, message, hint);
  }

  private Optional<List<Item>> items() {
    if (header.isEmpty()) {
      return Optional.empty();
    }
    boolean usable = header.containsAll(GearTable.NEEDED);
    if (usable && !header.contains("marks")) {
      faults.remark(
          "note: a table without a column marks does not say what is fuel, gas, food, fragile and the"
              + " like; only what has the title of a catalogue entry is marked as that is");
    }
    return GearTable.read(header, rows, known, "gear list")
        .match(
            read -> usable ? Optional.of(read.value()) : Optional.empty(),
            refused -> {
              told(refused.report());
              return Optional.empty();
            });
  }

  private void told(ProblemReport report) {
    for (Problem problem : report.problems()) {
      int row = GearTable.row(problem.jsonPath());
      String column = GearTable.column(problem.jsonPath());
      if (GearTable.NEEDED.contains(column) && !header.contains(column)) {
        continue; // told of the first line
      }
      String place = row < 0 || row >= lines.size() ? "" : " line " + lines.get(row);
      if (!column.isEmpty()) {
        int index = header.indexOf(column) + 1;
        place += index > 0 ? ", column " + index + " (" + column + ")" : ", no column " + column;
      }
      faults.file(name + place, inLines(problem.message()), hint(problem));
    }
  }

  private static String hint(Problem problem) {
    return problem.code() == Code.WRONG_TYPE
        ? "write the number alone, with a point for decimals and no unit, e.g. 12.5"
        : problem.hint();
  }

  /** A message with the lines of the table in place of paths. */
  private String inLines(String message) {
    Matcher path = PATH.matcher(message);
    return path.replaceAll(
        found -> {
          int row = Integer.parseInt(found.group(1));
          return row < lines.size() ? "line " + lines.get(row) : "another line";
        });
  }

  /** Items as a table. */
  static String write(List<Item> items) {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
      printer.printRecord(GearTable.COLUMNS);
      for (Item item : items) {
        printer.printRecord(GearTable.cells(item));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}
