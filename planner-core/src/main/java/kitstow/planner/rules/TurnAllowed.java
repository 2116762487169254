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
    return new RuleCard(
        RuleId.TURN_ALLOWED,
        "an item stands only as it may",
        "the gear list",
        SourceStatus.BY_DEFINITION,
        "",
        /* overridable= */ false);
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
                Names.placed(loading, item) + " may not stand as " + item.placement().turn(),
                "stand it as one of " + new TreeSet<>(item.item().turns())));
      }
    }
    return breaches;
  }
}
