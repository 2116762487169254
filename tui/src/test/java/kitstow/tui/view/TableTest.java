package kitstow.tui.view;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TableTest {
  @Test
  void longWordsAreBrokenAndFiguresStandRight() {
    Table table = new Table().rest("What").figures("kg").words("");
    table.row("a fridge that has a very long name indeed, longer than any line", "60.0", "OVER");
    table.row("can", "5.5", "");
    assertThat(table.lines(new Page(60, /* ascii= */ true)))
        .containsExactly(
            "What                                                kg",
            "------------------------------------------------  ----",
            "a fridge that has a very long name indeed,        60.0  OVER",
            "longer than any line",
            "can                                                5.5");
  }
}
