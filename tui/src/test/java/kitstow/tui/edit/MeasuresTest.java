package kitstow.tui.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalLong;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasuresTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"12.5; 12500", "12,5 kg; 12500", "800 g; 800", "40 lb; 18144", " 3KG ; 3000"})
  void massesAreReadAsPeopleWriteThem(String text, long massG) {
    assertThat(Measures.massG(text)).isEqualTo(OptionalLong.of(massG));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {"900; 900", "90 cm; 900", "1 m; 1000", "24\"; 610", "2 ft; 610", "0,5m; 500"})
  void lengthsAreReadAsPeopleWriteThem(String text, long lengthMm) {
    assertThat(Measures.lengthMm(text)).isEqualTo(OptionalLong.of(lengthMm));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"320; 320000", "320 km; 320000", "800 m; 800", "200 mi; 321869", "12,5; 12500"})
  void distancesAreReadAsPeopleWriteThem(String text, long distanceM) {
    assertThat(Measures.distanceM(text)).isEqualTo(OptionalLong.of(distanceM));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1.5; 1500",
        "2 days; 2000",
        "1 day; 1000",
        "6 h; 250",
        "36 hours; 1500",
        "2 weeks; 14000"
      })
  void timesAreReadAsPeopleWriteThem(String text, long milliDays) {
    assertThat(Measures.timeMilliDays(text)).isEqualTo(OptionalLong.of(milliDays));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"60; 60000", "60 L; 60000", "11,5 l; 11500", "500 ml; 500", "20 litres; 20000"})
  void contentsAreReadAsPeopleWriteThem(String text, long contentMl) {
    assertThat(Measures.contentMl(text)).isEqualTo(OptionalLong.of(contentMl));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"1.4; 1400", "140 %; 1400", "1,25; 1250", "2; 2000"})
  void factorsAreReadAsPeopleWriteThem(String text, long permille) {
    assertThat(Measures.factorPermille(text)).isEqualTo(OptionalLong.of(permille));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-5", "12 stone", "1e3", "1.2.3", "kg", "12 kg kg", "\u001b[2J"})
  void whatIsNoFigureIsNotRead(String text) {
    assertThat(Measures.massG(text)).isEmpty();
    assertThat(Measures.lengthMm(text)).isEmpty();
    assertThat(Measures.contentMl(text)).isEmpty();
    assertThat(Measures.distanceM(text)).isEmpty();
    assertThat(Measures.timeMilliDays(text)).isEmpty();
    assertThat(Measures.factorPermille(text)).isEmpty();
  }
}
