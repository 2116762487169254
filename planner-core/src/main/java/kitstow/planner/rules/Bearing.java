package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.Contacts;
import kitstow.planner.packing.LoadPath;

/** What an item carries on top stays within what it may carry, in every state. */
final class Bearing implements PlanRule {
  /** Shares are fractions; masses resolve to a gram. */
  private static final double HALF_A_GRAM = 0.5;

  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.BEARING,
        "what an item carries on top stays within what it may carry",
        "",
        /* overridable= */ false);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (List<Contacts> contacts : situation.contactsBySpace().values()) {
      LoadPath path = LoadPath.of(contacts);
      Map<String, Breach> worst = new LinkedHashMap<>();
      for (LoadState state : situation.judgedStates()) {
        Map<String, Double> carried =
            path.carriedG(item -> state.massG(loading.indexOf(item.key())));
        for (Contacts one : contacts) {
          Item item = one.item().item();
          double loadG = carried.getOrDefault(one.item().key(), 0.0);
          if (item.bearsG() > 0L && loadG > item.bearsG() + HALF_A_GRAM) {
            Breach breach = breach(loading, one.item(), state, loadG);
            worst.merge(
                one.item().key(), breach, (old, now) -> now.value() > old.value() ? now : old);
          }
        }
      }
      breaches.addAll(worst.values());
    }
    return breaches;
  }

  private static Breach breach(Loading loading, PlacedItem item, LoadState state, double loadG) {
    double overKg = (loadG - item.item().bearsG()) / 1000.0;
    return new Breach(
        RuleId.BEARING,
        List.of(item.key()),
        state.id(),
        loadG / 1000.0,
        item.item().bearsG() / 1000.0,
        "kg",
        Names.placed(loading, item) + " carries more on top than it may",
        "take at least " + Math.ceil(overKg * 10.0) / 10.0 + " kg off it");
  }
}
