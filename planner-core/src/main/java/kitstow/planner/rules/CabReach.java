package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.CabPlace;

/** What must be at hand from a seat rides in the cab. */
final class CabReach implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.CAB_REACH,
        "what must be at hand from a seat rides in the cab",
        "",
        /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (CabPlace.lacking(item.item(), item.space())) {
        breaches.add(
            new Breach(
                RuleId.CAB_REACH,
                List.of(item.key(), item.space().id()),
                "",
                1.0,
                0.0,
                "place",
                Names.placed(loading, item) + " is out of reach from the seats",
                "put it in the cab"));
      }
    }
    return breaches;
  }
}
