package kitstow.planner.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.Item;
import kitstow.planner.model.MassSource;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;

class GearTableTest {
  private static final List<Item> KNOWN = ShippedFiles.scenario("remote-fortnight").items();
  private static final List<String> ALL = new ArrayList<>(GearTable.COLUMNS);

  @Test
  void aTableOfEveryColumnGivesItsItemsAgain() {
    for (Item item : KNOWN) {
      Item again = read(ALL, KNOWN, item);
      assertThat(GearTable.cells(again)).isEqualTo(GearTable.cells(item));
    }
  }

  @Test
  void whatATableHasNoColumnForStaysAsItWas() {
    for (Item item : KNOWN) {
      Item again = read(GearTable.NEEDED, KNOWN, item);
      assertThat(GearTable.cells(again)).isEqualTo(GearTable.cells(item));
    }
  }

  @Test
  void anotherMassIsNotThoughtKnownAsWell() {
    Item labelled = known(MassSource.LABEL);
    Map<String, String> row = row(GearTable.NEEDED, labelled);
    row.put("massKg", "0.9");
    Item again = read(GearTable.NEEDED, KNOWN, row);
    assertThat(again.id()).isEqualTo(labelled.id());
    assertThat(again.mass().massG()).isEqualTo(900L);
    assertThat(again.mass().source()).isEqualTo(MassSource.ESTIMATE);
  }

  @Test
  void anotherTitleIsAnotherThingThoughItWouldMakeTheIdOfAKnownOne() {
    Item known = KNOWN.get(0);
    Map<String, String> row = row(GearTable.NEEDED, known);
    row.put("title", known.id().replace('-', ' '));
    assertThat(read(GearTable.NEEDED, KNOWN, row).id()).isEqualTo(known.id() + "-2");
  }

  @Test
  void anEmptyCellOfAColumnThatIsThereIsNotFilledFromWhatIsKnown() {
    Item marked =
        KNOWN.stream()
            .filter(item -> !item.marks().isEmpty() && item.bearsG() > 0L)
            .findFirst()
            .orElseThrow(AssertionError::new);
    Map<String, String> row = row(ALL, marked);
    row.remove("marks");
    row.remove("bearsKg");
    Item again = read(ALL, KNOWN, row);
    assertThat(again.marks()).isEmpty();
    assertThat(again.bearsG()).isZero();
  }

  private static Item known(MassSource source) {
    return KNOWN.stream()
        .filter(item -> item.mass().source() == source && !item.content().isPresent())
        .findFirst()
        .orElseThrow(AssertionError::new);
  }

  private static Item read(List<String> columns, List<Item> known, Item item) {
    return read(columns, known, row(columns, item));
  }

  private static Item read(List<String> columns, List<Item> known, Map<String, String> row) {
    return GearTable.read(columns, List.of(row), known, "test")
        .match(
            read -> read.value().get(0),
            refused -> {
              throw new AssertionError(refused.report());
            });
  }

  private static Map<String, String> row(List<String> columns, Item item) {
    List<String> cells = GearTable.cells(item);
    Map<String, String> row = new LinkedHashMap<>();
    for (String column : columns) {
      String cell = cells.get(GearTable.COLUMNS.indexOf(column));
      if (!cell.isEmpty()) {
        row.put(column, cell);
      }
    }
    return row;
  }
}
