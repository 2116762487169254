package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.Room;

/** An item lies inside its space; on bars it may project as far as the space allows. */
final class InsideSpace implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.geometry(RuleId.INSIDE_SPACE, "an item lies inside its space", "");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      int out = Boxes.protrusionMm(item.box(), Room.of(item.space()));
      if (out > 0) {
        breaches.add(
            new Breach(
                RuleId.INSIDE_SPACE,
                List.of(item.key(), item.space().id()),
                "",
                out,
                0.0,
                "mm",
                Names.unit(item) + " reaches out of " + Names.space(loading, item.space()),
                "move it " + out + " mm inward, turn it, or choose a larger space"));
      }
    }
    return breaches;
  }
}
