package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Item;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.packing.Decoder;
import kitstow.planner.packing.Wanted;

/** Places for single units while all else stays where it is. */
final class Places {
  private final Rig rig;
  private final Decoder decoder;

  Places(Rig rig) {
    this.rig = rig;
    this.decoder = new Decoder(rig);
  }

  /** The best place of a unit in a space with others where they are. */
  Optional<PlacedItem> find(Item item, int unit, Space space, Collection<PlacedItem> others) {
    List<Space> spaces = new ArrayList<>();
    for (Space one : rig.spaces().values()) {
      if (!one.id().equals(space.id())) {
        spaces.add(one);
      }
    }
    spaces.add(space);
    Map<String, List<Wanted>> order = new LinkedHashMap<>();
    List<Decoder.Step> fixed = new ArrayList<>();
    for (Space one : spaces) {
      List<Wanted> here = new ArrayList<>();
      for (PlacedItem other : others) {
        if (other.space().id().equals(one.id())) {
          Wanted there = Wanted.of(other.item(), other.unit());
          here.add(there);
          fixed.add(new Decoder.Step(there, one.id(), Optional.of(other), RuleId.INSIDE_SPACE));
        }
      }
      order.put(one.id(), here);
    }
    order.computeIfAbsent(space.id(), id -> new ArrayList<>()).add(Wanted.of(item, unit));
    List<Decoder.Step> steps =
        decoder.decode(spaces, order, new Decoder.Decoded(List.of(), Map.of(), fixed)).steps();
    return steps.get(steps.size() - 1).place();
  }
}
