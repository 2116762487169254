package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.Company;

/** Two items that had better not share a space or its air. */
final class PoorCompany implements PlanRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.POOR_COMPANY,
        "what had better not ride together",
        "common practice; gas and petrol rows after state guidance on cylinders and petrol"
            + " containers [S97, S98, S100]",
        SourceStatus.COMMON_PRACTICE,
        "",
        true);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    List<PlacedItem> items = new ArrayList<>(loading.placed().values());
    for (int i = 0; i < items.size(); i++) {
      for (int j = i + 1; j < items.size(); j++) {
        PlacedItem a = items.get(i);
        PlacedItem b = items.get(j);
        Optional<Company.Pair> pair = Company.softPair(a, b);
        if (pair.isPresent()) {
          breaches.add(
              new Breach(
                  RuleId.POOR_COMPANY,
                  Pairs.sorted(a, b),
                  "",
                  1.0,
                  0.0,
                  "pair",
                  Names.both(loading, a, b) + ": " + pair.get().text(),
                  "put one of them in a space " + pair.get().apart()));
        }
      }
    }
    return breaches;
  }
}
