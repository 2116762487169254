package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;

/** An item stands as it may stand. */
final class TurnAllowed implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.geometry(RuleId.TURN_ALLOWED, "an item stands only as it may", "");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (!item.item().turns().contains(item.placement().turn())) {
        breaches.add(
            new Breach(
                RuleId.TURN_ALLOWED,
                List.of(item.key()),
                "",
                1.0,
                0.0,
                "turn",
                item.item().title() + " may not stand as " + item.placement().turn(),
                "stand it as one of " + new TreeSet<>(item.item().turns())));
      }
    }
    return breaches;
  }
}
