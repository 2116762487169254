package kitstow.planner.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Ute;
import org.junit.jupiter.api.Test;

/** Every figure of the shipped catalogue lies in the range of the trade, and none is unknown. */
class CatalogueRangesTest {
  private static final Catalogue CATALOGUE = ShippedCatalogue.read();

  @Test
  void utesLieInTheirRanges() {
    check(CATALOGUE.utes(), Ute::id, UteFigures::of, UteRanges.all());
  }

  @Test
  void traysLieInTheirRanges() {
    check(CATALOGUE.trays(), Tray::id, BodyFigures::of, BodyRanges.trays());
  }

  @Test
  void canopiesLieInTheirRanges() {
    check(CATALOGUE.canopies(), Canopy::id, BodyFigures::of, BodyRanges.canopies());
  }

  @Test
  void modulesLieInTheirRanges() {
    check(CATALOGUE.modules(), FitOutModule::id, ModuleFigures::of, ModuleRanges.all());
  }

  @Test
  void accessoriesLieInTheirRanges() {
    check(CATALOGUE.accessories(), Accessory::id, BodyFigures::of, AccessoryRanges.all());
  }

  @Test
  void framesWithTheirDrawersLieInTheRangeOfTheWhole() {
    for (ModuleRanges.ModuleSet set : ModuleRanges.sets()) {
      long ownG = ownG(set.frame()) + set.inserts() * ownG(set.insert());
      Figure own = Figure.kg("ownKg", ownG);
      assertThat(set.ownKg().holds(own.value())).as("%s: %s", set, own).isTrue();
    }
  }

  @Test
  void catalogueIsLargeEnough() {
    assertThat(CATALOGUE.utes()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(CATALOGUE.trays()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(CATALOGUE.canopies()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(CATALOGUE.modules()).hasSizeGreaterThanOrEqualTo(24);
    assertThat(CATALOGUE.gear()).hasSizeGreaterThanOrEqualTo(110);
  }

  private static long ownG(String moduleId) {
    return CATALOGUE.modules().stream()
        .filter(module -> module.id().equals(moduleId))
        .mapToLong(ModuleFigures::ownG)
        .sum();
  }

  private static <T> void check(
      List<T> entries,
      Function<T, String> id,
      Function<T, List<Figure>> figures,
      List<? extends EntryRanges> ranges) {
    Map<String, Map<String, Range>> byId = new LinkedHashMap<>();
    ranges.forEach(row -> byId.put(row.id(), row.byName()));
    assertThat(entries).extracting(id).containsExactlyInAnyOrderElementsOf(byId.keySet());
    List<String> outside = new ArrayList<>();
    for (T entry : entries) {
      Map<String, Range> row = byId.get(id.apply(entry));
      List<Figure> found = figures.apply(entry);
      assertThat(found)
          .as("figures of %s", id.apply(entry))
          .extracting(Figure::name)
          .allSatisfy(name -> assertThat(row).containsKey(name));
      assertThat(row.keySet())
          .as("ranges of %s", id.apply(entry))
          .isSubsetOf(found.stream().map(Figure::name).toList());
      for (Figure figure : found) {
        if (!row.get(figure.name()).holds(figure.value())) {
          outside.add(id.apply(entry) + ": " + figure + " outside " + row.get(figure.name()));
        }
      }
    }
    assertThat(outside).isEmpty();
  }
}
