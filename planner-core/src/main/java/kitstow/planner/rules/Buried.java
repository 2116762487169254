package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.WayOut;

/** Items that come out only after others. */
final class Buried {
  private Buried() {}

  /** Every item of some classes of reach before which something else must be moved. */
  static List<Breach> breaches(RuleId rule, Set<Reach> asked, Loading loading) {
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      List<PlacedItem> first =
          asked.contains(item.item().reach())
              ? WayOut.toMoveFirst(item, loading.in(item.space().id()))
              : List.of();
      if (!first.isEmpty()) {
        breaches.add(
            new Breach(
                rule,
                List.of(item.key()),
                "",
                first.size(),
                0.0,
                "things",
                Names.placed(loading, item) + " comes out only after " + Names.of(first),
                "swap it with " + Names.unit(first.get(0))));
      }
    }
    return breaches;
  }
}
