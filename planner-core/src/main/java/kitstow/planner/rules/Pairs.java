package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.Company;

/** Two items that a rule of company finds together. */
final class Pairs {
  private Pairs() {}

  /** Card of a rule about pairs. */
  static RuleCard card(RuleId rule, String title) {
    return new RuleCard(
        rule,
        title,
        "common practice; gas and petrol rows after state guidance on cylinders and petrol"
            + " containers [S97, S98, S100]",
        SourceStatus.COMMON_PRACTICE,
        "",
        /* overridable= */ true);
  }

  /**
   * Every two items that break a rule.
   *
   * @param together the pair of marks for which two items had better be apart, if any
   */
  static List<Breach> breaches(
      RuleId rule,
      Loading loading,
      BiFunction<PlacedItem, PlacedItem, Optional<Company.Pair>> together) {
    List<Breach> breaches = new ArrayList<>();
    List<PlacedItem> items = new ArrayList<>(loading.placed().values());
    for (int i = 0; i < items.size(); i++) {
      for (int j = i + 1; j < items.size(); j++) {
        PlacedItem a = items.get(i);
        PlacedItem b = items.get(j);
        Optional<Company.Pair> pair = together.apply(a, b);
        if (pair.isPresent()) {
          breaches.add(
              new Breach(
                  rule,
                  sorted(a, b),
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

  /** Two items as subjects, in the order of their keys. */
  static List<String> sorted(PlacedItem a, PlacedItem b) {
    return a.key().compareTo(b.key()) <= 0 ? List.of(a.key(), b.key()) : List.of(b.key(), a.key());
  }
}
