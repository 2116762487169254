package kitstow.tui.runtime;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import kitstow.planner.json.ScenarioReader;
import kitstow.planner.json.ScenarioWriter;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Scenario;
import kitstow.tui.Shipped;
import kitstow.tui.cli.CatalogueSource;
import kitstow.tui.cli.InputFaults;
import org.junit.jupiter.api.Test;

class OwnEntriesTest {
  private final Scenario scenario = Shipped.REMOTE.design().scenario();

  @Test
  void whatIsWrittenIsReadTheSameBesideTheCatalogue() {
    Scenario own = OwnEntries.of(scenario);
    Catalogue catalogue =
        CatalogueSource.read(null, Path.of("x.json"), new InputFaults()).orElseThrow();
    Scenario read =
        ScenarioReader.read(ScenarioWriter.write(own), catalogue)
            .match(
                done -> done.value(),
                refused -> {
                  throw new AssertionError(refused.report().problems());
                });
    assertThat(read).isEqualTo(own);
    assertThat(own.items()).hasSameSizeAs(scenario.items());
  }

  @Test
  void idsThatAreItsOwnAlreadyStay() {
    Scenario own = OwnEntries.of(scenario);
    assertThat(OwnEntries.of(own)).isEqualTo(own);
  }

  @Test
  void noTwoEntriesFallTogether() {
    List<String> before = scenario.items().stream().map(item -> item.entryId()).distinct().toList();
    List<String> after =
        OwnEntries.of(scenario).items().stream().map(item -> item.entryId()).distinct().toList();
    assertThat(after).hasSameSizeAs(before);
  }
}
