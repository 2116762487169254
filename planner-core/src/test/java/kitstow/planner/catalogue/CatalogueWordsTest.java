package kitstow.planner.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitstow.planner.json.NamedText;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Ute;
import org.junit.jupiter.api.Test;

/** The shipped catalogue speaks in plain words: no name of a company, product or person. */
class CatalogueWordsTest {
  private static final Pattern PLAIN_ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,59}");
  private static final Pattern GAPS = Pattern.compile("[ ,:]+");
  private static final Pattern CAPITAL = Pattern.compile(".*[A-Z].*");

  /** Units and short names that are written with capitals. */
  private static final Set<String> SHORT_NAMES =
      Set.of("L", "Ah", "W", "V", "kW", "kVA", "kWh", "DC-DC", "CV", "U-bolts");

  private static final Pattern SOURCE =
      Pattern.compile("(common practice, no source|trade articles?, keys? T\\d|computed from ).*");

  private static final Catalogue CATALOGUE = ShippedCatalogue.read();

  @Test
  void titlesHoldNoNames() {
    List<String> named = new ArrayList<>();
    titles()
        .forEach(
            title ->
                GAPS.splitAsStream(title)
                    .skip(1)
                    .filter(word -> CAPITAL.matcher(word).matches() && !SHORT_NAMES.contains(word))
                    .forEach(word -> named.add(word + " in " + title)));
    assertThat(named).isEmpty();
  }

  @Test
  void sourcesAreCommonPracticeOrAKey() {
    assertThat(sources()).allMatch(source -> SOURCE.matcher(source).matches());
  }

  @Test
  void idsArePlainAndNamedOnceAcrossTheWholeCatalogue() {
    List<String> ids = new ArrayList<>();
    CATALOGUE.trays().forEach(entry -> ids.add(entry.id()));
    CATALOGUE.canopies().forEach(entry -> ids.add(entry.id()));
    CATALOGUE.modules().forEach(entry -> ids.add(entry.id()));
    CATALOGUE.accessories().forEach(entry -> ids.add(entry.id()));
    CATALOGUE.gear().forEach(entry -> ids.add(entry.id()));
    CATALOGUE.utes().forEach(entry -> ids.add(entry.id()));
    CATALOGUE.utes().stream()
        .flatMap(ute -> ute.parts().stream())
        .map(RemovablePart::id)
        .distinct()
        .forEach(ids::add);
    assertThat(ids).doesNotHaveDuplicates().allMatch(id -> PLAIN_ID.matcher(id).matches());
  }

  @Test
  void everyFileSaysThatItsFiguresAreToBeOverwritten() {
    for (NamedText file : ShippedCatalogue.files()) {
      JsonObject root = JsonParser.parseString(file.text()).getAsJsonObject();
      assertThat(root.get("title").getAsString())
          .as(file.name())
          .startsWith("Generic ")
          .contains("to be overwritten by");
    }
  }

  private static Stream<String> titles() {
    return Stream.of(
            CATALOGUE.utes().stream().map(Ute::title),
            CATALOGUE.utes().stream()
                .flatMap(ute -> ute.parts().stream())
                .map(RemovablePart::title),
            CATALOGUE.trays().stream().map(Tray::title),
            CATALOGUE.canopies().stream().map(Canopy::title),
            CATALOGUE.modules().stream().map(FitOutModule::title),
            CATALOGUE.accessories().stream().map(Accessory::title),
            CATALOGUE.gear().stream().map(Item::title))
        .flatMap(titles -> titles);
  }

  private static Stream<String> sources() {
    return Stream.of(
            CATALOGUE.utes().stream().map(Ute::source),
            CATALOGUE.utes().stream().map(ute -> ute.empty().source()),
            CATALOGUE.trays().stream().map(Tray::source),
            CATALOGUE.canopies().stream().map(Canopy::source),
            CATALOGUE.modules().stream().map(FitOutModule::source),
            CATALOGUE.accessories().stream().map(Accessory::source),
            CATALOGUE.gear().stream().map(Item::source))
        .flatMap(sources -> sources);
  }
}
