package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;

/**
 * Nothing stands in the column above an item that may carry nothing, nor above anything on bare
 * bars.
 */
final class ClearColumn implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.geometry(
        RuleId.CLEAR_COLUMN, "the column above an item that may carry nothing stays clear", "");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (Space space : loading.rig().spaces().values()) {
      boolean bareBars = !Situation.standsOnFloor(space);
      for (PlacedItem item : loading.in(space.id())) {
        if (!bareBars && item.item().bearsG() > 0L) {
          continue;
        }
        for (PlacedItem above : loading.in(space.id())) {
          if (!above.is(item)
              && above.box().minZMm() >= item.box().maxZMm()
              && Boxes.footprintOverlapMm2(item.box(), above.box()) > 0L) {
            breaches.add(
                new Breach(
                    RuleId.CLEAR_COLUMN,
                    List.of(item.key(), above.key()),
                    "",
                    above.box().minZMm() - item.box().maxZMm(),
                    0.0,
                    "mm",
                    Names.unit(above) + " stands over " + Names.placed(loading, item),
                    "move " + Names.unit(above) + " beside it"));
          }
        }
      }
    }
    return breaches;
  }
}
