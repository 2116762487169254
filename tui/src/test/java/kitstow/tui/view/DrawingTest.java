package kitstow.tui.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DrawingTest {
  private final Drawing drawing = new Drawing(Scale.fit(0, 700, 0, 800, /* columns= */ 8));

  @Test
  void whatIsHiddenStillHasItsKey() {
    drawing.draw(List.of(block("near", 0, 700, 0, 800, 2), block("far", 100, 600, 200, 600, 1)));
    assertThat(drawing.canvas().lines(/* ascii= */ true))
        .containsExactly("+------+", "| far  |", "| near |", "|      |", "+------+");
  }

  @Test
  void keysDoNotRunIntoEachOther() {
    drawing.draw(List.of(block("12", 0, 200, 0, 0, 1), block("34", 200, 300, 0, 0, 2)));
    assertThat(drawing.spots()).containsOnlyKeys("34");
  }

  @Test
  void cellsAreTwiceAsHighAsWide() {
    assertThat(drawing.scale().mmPerColumn()).isEqualTo(100);
    assertThat(drawing.scale().mmPerRow()).isEqualTo(200);
    assertThat(drawing.scale().rows()).isEqualTo(5);
  }

  private static Block block(String key, int minX, int maxX, int low, int high, int near) {
    return new Block(key, minX, maxX, low, high, near, /* solid= */ true);
  }
}
