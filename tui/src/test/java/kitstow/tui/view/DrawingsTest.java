package kitstow.tui.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.json.CatalogueReader;
import kitstow.planner.json.NamedText;
import kitstow.planner.json.Outcome;
import kitstow.planner.json.PlanReader;
import kitstow.planner.json.ScenarioReader;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Scenario;
import kitstow.planner.statics.CentreOfMass;
import org.junit.jupiter.api.Test;

class DrawingsTest {
  private static final Page PAGE = new Page(Page.USUAL_WIDTH, /* ascii= */ true);

  private final Loading loading = small();
  private final Drawings drawings =
      new Drawings(loading, new CentreOfMass(1900.0, 0.0, 800.0), PAGE);

  private static Loading small() {
    Path folder = Path.of("src", "test", "resources", "kitstow", "tui", "small");
    Catalogue catalogue =
        value(
            CatalogueReader.read(
                List.of(
                    new NamedText("small.json", text(folder.resolve("catalogue/small.json"))))));
    Scenario scenario = value(ScenarioReader.read(text(folder.resolve("trip.json")), catalogue));
    return Loading.of(
        scenario, value(PlanReader.read(text(folder.resolve("plan.json")), scenario)));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static <T> T value(Outcome<T> outcome) {
    return outcome.match(
        Outcome.Read::value,
        refused -> {
          throw new AssertionError(refused.report().text());
        });
  }

  private List<Drawing> all() {
    return List.of(
        drawings.side(Facing.LEFT),
        drawings.side(Facing.RIGHT),
        drawings.plan(zone -> !PlanView.roof(zone)),
        drawings.plan(PlanView::roof));
  }

  @Test
  void cornersMapBackToMillimetresWithinOneCell() {
    for (Drawing drawing : all()) {
      Scale scale = drawing.scale();
      for (Block block : drawing.blocks()) {
        for (int xMm : new int[] {block.minXMm(), block.maxXMm()}) {
          int column = scale.column(xMm);
          assertThat(column).isBetween(0, scale.columns() - 1);
          assertThat(Math.abs(scale.xMm(column) - xMm)).isLessThanOrEqualTo(scale.mmPerColumn());
        }
        for (int upMm : new int[] {block.lowMm(), block.highMm()}) {
          int row = scale.row(upMm);
          assertThat(row).isBetween(0, scale.rows() - 1);
          assertThat(Math.abs(scale.upMm(row) - upMm)).isLessThanOrEqualTo(scale.mmPerRow());
        }
      }
    }
  }

  @Test
  void aCornerOfEveryTopmostBoxIsDrawnWhereItIs() {
    Drawing roofs = drawings.plan(PlanView::roof);
    List<String> lines = roofs.canvas().lines(/* ascii= */ true);
    for (Block block : roofs.blocks()) {
      String line = lines.get(roofs.scale().row(block.highMm()));
      assertThat(line.charAt(roofs.scale().column(block.minXMm()))).isIn('+', '-', '|');
    }
  }

  @Test
  void everyKeyStandsInsideItsBox() {
    for (Drawing drawing : all()) {
      for (Block block : drawing.blocks()) {
        if (!block.key().isEmpty()) {
          Drawing.Spot spot = drawing.spots().get(block.key());
          assertThat(spot).as(block.key()).isNotNull();
          assertThat(spot.column())
              .isBetween(
                  drawing.scale().column(block.minXMm()), drawing.scale().column(block.maxXMm()));
          assertThat(spot.row())
              .isBetween(drawing.scale().row(block.highMm()), drawing.scale().row(block.lowMm()));
        }
      }
    }
  }

  @Test
  void theLegendNamesWhatIsDrawnAndNothingElse() {
    Set<String> drawn = new TreeSet<>();
    all().forEach(drawing -> drawn.addAll(drawing.spots().keySet()));
    Set<String> named = new TreeSet<>();
    for (String line : drawings.legend(new Subjects(loading))) {
      String key = line.substring(0, 3).strip();
      if (key.matches("[A-Z]|[0-9]+")) {
        named.add(key);
      }
    }
    assertThat(named).isEqualTo(drawn);
    assertThat(named).hasSize(loading.placed().size() + loading.rig().modules().size());
  }

  @Test
  void theRearAxleLineIsNamedBelowIt() {
    Scale scale = drawings.side(Facing.LEFT).scale();
    String captions = AxleMarks.captions(loading.scenario().ute(), scale);
    assertThat(captions.indexOf("^ rear axle"))
        .isEqualTo(scale.column(loading.scenario().ute().wheelbaseMm()));
  }
}
