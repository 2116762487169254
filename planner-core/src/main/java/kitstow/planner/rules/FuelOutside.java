package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Mark;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.OutsideAir;

/** Fuel rides in the open or in a locker sealed from the box and vented outside. */
final class FuelOutside implements PlanRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.FUEL_OUTSIDE,
        "fuel rides in the open or in a sealed locker vented outside",
        "state guidance on petrol containers [S100, S101]",
        SourceStatus.READ,
        "",
        /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (item.item().marks().contains(Mark.FUEL) && !OutsideAir.has(item.space())) {
        breaches.add(
            new Breach(
                RuleId.FUEL_OUTSIDE,
                List.of(item.key(), item.space().id()),
                "",
                1.0,
                0.0,
                "place",
                Names.placed(loading, item) + " is not in the open or in a vented locker",
                "put it in an open-air space or a sealed locker vented outside"));
      }
    }
    return breaches;
  }
}
