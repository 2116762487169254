package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.DoorPassage;

/** An item of a fixed space passes a door of that space, straight in along its access axis. */
final class DoorAperture implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.DOOR_APERTURE,
        "an item passes the door of its space",
        "apertureClearanceMm 10",
        /* overridable= */ false);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    int clearance = situation.settings().apertureClearanceMm();
    for (PlacedItem item : loading.placed().values()) {
      int over = DoorPassage.shortMm(loading.rig(), item.space(), item.box(), clearance);
      if (over > 0) {
        breaches.add(
            new Breach(
                RuleId.DOOR_APERTURE,
                List.of(item.key(), item.space().id()),
                "",
                over,
                0.0,
                "mm",
                Names.unit(item)
                    + " does not pass the door of "
                    + Names.space(loading, item.space()),
                "turn it or choose a space behind a larger door"));
      }
    }
    return breaches;
  }
}
