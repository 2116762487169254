package kitstow.tui.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.tui.Shipped;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PictureTest {
  private static final Loading LOADING = Shipped.REMOTE.report().situation().loading();
  private static final LoadBoxes BOXES = new LoadBoxes(LOADING, Optional.empty());

  @ParameterizedTest
  @CsvSource({
    "LEFT, 25",
    "LEFT, 60",
    "LEFT, 90",
    "RIGHT, 25",
    "RIGHT, 73",
    "ABOVE, 31",
    "ABOVE, 90",
    "ROOFS, 40",
    "REAR, 20",
    "REAR, 75"
  })
  void cornersOfEveryThingLieWithinOneCellOfTheirMillimetres(Eye eye, int mmPerColumn) {
    Picture picture = picture(eye, mmPerColumn, "");
    Scale scale = picture.scale();
    assertThat(picture.shapes()).isNotEmpty();
    picture
        .shapes()
        .forEach(
            (key, shape) -> {
              BoxMm box = LOADING.placed().get(key).box();
              assertThat(Math.abs(scale.xMm(shape.left()) - eye.minAcrossMm(box)))
                  .as(key)
                  .isLessThanOrEqualTo(scale.mmPerColumn());
              assertThat(Math.abs(scale.xMm(shape.right()) - eye.maxAcrossMm(box)))
                  .as(key)
                  .isLessThanOrEqualTo(scale.mmPerColumn());
              assertThat(Math.abs(scale.upMm(shape.top()) - eye.maxUpMm(box)))
                  .as(key)
                  .isLessThanOrEqualTo(scale.mmPerRow());
              assertThat(Math.abs(scale.upMm(shape.bottom()) - eye.minUpMm(box)))
                  .as(key)
                  .isLessThanOrEqualTo(scale.mmPerRow());
            });
  }

  @ParameterizedTest
  @EnumSource(Eye.class)
  void whatIsAboardAndSeenFromHereIsDrawnAndNothingElse(Eye eye) {
    Set<String> seen = new TreeSet<>();
    for (PlacedItem item : LOADING.placed().values()) {
      if (eye.sees(item.box(), item.space().zone())) {
        seen.add(item.key());
      }
    }
    Picture picture = picture(eye, 40, "");
    assertThat(new TreeSet<>(picture.shapes().keySet())).isEqualTo(seen);
    assertThat(picture.shapes().values())
        .allMatch(shape -> shape.left() >= 0 && shape.right() < picture.scale().columns())
        .allMatch(shape -> shape.top() >= 0 && shape.bottom() < picture.scale().rows());
  }

  @ParameterizedTest
  @EnumSource(Eye.class)
  void theChosenThingIsSeenWholeInEveryView(Eye eye) {
    for (PlacedItem item : LOADING.placed().values()) {
      Picture picture = picture(eye, 60, item.key());
      Picture.Shape shape = picture.shapes().get(item.key());
      if (shape != null) {
        for (int column : new int[] {shape.left(), shape.right()}) {
          for (int row : new int[] {shape.top(), shape.bottom()}) {
            assertThat(picture.thingAt(column, row)).contains(item.key());
          }
        }
      }
    }
  }

  @Test
  void everythingAboardIsSeenFromSomewhere() {
    Map<String, PlacedItem> placed = LOADING.placed();
    Set<String> seen = new TreeSet<>();
    for (Eye eye : Eye.values()) {
      seen.addAll(picture(eye, 60, "").shapes().keySet());
    }
    assertThat(seen).isEqualTo(new TreeSet<>(placed.keySet()));
  }

  private static Picture picture(Eye eye, int mmPerColumn, String chosen) {
    BoxMm window = BOXES.window();
    int across = eye.maxAcrossMm(window) - eye.minAcrossMm(window);
    int up = eye.maxUpMm(window) - eye.minUpMm(window);
    Scale scale =
        new Scale(
            eye.minAcrossMm(window),
            eye.maxUpMm(window),
            mmPerColumn,
            across / mmPerColumn + 2,
            up / (2 * mmPerColumn) + 2);
    return new Picture(
        new Picture.Subject(LOADING, BOXES, eye, Optional.empty(), chosen),
        scale,
        /* ascii= */ false);
  }
}
