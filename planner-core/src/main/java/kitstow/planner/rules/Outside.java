package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Mark;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.OutsideAir;

/** Items that give off vapours and ride where these stay in. */
final class Outside {
  private Outside() {}

  /** Every item with a mark that is neither in the open nor vented to it. */
  static List<Breach> breaches(RuleId rule, Mark mark, Loading loading) {
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (item.item().marks().contains(mark) && !OutsideAir.has(item.space())) {
        breaches.add(
            new Breach(
                rule,
                List.of(item.key(), item.space().id()),
                "",
                1.0,
                0.0,
                "place",
                Names.placed(loading, item) + " is not in the open or in a vented locker",
                "put it in an open-air space or a sealed locker vented outside"));
      }
    }
    return breaches;
  }
}
