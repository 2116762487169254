package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.BarCarriage;

/**
 * An item on bars has its centre over them: between two beneath it, or on a platform between the
 * first and the last.
 */
final class TwoBars implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.TWO_BARS,
        "an item on bars has its centre between two of them",
        "",
        /* overridable= */ false);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (!item.space().bars().isPresent()) {
        continue;
      }
      RoofBars bars = item.space().bars().get();
      if (!BarCarriage.carried(item.box(), item.space(), bars)) {
        breaches.add(
            new Breach(
                RuleId.TWO_BARS,
                List.of(item.key()),
                "",
                BarCarriage.beneath(item.box(), item.space(), bars).size(),
                2.0,
                "bars",
                Names.placed(loading, item) + " does not have its centre between two bars",
                "lay it across two bars"));
      }
    }
    return breaches;
  }
}
