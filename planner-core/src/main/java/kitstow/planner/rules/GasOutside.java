package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Mark;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.OutsideAir;

/** Gas rides in the open or in a locker sealed from the box and vented outside. */
final class GasOutside implements PlanRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.GAS_OUTSIDE,
        "gas rides in the open or in a sealed locker vented outside",
        "AS/NZS 5601.2 as told by Energy Safe Victoria [S94]; state guidance [S97, S98]",
        SourceStatus.READ_SECOND_HAND,
        "",
        /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (item.item().marks().contains(Mark.GAS) && !OutsideAir.has(item.space())) {
        breaches.add(
            new Breach(
                RuleId.GAS_OUTSIDE,
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
