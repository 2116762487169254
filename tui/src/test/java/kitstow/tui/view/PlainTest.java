package kitstow.tui.view;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTest {
  @Test
  void whatDrivesATerminalIsTakenOut() {
    assertThat(Plain.safe("a\u001b[2Jb\u0007\u009bc\u202ed\u200be\u007f"))
        .isEqualTo("a?[2Jb??c?d?e?");
  }

  @Test
  void lineEndsBecomeBlanks() {
    assertThat(Plain.safe("a\r\nb\tc")).isEqualTo("a  b c");
  }

  @Test
  void lettersOfAllScriptsStay() {
    assertThat(Plain.safe("Göteborg 北 ±5 N·m")).isEqualTo("Göteborg 北 ±5 N·m");
  }

  @Test
  void asciiKeepsWhatItCan() {
    assertThat(Plain.ascii("Göteborg ±5 N·m 北")).isEqualTo("Goteborg +-5 N.m ?");
  }
}
