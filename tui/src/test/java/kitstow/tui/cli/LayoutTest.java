package kitstow.tui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayoutTest {
  @ParameterizedTest
  @CsvSource({"UTF-8,true", "utf8,true", "cp65001,true", "Cp850,false", "ANSI_X3.4-1968,false"})
  void onlyAConsoleInUtf8ShowsLines(String encoding, boolean shown) {
    assertThat(Layout.showsUnicode(encoding)).isEqualTo(shown);
  }
}
