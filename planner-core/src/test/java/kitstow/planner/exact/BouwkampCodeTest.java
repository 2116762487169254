package kitstow.planner.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Squares that all differ fill a rectangle, as their code says and as CP-SAT finds out alone. */
class BouwkampCodeTest {
  static final List<BouwkampCode> CODES = BouwkampCode.OF_ORDER_9_AND_10;

  @ParameterizedTest
  @FieldSource("CODES")
  void theCodeIsATilingBySquaresThatDiffer(BouwkampCode code) {
    assertThat(code.isTiledBy(code.laidDown())).isTrue();
    assertThat(new HashSet<>(code.sides())).hasSameSizeAs(code.sides());
  }

  @ParameterizedTest
  @FieldSource("CODES")
  void cpSatFindsATilingFromTheSidesAlone(BouwkampCode code) {
    CpSat.assumed();

    assertThat(code.isTiledBy(CpSatTiling.solve(code).orElseThrow())).isTrue();
  }

  @Test
  void anotherOrderIsNoTiling() {
    BouwkampCode swapped = new BouwkampCode(33, 32, List.of(15, 18, 8, 7, 14, 4, 10, 1, 9));

    assertThat(swapped.isTiledBy(swapped.laidDown())).isFalse();
  }
}
