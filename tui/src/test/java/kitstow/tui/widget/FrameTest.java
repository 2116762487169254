package kitstow.tui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import kitstow.tui.keys.Target;
import org.junit.jupiter.api.Test;

class FrameTest {
  @Test
  void nothingThatDrivesATerminalGetsIn() {
    Frame frame = new Frame(30, 1, /* ascii= */ false);
    frame.text(frame.area(), 0, 0, "a\u001b[31mb\u0007c\u009bd\u202ee\u200bf\tg\nh", Ink.PLAIN);
    assertThat(frame.lines()).containsExactly("a?[31mb?c?d?e?f g h");
  }

  @Test
  void textIsCutAtTheEdgeOfItsArea() {
    Frame frame = new Frame(10, 2, /* ascii= */ false);
    Area area = new Area(2, 0, 4, 1);
    assertThat(frame.text(area, 1, 0, "abcdef", Ink.PLAIN)).isEqualTo(3);
    assertThat(frame.text(area, 0, 1, "below", Ink.PLAIN)).isZero();
    assertThat(frame.lines()).containsExactly("   abc", "");
  }

  @Test
  void aSignTwoCellsWideTakesTwoAndIsNotHalved() {
    Frame frame = new Frame(5, 1, /* ascii= */ false);
    assertThat(frame.text(frame.area(), 0, 0, "x\u7bb1y\u7bb1z", Ink.PLAIN)).isEqualTo(4);
    assertThat(frame.signAt(1, 0)).isEqualTo(0x7bb1);
    assertThat(frame.signAt(2, 0)).isZero();
    assertThat(frame.lines()).containsExactly("x\u7bb1y");
  }

  @Test
  void asciiKeepsToAscii() {
    Frame frame = new Frame(20, 1, /* ascii= */ true);
    frame.text(frame.area(), 0, 0, "±3 N·m Käse", Ink.PLAIN);
    frame.sign(frame.area(), 15, 0, '█', '#', Ink.PLAIN);
    assertThat(frame.lines()).containsExactly("+-3 N.m Kase   #");
  }

  @Test
  void cellsKnowWhatTheyStandFor() {
    Frame frame = new Frame(4, 2, /* ascii= */ false);
    frame.target(new Area(1, 1, 2, 5), new Target.Row(7));
    assertThat(frame.targetAt(2, 1)).contains(new Target.Row(7));
    assertThat(frame.targetAt(3, 1)).isEmpty();
    assertThat(frame.targetAt(9, 9)).isEmpty();
  }
}
