package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.RuleId;

/** What must come along is along. */
final class MustTake implements PlanRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.MUST_TAKE,
        "what must come along is along",
        "the gear list",
        SourceStatus.BY_DEFINITION,
        "",
        /* overridable= */ false);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    Loading loading = situation.loading();
    List<Breach> breaches = new ArrayList<>();
    for (Item item : loading.scenario().items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        if (item.need() == Need.MUST && loading.home().contains(item.keyOf(unit))) {
          breaches.add(breach(item.keyOf(unit), item.title()));
        }
      }
    }
    for (ModuleChoice choice : loading.scenario().modules()) {
      String id = choice.module().id();
      if (choice.need() == Need.MUST && !loading.rig().modules().containsKey(id)) {
        breaches.add(breach(id, choice.module().title()));
      }
    }
    return breaches;
  }

  private static Breach breach(String key, String title) {
    return new Breach(
        RuleId.MUST_TAKE,
        List.of(key),
        "",
        1.0,
        0.0,
        "left home",
        title + " must come along and stays home",
        "make room for it or mark it as should or nice");
  }
}
