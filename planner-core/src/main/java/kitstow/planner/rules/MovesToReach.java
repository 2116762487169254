package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.WayOut;

/** Things to move before daily gear comes out. */
final class MovesToReach implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.MOVES_TO_REACH,
        "things to move before daily gear comes out",
        "",
        /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      boolean asked = item.item().reach() == Reach.MANY_A_DAY || item.item().reach() == Reach.DAILY;
      List<PlacedItem> first =
          asked ? WayOut.toMoveFirst(item, loading.in(item.space().id())) : List.of();
      if (!first.isEmpty()) {
        breaches.add(
            new Breach(
                RuleId.MOVES_TO_REACH,
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
