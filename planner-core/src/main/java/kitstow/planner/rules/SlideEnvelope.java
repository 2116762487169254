package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Zone;
import kitstow.planner.packing.SlideTravel;

/** What pulls out, with its tallest content, clears sill, head, jambs and struts of its door. */
final class SlideEnvelope implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.geometry(
        RuleId.SLIDE_ENVELOPE, "what pulls out passes its door with its tallest content", "");
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (FittedModule fitted : loading.rig().modules().values()) {
      if (!fitted.module().slide().isPresent()) {
        continue;
      }
      String firstDoor = "";
      int least = Integer.MAX_VALUE;
      for (String doorId : fitted.bay().doorIds()) {
        FittedDoor door = loading.rig().doors().get(doorId);
        if (door != null && door.door().side() == fitted.bay().facing()) {
          firstDoor = firstDoor.isEmpty() ? doorId : firstDoor;
          int foul = SlideTravel.foulMm(SlideTravel.envelope(loading, fitted), door);
          least = Math.min(least, foul);
        }
      }
      if (firstDoor.isEmpty() && fitted.bay().zone() == Zone.CANOPY) {
        breaches.add(
            new Breach(
                RuleId.SLIDE_ENVELOPE,
                List.of(fitted.module().id(), fitted.bay().id()),
                "",
                1.0,
                0.0,
                "wall",
                fitted.module().title() + " pulls out where the canopy has no door",
                "choose a bay behind a door"));
      }
      if (!firstDoor.isEmpty() && least > 0) {
        breaches.add(
            new Breach(
                RuleId.SLIDE_ENVELOPE,
                List.of(fitted.module().id(), firstDoor),
                "",
                least,
                0.0,
                "mm",
                fitted.module().title() + " fouls door " + firstDoor + " when pulled out",
                "bring its envelope or its tallest content " + least + " mm inside the opening"));
      }
    }
    return breaches;
  }
}
