package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Pin;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;

/** An item is where it is pinned. */
final class PinKept implements PlanRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.PIN_KEPT,
        "an item is where it is pinned",
        "the gear list",
        SourceStatus.BY_DEFINITION,
        "",
        /* overridable= */ false);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      if (!item.item().pin().isPresent()) {
        continue;
      }
      Pin pin = item.item().pin().get();
      boolean kept =
          pin.spaceId().equals(item.space().id())
              && pin.corner().map(item.placement().corner()::equals).orElse(true)
              && pin.turn().map(item.placement().turn()::equals).orElse(true);
      if (!kept) {
        breaches.add(
            new Breach(
                RuleId.PIN_KEPT,
                List.of(item.key()),
                "",
                1.0,
                0.0,
                "pin",
                Names.placed(loading, item) + " is not where it is pinned",
                "put it back in " + pin.spaceId() + " or take the pin off"));
      }
    }
    return breaches;
  }
}
