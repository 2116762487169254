package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;

/** No two items share volume. */
final class NoOverlap implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.geometry(RuleId.NO_OVERLAP, "no two items share volume", "");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    List<PlacedItem> items = new ArrayList<>(loading.placed().values());
    for (int i = 0; i < items.size(); i++) {
      for (int j = i + 1; j < items.size(); j++) {
        PlacedItem a = items.get(i);
        PlacedItem b = items.get(j);
        int depth = Boxes.overlapDepthMm(a.box(), b.box());
        if (depth > 0) {
          breaches.add(
              new Breach(
                  RuleId.NO_OVERLAP,
                  Pairs.sorted(a, b),
                  "",
                  depth,
                  0.0,
                  "mm",
                  Names.both(loading, a, b) + " share volume",
                  "move one of them by " + depth + " mm"));
        }
      }
    }
    return breaches;
  }
}
