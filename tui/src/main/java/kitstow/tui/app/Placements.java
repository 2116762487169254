package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Pin;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;
import kitstow.tui.edit.Design;

/** Designs with one unit elsewhere. */
final class Placements {
  private Placements() {}

  /** With a unit in another place; it is packed last in the plan. */
  static Design with(Design design, Placement placement) {
    LoadPlan plan = without(design, placement.itemId(), placement.unit()).plan();
    List<Placement> placements = new ArrayList<>(plan.placements());
    placements.add(placement);
    return design.with(byHand(plan, placements));
  }

  /** With a unit at home. */
  static Design without(Design design, String itemId, int unit) {
    List<Placement> rest = new ArrayList<>();
    for (Placement placement : design.plan().placements()) {
      if (!placement.itemId().equals(itemId) || placement.unit() != unit) {
        rest.add(placement);
      }
    }
    return design.with(byHand(design.plan(), rest));
  }

  private static LoadPlan byHand(LoadPlan plan, List<Placement> placements) {
    return new LoadPlan(plan.scenarioId(), plan.moduleBays(), placements, LoadPlan.Origin.HAND);
  }

  /** A placement at another corner of the vehicle frame. */
  static Placement at(PlacedItem item, BoxMm box) {
    Placement now = item.placement();
    BoxMm space = item.space().box();
    return new Placement(
        now.itemId(),
        now.unit(),
        now.spaceId(),
        now.shape(),
        now.turn(),
        new SpacePointMm(
            box.minXMm() - space.minXMm(),
            box.minYMm() - space.minYMm(),
            box.minZMm() - space.minZMm()));
  }

  /** The next way a unit may stand, at the same corner as far as its space allows. */
  static Optional<Placement> turned(PlacedItem item) {
    Item of = item.item();
    List<Placement> ways = new ArrayList<>();
    int at = 0;
    for (int shape = 0; shape < of.shapes().size(); shape++) {
      for (Turn turn : Turn.values()) {
        if (of.turns().contains(turn)) {
          if (shape == item.placement().shape() && turn == item.placement().turn()) {
            at = ways.size();
          }
          ways.add(within(item, shape, turn));
        }
      }
    }
    return ways.size() < 2 ? Optional.empty() : Optional.of(ways.get((at + 1) % ways.size()));
  }

  private static Placement within(PlacedItem item, int shape, Turn turn) {
    Placement now = item.placement();
    SizeMm size = turn.applyTo(item.item().shapes().get(shape));
    BoxMm space = item.space().box();
    SpacePointMm corner = now.corner();
    return new Placement(
        now.itemId(),
        now.unit(),
        now.spaceId(),
        shape,
        turn,
        new SpacePointMm(
            Math.max(0, Math.min(corner.xMm(), space.lengthMm() - size.lengthMm())),
            Math.max(0, Math.min(corner.yMm(), space.widthMm() - size.widthMm())),
            corner.zMm()));
  }

  /** With an item pinned or no more. */
  static Design pinned(Design design, String itemId, Optional<Pin> pin) {
    List<Item> items = new ArrayList<>();
    for (Item item : design.scenario().items()) {
      items.add(item.id().equals(itemId) ? item.pinned(pin) : item);
    }
    Scenario scenario = design.scenario().withItems(items);
    return new Design(scenario, design.plan());
  }

  /** The only space in which units of an item stand; none if there are several or none. */
  static Optional<Space> onlySpace(Loading loading, Item item) {
    Space only = null;
    for (PlacedItem placed : loading.placed().values()) {
      if (placed.item().id().equals(item.id())) {
        if (only != null && !only.id().equals(placed.space().id())) {
          return Optional.empty();
        }
        only = placed.space();
      }
    }
    return Optional.ofNullable(only);
  }
}
