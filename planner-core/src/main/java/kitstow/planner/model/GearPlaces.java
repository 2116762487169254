package kitstow.planner.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;

/** The units of gear that a plan places, by key and by space, and those it leaves at home. */
final class GearPlaces {
  final Map<String, PlacedItem> placed = new LinkedHashMap<>();
  final Map<String, List<PlacedItem>> bySpace = new LinkedHashMap<>();
  final Set<String> home = new LinkedHashSet<>();

  private GearPlaces() {}

  /**
   * Carries out the placements of a plan.
   *
   * @throws IllegalArgumentException if it names a space, item, unit or shape that does not exist,
   *     or places a unit twice
   */
  static GearPlaces of(Scenario scenario, LoadPlan plan, Rig rig) {
    GearPlaces places = new GearPlaces();
    places.place(scenario, plan, rig);
    return places;
  }

  private void place(Scenario scenario, LoadPlan plan, Rig rig) {
    Map<String, Item> items = new LinkedHashMap<>();
    for (Item item : scenario.items()) {
      items.put(item.id(), item);
      for (int unit = 1; unit <= item.quantity(); unit++) {
        home.add(item.keyOf(unit));
      }
    }
    for (Space space : rig.spaces().values()) {
      bySpace.put(space.id(), new ArrayList<>());
    }
    for (Placement placement : plan.placements()) {
      Item item = items.get(placement.itemId());
      Space space = rig.spaces().get(placement.spaceId());
      List<PlacedItem> there = bySpace.get(placement.spaceId());
      if (item == null || space == null || there == null) {
        throw new IllegalArgumentException("no such item or space: " + placement);
      }
      if (placement.unit() < 1
          || placement.unit() > item.quantity()
          || placement.shape() < 0
          || placement.shape() >= item.shapes().size()
          || !home.remove(item.keyOf(placement.unit()))) {
        throw new IllegalArgumentException("no such unit or shape, or placed twice: " + placement);
      }
      SizeMm size = placement.turn().applyTo(item.shapes().get(placement.shape()));
      BoxMm box = BoxMm.at(space.pointAt(placement.corner()), size);
      String key = item.keyOf(placement.unit());
      PlacedItem one = new PlacedItem(item, placement.unit(), key, space, placement, box);
      placed.put(key, one);
      there.add(one);
    }
  }

  void addTo(BodyList bodies) {
    for (PlacedItem one : placed.values()) {
      Item item = one.item();
      long grownG =
          item.mass().massG()
              + item.growth().map(growth -> growth.upToG() + growth.wetG()).orElse(0L);
      KnownMass mass =
          new KnownMass(
              grownG,
              item.mass().source(),
              item.mass().massG() == 0L
                  ? item.mass().toleranceG()
                  : item.mass().toleranceG() * grownG / item.mass().massG());
      bodies.add(
          new Draft(one.key(), item.id(), BodyKind.ITEM, item.title(), one.box(), mass)
              .unit(item.quantity() == 1 ? 0 : one.unit())
              .spaceId(one.space().id())
              .toleranceKey("gear:" + item.entryId())
              .zone(Optional.of(one.space().zone()))
              .movesWith(one.space().movesWith())
              .inModules(one.space().inModules()));
    }
  }
}
