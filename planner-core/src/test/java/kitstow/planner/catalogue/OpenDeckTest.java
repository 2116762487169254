package kitstow.planner.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Environment;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;
import org.junit.jupiter.api.Test;

/** What the trays of the catalogue hold where nothing stands on them. */
class OpenDeckTest {
  private static final List<CatalogueRig> RIGS = CatalogueRig.all(ShippedCatalogue.read());

  @Test
  void thereAreRigs() {
    assertThat(RIGS).hasSizeGreaterThanOrEqualTo(12);
  }

  @Test
  void aBareTrayIsOneSpaceOnEachSideUpToTheHeightOfItsHeadboard() {
    for (CatalogueRig parts : RIGS) {
      List<Space> deck = onDeck(parts.withoutCanopy(Map.of()));

      assertThat(deck).extracting(Space::id).containsExactly("open-deck-left", "open-deck-right");
      for (Space space : deck) {
        assertThat(space.box().lengthMm()).isEqualTo(parts.tray().size().lengthMm());
        assertThat(space.box().minZMm()).isEqualTo(parts.tray().deckZMm());
        assertThat(space.box().heightMm()).isEqualTo(parts.tray().headboardHeightMm());
        assertThat(space.environment()).contains(Environment.OPEN_AIR);
        assertThat(space.ratings()).isPresent();
      }
      assertThat(Boxes.overlap(deck.get(0).box(), deck.get(1).box())).isFalse();
    }
  }

  @Test
  void underACanopyThereIsNoOpenDeck() {
    for (CatalogueRig parts : RIGS) {
      assertThat(onDeck(parts.with(Map.of()))).isEmpty();
    }
  }

  @Test
  void aModuleByTheHeadboardLeavesTheDeckBehindItAndAllOfTheOtherSide() {
    for (CatalogueRig parts : RIGS) {
      Rig rig = parts.withoutCanopy(Map.of("headboard-water-tank", "headboard-left-low"));

      assertThat(onDeck(rig))
          .extracting(Space::id)
          .containsExactly("open-deck-right", "open-deck-left-rear");
      assertClear(rig);
    }
  }

  @Test
  void aModuleInTheSecondRowLeavesTheDeckBehindThat() {
    int rigs = 0;
    for (CatalogueRig parts : RIGS) {
      if (parts.tray().bays().stream().anyMatch(bay -> bay.id().equals("gap-right-low"))) {
        rigs++;
        Rig rig = parts.withoutCanopy(Map.of("headboard-water-tank", "gap-right-low"));

        assertThat(onDeck(rig))
            .extracting(Space::id)
            .containsExactly("open-deck-left", "open-deck-right-aft");
        assertClear(rig);
      }
    }
    assertThat(rigs).isPositive();
  }

  private static void assertClear(Rig rig) {
    for (Space space : onDeck(rig)) {
      for (FittedModule module : rig.modules().values()) {
        assertThat(Boxes.overlap(space.box(), module.box())).as(space.id()).isFalse();
      }
    }
  }

  private static List<Space> onDeck(Rig rig) {
    List<Space> spaces = new ArrayList<>();
    for (Space space : rig.spaces().values()) {
      if (space.hostId().equals(Rig.TRAY)) {
        spaces.add(space);
      }
    }
    return spaces;
  }
}
