package kitstow.planner.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Door;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;
import org.junit.jupiter.api.Test;

/** What the canopies of the catalogue hold where no module stands. */
class EmptyCanopyTest {
  /** By how much the bays for deep modules on the left go over the middle. */
  private static final int DEEPER_THAN_HALF_MM = 50;

  private static final int STRUT_MM = 10;

  private static final List<CatalogueRig> RIGS = CatalogueRig.all(ShippedCatalogue.read());

  @Test
  void anEmptyCanopyIsOneSpaceOnEachSideAsLongAsItsDoor() {
    for (CatalogueRig parts : RIGS) {
      List<Space> spaces = inCanopy(fitted(parts, Map.of()));

      assertThat(spaces).as(parts.canopy().id()).hasSize(2);
      for (Space space : spaces) {
        Door door = doorOf(parts, space);
        int betweenStrutsMm = door.toMm() - door.fromMm() - STRUT_MM * door.struts().size();
        assertThat(space.box().lengthMm())
            .as(space.id())
            .isBetween(betweenStrutsMm - STRUT_MM, betweenStrutsMm);
        assertThat(space.ratings()).as(space.id()).isPresent();
      }
    }
  }

  @Test
  void aModuleOnOneSideLeavesTheOtherBaysOfItsSideAndAllOfTheOther() {
    for (CatalogueRig parts : RIGS) {
      Rig rig = fitted(parts, Map.of("side-drawer", "right-fore"));

      assertThat(ids(inCanopy(rig)))
          .as(parts.canopy().id())
          .contains("side-drawer/deck")
          .containsAnyOf("right-rear-tall", "right-mid-tall")
          .containsAnyOf("left-floor", "left-wide")
          .doesNotContain("right-floor", "right-fore", "left-fore", "left-mid");
    }
  }

  @Test
  void aBayOnWhoseFloorTheModuleOfAnotherStandsHoldsNothing() {
    Rig rig = fitted(canopyOf("canopy-1500"), Map.of("tool-drawer-frame", "left-wide"));

    assertThat(ids(inCanopy(rig)))
        .contains("left-mid", "left-aft", "right-floor")
        .doesNotContain("left-fore", "left-rear", "left-floor");
  }

  @Test
  void aShelfAcrossTheRearLeavesTheFloorBelowIt() {
    Rig rig = fitted(canopyOf("canopy-1700"), Map.of("fixed-shelf-1650", "rear-shelf"));

    assertThat(ids(inCanopy(rig)))
        .contains("left-fore", "left-mid", "left-aft", "left-tail", "right-floor-low")
        .doesNotContain("left-floor", "left-rear", "right-floor", "right-fore", "right-fore-tall");
  }

  @Test
  void noTwoOfTheSpacesLeftShareMuchRoom() {
    for (CatalogueRig parts : RIGS) {
      for (Map<String, String> bays :
          List.of(
              Map.<String, String>of(),
              Map.of("side-drawer", "right-fore"),
              Map.of("pantry-tower", "left-mid"),
              Map.of("pantry-tower", "left-mid", "side-drawer", "right-fore"))) {
        List<Space> spaces = inCanopy(fitted(parts, bays));
        for (Space one : spaces) {
          for (Space other : spaces) {
            assertThat(one.equals(other) ? 0 : Boxes.overlapDepthMm(one.box(), other.box()))
                .as("%s and %s of %s", one.id(), other.id(), parts.canopy().id())
                .isLessThanOrEqualTo(DEEPER_THAN_HALF_MM);
          }
        }
      }
    }
  }

  private static Door doorOf(CatalogueRig parts, Space space) {
    return parts.canopy().doors().stream()
        .filter(door -> space.doorIds().contains(door.id()))
        .findFirst()
        .orElseThrow();
  }

  private static CatalogueRig canopyOf(String id) {
    return RIGS.stream().filter(parts -> parts.canopy().id().equals(id)).findFirst().orElseThrow();
  }

  private static Rig fitted(CatalogueRig parts, Map<String, String> bays) {
    return parts.with(bays);
  }

  private static List<Space> inCanopy(Rig rig) {
    List<Space> spaces = new ArrayList<>();
    for (Space space : rig.spaces().values()) {
      if (space.zone() == Zone.CANOPY) {
        spaces.add(space);
      }
    }
    return spaces;
  }

  private static List<String> ids(List<Space> spaces) {
    return spaces.stream().map(Space::id).toList();
  }
}
