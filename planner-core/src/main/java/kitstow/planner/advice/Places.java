package kitstow.planner.advice;

import java.util.Collection;
import java.util.Optional;
import kitstow.planner.model.Item;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;
import kitstow.planner.packing.Decoder;
import kitstow.planner.packing.Wanted;

/** Places for single units while all else stays where it is. */
final class Places {
  private final Decoder decoder;

  Places(Rig rig) {
    this.decoder = new Decoder(rig);
  }

  /** The best place of a unit in a space with others where they are. */
  Optional<PlacedItem> find(Item item, int unit, Space space, Collection<PlacedItem> others) {
    return decoder.among(others, Wanted.of(item, unit), space).place();
  }
}
