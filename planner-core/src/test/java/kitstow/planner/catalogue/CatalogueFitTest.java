package kitstow.planner.catalogue;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Bay;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Door;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Zone;
import org.junit.jupiter.api.Test;

/** The entries of the shipped catalogue go together: modules into bays, bays between walls. */
class CatalogueFitTest {
  /** Half the diameter of a tyre of 840 mm and 30 mm to move in. */
  private static final int WHEEL_ROOM_MM = 450;

  /** Half the width of a tyre of 285 mm. */
  private static final int HALF_TYRE_MM = 143;

  private static final Catalogue CATALOGUE = ShippedCatalogue.read();

  private static final Map<String, FitOutModule> MODULES =
      CATALOGUE.modules().stream().collect(toMap(FitOutModule::id, Function.identity()));

  /** Frames whose bays take drawers, by the drawer's id. */
  private static final Map<String, String> FRAME_OF =
      Map.of(
          "drawer-insert", "drawer-pair-frame",
          "pantry-drawer-insert", "pantry-drawer-frame",
          "tool-drawer-insert", "tool-drawer-frame");

  /** Where modules belong that do not stand in a canopy. */
  private static final Map<String, Zone> ZONE_OF =
      Map.ofEntries(
          Map.entry("under-tray-box-front", Zone.UNDER_TRAY),
          Map.entry("under-tray-box-rear", Zone.UNDER_TRAY),
          Map.entry("trundle-drawer", Zone.UNDER_TRAY),
          Map.entry("underslung-water-tank", Zone.UNDER_TRAY),
          Map.entry("headboard-water-tank", Zone.TRAY),
          Map.entry("side-spare-pod", Zone.TRAY),
          Map.entry("fuel-can-holder", Zone.TRAY),
          Map.entry("gas-cylinder-holder", Zone.TRAY),
          Map.entry("ladder-rack", Zone.TRAY),
          Map.entry("rear-spare-carrier", Zone.REAR_CARRIER),
          Map.entry("cab-roof-platform", Zone.CAB_ROOF),
          Map.entry("canopy-roof-platform-1500", Zone.CANOPY_ROOF),
          Map.entry("canopy-roof-platform-1700", Zone.CANOPY_ROOF),
          Map.entry("crossbars-pair", Zone.CANOPY_ROOF),
          Map.entry("crossbars-three", Zone.CANOPY_ROOF),
          Map.entry("traction-board-bracket", Zone.CANOPY_ROOF));

  @Test
  void everyModuleStandsInABayOfItsZoneAndPullsOutThroughTheDoor() {
    Set<String> homeless = new TreeSet<>(MODULES.keySet());
    for (CatalogueRig parts : CatalogueRig.all(CATALOGUE)) {
      Rig empty = parts.with(List.of(), Map.of());
      homeless.removeIf(
          id ->
              !FRAME_OF.containsKey(id) && !baysThatTake(MODULES.get(id), parts, empty).isEmpty());
    }
    homeless.removeAll(FRAME_OF.keySet());
    assertThat(homeless).isEmpty();
  }

  @Test
  void everyDrawerStandsInEachBayOfItsFrame() {
    FRAME_OF.forEach(
        (drawerId, frameId) -> {
          CatalogueRig parts = rigWith("canopy-1700");
          FitOutModule frame = MODULES.get(frameId);
          FitOutModule drawer = MODULES.get(drawerId);
          String bay = baysThatTake(frame, parts, parts.with(List.of(), Map.of())).get(0);
          frame.bays().stream()
              .filter(spec -> spec.id().startsWith("drawer"))
              .forEach(
                  spec -> {
                    Rig rig =
                        parts.with(
                            List.of(frame, drawer),
                            Map.of(frameId, bay, drawerId, frameId + "/" + spec.id()));
                    FittedModule fitted = rig.modules().get(drawerId);
                    assertThat(inside(fitted.box(), fitted.bay().box())).isTrue();
                    assertThat(passesDoors(fitted, rig)).isTrue();
                  });
        });
  }

  @Test
  void fridgeAndPantryStandLeftAndDrawerUnderShelfRightInTheShortCanopy() {
    CatalogueRig parts = rigWith("canopy-1000");
    Map<String, String> bays =
        Map.of(
            "upright-fridge-bay", "left-fore",
            "pantry-tower", "left-mid",
            "side-drawer", "right-fore",
            "roof-shelf-940", "right-roof-shelf");
    Rig rig = parts.with(bays.keySet().stream().map(MODULES::get).toList(), bays);
    List<FittedModule> fitted = List.copyOf(rig.modules().values());
    for (FittedModule one : fitted) {
      assertThat(inside(one.box(), one.bay().box())).as(one.module().id()).isTrue();
      assertThat(passesDoors(one, rig)).as(one.module().id()).isTrue();
      for (FittedModule other : fitted) {
        assertThat(!one.equals(other) && Boxes.overlap(one.box(), other.box()))
            .as("%s and %s", one.module().id(), other.module().id())
            .isFalse();
      }
    }
    assertThat(rig.spaces().get("side-drawer/deck").box().maxZMm())
        .isLessThanOrEqualTo(rig.modules().get("roof-shelf-940").box().minZMm());
  }

  @Test
  void canopyBaysLieInsideAndDoorsInTheWalls() {
    for (CatalogueRig parts : CatalogueRig.all(CATALOGUE)) {
      Canopy canopy = parts.canopy();
      Rig rig = parts.with(List.of(), Map.of());
      BoxMm inside = insideOf(parts);
      for (Bay bay : rig.bays().values()) {
        if (bay.zone() == Zone.CANOPY) {
          assertThat(inside(bay.box(), inside)).as("%s of %s", bay.id(), canopy.id()).isTrue();
        }
      }
      for (Door door : canopy.doors()) {
        boolean rear = door.side() == Facing.REAR;
        int half = canopy.inside().size().widthMm() / 2;
        assertThat(door.fromMm()).isGreaterThanOrEqualTo(rear ? -half : 0);
        assertThat(door.toMm()).isLessThanOrEqualTo(rear ? half : canopy.size().lengthMm());
        assertThat(door.sillZMm()).isNotNegative();
        assertThat(door.headZMm()).isLessThanOrEqualTo(canopy.size().heightMm());
        for (Door.Strut strut : door.struts()) {
          assertThat(strut.fromMm()).isGreaterThanOrEqualTo(door.fromMm());
          assertThat(strut.toMm()).isLessThanOrEqualTo(door.toMm());
          assertThat(strut.lowerZMm()).isGreaterThanOrEqualTo(door.sillZMm());
          assertThat(strut.upperZMm()).isLessThanOrEqualTo(door.headZMm());
        }
      }
    }
  }

  @Test
  void baysUnderTheTrayLeaveTheWheelsTheirRoom() {
    for (CatalogueRig parts : CatalogueRig.all(CATALOGUE)) {
      int axleXMm = parts.ute().wheelbaseMm();
      int wheelYMm = parts.ute().rearTrackMm() / 2;
      for (Bay bay : parts.with(List.of(), Map.of()).bays().values()) {
        for (int side : new int[] {-1, 1}) {
          BoxMm wheel =
              new BoxMm(
                  axleXMm - WHEEL_ROOM_MM,
                  side * wheelYMm - HALF_TYRE_MM,
                  0,
                  axleXMm + WHEEL_ROOM_MM,
                  side * wheelYMm + HALF_TYRE_MM,
                  2 * WHEEL_ROOM_MM);
          assertThat(bay.zone() == Zone.UNDER_TRAY && Boxes.overlap(bay.box(), wheel))
              .as("%s of %s hits a wheel", bay.id(), parts.tray().id())
              .isFalse();
        }
      }
    }
  }

  @Test
  void rearAxleOfEveryTrayIsWhereTheTradeHasIt() {
    for (EntryRanges row : BodyRanges.rearAxles()) {
      row.byName()
          .values()
          .forEach(
              range ->
                  assertThat(range.holds(CatalogueRig.REAR_AXLE_MM.get(row.id())))
                      .as(row.id())
                      .isTrue());
    }
  }

  private static List<String> baysThatTake(FitOutModule module, CatalogueRig parts, Rig empty) {
    Zone zone = ZONE_OF.getOrDefault(module.id(), Zone.CANOPY);
    List<String> taking = new ArrayList<>();
    for (Bay bay : empty.bays().values()) {
      if (bay.zone() == zone) {
        Rig rig = parts.with(List.of(module), Map.of(module.id(), bay.id()));
        FittedModule fitted = rig.modules().get(module.id());
        if (inside(fitted.box(), bay.box()) && passesDoors(fitted, rig)) {
          taking.add(bay.id());
        }
      }
    }
    return taking;
  }

  private static boolean passesDoors(FittedModule fitted, Rig rig) {
    if (fitted.module().slide().isEmpty()) {
      return true;
    }
    BoxMm box = fitted.box();
    for (String doorId : fitted.bay().doorIds()) {
      FittedDoor door = rig.doors().get(doorId);
      boolean rear = fitted.bay().facing() == Facing.REAR;
      int fromMm = rear ? box.minYMm() : box.minXMm();
      int toMm = rear ? box.maxYMm() : box.maxXMm();
      boolean clear =
          fromMm >= door.fromMm()
              && toMm <= door.toMm()
              && box.minZMm() >= door.sillZMm()
              && box.maxZMm() <= door.headZMm();
      for (Door.Strut strut : door.struts()) {
        clear &=
            toMm <= strut.fromMm() || fromMm >= strut.toMm() || box.maxZMm() <= strut.lowerZMm();
      }
      if (!clear) {
        return false;
      }
    }
    return true;
  }

  private static boolean inside(BoxMm box, BoxMm room) {
    return box.minXMm() >= room.minXMm()
        && box.maxXMm() <= room.maxXMm()
        && box.minYMm() >= room.minYMm()
        && box.maxYMm() <= room.maxYMm()
        && box.minZMm() >= room.minZMm()
        && box.maxZMm() <= room.maxZMm();
  }

  private static BoxMm insideOf(CatalogueRig parts) {
    Canopy canopy = parts.canopy();
    int x = parts.tray().frontXMm() + canopy.fromTrayFrontMm() + canopy.inside().aMm();
    int z = parts.tray().deckZMm() + canopy.inside().cMm();
    return new BoxMm(
        x,
        canopy.inside().bMm(),
        z,
        x + canopy.inside().size().lengthMm(),
        canopy.inside().bMm() + canopy.inside().size().widthMm(),
        z + canopy.inside().size().heightMm());
  }

  private static CatalogueRig rigWith(String canopyId) {
    return CatalogueRig.all(CATALOGUE).stream()
        .filter(parts -> parts.canopy().id().equals(canopyId))
        .findFirst()
        .orElseThrow();
  }
}
