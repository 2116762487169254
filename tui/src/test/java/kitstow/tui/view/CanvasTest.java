package kitstow.tui.view;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CanvasTest {
  @Test
  void linesThatMeetAreJoined() {
    Canvas canvas = new Canvas(7, 3);
    canvas.rectangle(0, 0, 3, 2);
    canvas.rectangle(3, 0, 6, 2);
    assertThat(canvas.lines(/* ascii= */ false)).containsExactly("┌──┬──┐", "│  │  │", "└──┴──┘");
    assertThat(canvas.lines(/* ascii= */ true)).containsExactly("+--+--+", "|  |  |", "+--+--+");
  }

  @Test
  void aFilledRectangleHidesWhatIsBehindIt() {
    Canvas canvas = new Canvas(7, 5);
    canvas.rectangle(0, 2, 6, 2);
    canvas.fill(2, 0, 4, 4, /* owner= */ 1);
    canvas.rectangle(2, 0, 4, 4);
    assertThat(canvas.lines(/* ascii= */ false))
        .containsExactly("  ┌─┐", "  │ │", "╶─┤ ├─╴", "  │ │", "  └─┘");
  }

  @Test
  void whatLiesOutsideIsLeftOut() {
    Canvas canvas = new Canvas(3, 1);
    canvas.rectangle(-5, 0, 8, 0);
    canvas.text(2, 0, "12");
    assertThat(canvas.lines(/* ascii= */ true)).containsExactly("--1");
  }
}
