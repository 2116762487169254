package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import kitstow.planner.exact.BouwkampCode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Where a packing without any gap is known to be there, the search finds one. */
class SquaredRectangleTest {
  private static final long STEPS = 16_000L;

  static final List<BouwkampCode> CODES = BouwkampCode.OF_ORDER_9_AND_10;

  @ParameterizedTest
  @FieldSource("CODES")
  void theSearchFillsTheRectangle(BouwkampCode code) {
    assertThat(SquaredRectangle.filled(code, STEPS)).isCloseTo(1.0, within(1.0e-12));
  }
}
