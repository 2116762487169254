package kitstow.planner.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Suggesting the key that was probably meant. */
class SimilarTest {
  private static final List<String> KNOWN =
      List.of("id", "title", "massKg", "massSource", "wheelbaseMm", "sizeMm", "cornerMm", "unit");

  @ParameterizedTest
  @CsvSource({
    "massKG, massKg",
    "massG, massKg",
    "mass, massKg",
    "wheelBaseMm, wheelbaseMm",
    "wheelbase, wheelbaseMm",
    "sizemm, sizeMm",
    "conerMm, cornerMm",
    "tilte, title",
    "units, unit",
    "ID, id"
  })
  void nearKeyIsSuggested(String given, String meant) {
    assertThat(Similar.to(given, KNOWN)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"colour", "x", "weight", "weightKg", "a-very-long-key-that-nobody-knows"})
  void farKeyIsNot(String given) {
    assertThat(Similar.to(given, KNOWN)).isEmpty();
  }

  @Test
  void nothingIsSimilarToNothing() {
    assertThat(Similar.to("", KNOWN)).isEmpty();
    assertThat(Similar.to("massKg", List.of())).isEmpty();
  }
}
