package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Settings;
import kitstow.planner.packing.RoofLoad;

/**
 * A roof carries light gear and bulky gear; anything else is within the mass the settings allow,
 * full and with all it gains on the trip. The roof's own limit is judged apart.
 */
final class RoofGear implements PlanRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.ROOF_GEAR,
        "a roof carries light or bulky gear only",
        "common practice, no source; light bulky gear only also in a trade article, key T71",
        SourceStatus.COMMON_PRACTICE,
        "roofGearKg 12",
        /* overridable= */ true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    Settings settings = situation.settings();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (RoofLoad.excessG(item.item(), item.space(), settings) > 0L) {
        breaches.add(
            new Breach(
                RuleId.ROOF_GEAR,
                List.of(item.key(), item.space().id()),
                "",
                RoofLoad.heaviestG(item.item()) / 1000.0,
                settings.roofGearG() / 1000.0,
                "kg",
                Names.placed(loading, item)
                    + " is too heavy for a roof, where only bulky gear may be heavier than "
                    + settings.roofGearG() / 1000.0
                    + " kg",
                "put it lower, ahead of the rear axle; bulky things may go up instead"));
      }
    }
    return breaches;
  }
}
