package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.packing.Decoder;
import kitstow.planner.packing.Wanted;

/**
 * Where one unit would go, everything else staying where it is: the first place in a space, forward
 * and low first, at which it breaks no rule of place, company or emergency reach. Mass limits are
 * not asked.
 */
public final class Spots {
  private final Loading others;
  private final Wanted wanted;
  private final Decoder decoder;

  private Spots(Loading others, Wanted wanted) {
    this.others = others;
    this.wanted = wanted;
    this.decoder = new Decoder(others.rig());
  }

  /**
   * Spots of a unit, whether it is aboard or at home.
   *
   * @throws IllegalArgumentException if the scenario has no such unit
   */
  public static Spots of(Scenario scenario, LoadPlan plan, String itemId, int unit) {
    for (Item item : scenario.items()) {
      if (item.id().equals(itemId) && unit >= 1 && unit <= item.quantity()) {
        return new Spots(Loading.of(scenario, without(plan, itemId, unit)), Wanted.of(item, unit));
      }
    }
    throw new IllegalArgumentException("no such unit: " + itemId + " " + unit);
  }

  private static LoadPlan without(LoadPlan plan, String itemId, int unit) {
    List<Placement> rest = new ArrayList<>();
    for (Placement placement : plan.placements()) {
      if (!placement.itemId().equals(itemId) || placement.unit() != unit) {
        rest.add(placement);
      }
    }
    return new LoadPlan(plan.scenarioId(), plan.moduleBays(), rest, plan.origin());
  }

  /** The place in a space; none if there is none, or no such space. */
  public Optional<Placement> in(String spaceId) {
    return found(spaceId).map(PlacedItem::placement);
  }

  /** The place of all spaces that is farthest forward and lowest. */
  public Optional<Placement> best() {
    PlacedItem best = null;
    double least = Double.MAX_VALUE;
    for (Space space : others.rig().spaces().values()) {
      Optional<PlacedItem> found = found(space.id());
      if (found.isPresent()) {
        double cost = decoder.cost(found.get().box(), space);
        if (cost < least) {
          least = cost;
          best = found.get();
        }
      }
    }
    return Optional.ofNullable(best).map(PlacedItem::placement);
  }

  private Optional<PlacedItem> found(String spaceId) {
    Space space = others.rig().spaces().get(spaceId);
    return space == null
        ? Optional.empty()
        : decoder.among(others.placed().values(), wanted, space).place();
  }
}
