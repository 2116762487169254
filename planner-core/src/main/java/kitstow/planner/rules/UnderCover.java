package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.Cover;

/** What must stay dry rides under cover: in the cab, the canopy or a closed box. */
final class UnderCover implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.UNDER_COVER, "what must stay dry rides under cover", "", /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (Cover.lacking(item.item(), item.space())) {
        breaches.add(
            new Breach(
                RuleId.UNDER_COVER,
                List.of(item.key(), item.space().id()),
                "",
                1.0,
                0.0,
                "place",
                Names.placed(loading, item) + " must stay dry but is in the open",
                "put it in the cab, the canopy or a closed box"));
      }
    }
    return breaches;
  }
}
