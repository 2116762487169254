package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Stop;
import kitstow.planner.packing.StopDoors;

/** Emergency gear comes out wherever the scenario says that the ute may come to a stand. */
final class StopReach implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.STOP_REACH,
        "emergency gear comes out where doors stay shut: bogged, in traffic",
        "stops, none",
        /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    int clearanceMm = situation.settings().apertureClearanceMm();
    List<Breach> breaches = new ArrayList<>();
    for (Stop stop : loading.scenario().stops()) {
      StopDoors doors = StopDoors.at(stop, loading.rig());
      for (PlacedItem item : loading.placed().values()) {
        if (item.item().reach() == Reach.EMERGENCY
            && !doors.letOut(item.space(), item.box(), clearanceMm)) {
          breaches.add(breach(loading, stop, item));
        }
      }
    }
    return breaches;
  }

  private static Breach breach(Loading loading, Stop stop, PlacedItem item) {
    return new Breach(
        RuleId.STOP_REACH,
        List.of(item.key(), stop.id()),
        "",
        1.0,
        0.0,
        "place",
        Names.placed(loading, item)
            + " does not come out at this stop: "
            + stop.title()
            + ". What lets it out stays shut there",
        "put it behind a door that opens there, in the open or in the cab");
  }
}
