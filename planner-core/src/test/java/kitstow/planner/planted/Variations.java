package kitstow.planner.planted;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;

/** Sound plans made from sound plans: some gear left home, limits brought right up to the load. */
final class Variations {
  private Variations() {}

  static SoundPlan of(SoundPlan base, Random random) {
    SoundPlan lighter = base;
    int left = random.nextInt(8);
    for (int i = 0; i < left; i++) {
      lighter = withoutOneFromTheTop(lighter, random);
    }
    return MassFaults.atTheLimit(lighter);
  }

  /** Leaves something home on which nothing stands. */
  private static SoundPlan withoutOneFromTheTop(SoundPlan plan, Random random) {
    Loading loading = plan.loading();
    List<PlacedItem> free = new ArrayList<>();
    for (PlacedItem item : loading.placed().values()) {
      boolean bearsNothing =
          loading.in(item.space().id()).stream()
              .noneMatch(
                  other ->
                      other.box().minZMm() == item.box().maxZMm()
                          && Edit.over(other.box(), item.box()));
      if (bearsNothing) {
        free.add(item);
      }
    }
    PlacedItem home = free.get(random.nextInt(free.size()));
    List<Placement> placements = new ArrayList<>(plan.plan().placements());
    placements.remove(home.placement());
    return new SoundPlan(
        plan.scenario(),
        new LoadPlan(
            plan.plan().scenarioId(), plan.plan().moduleBays(), placements, plan.plan().origin()));
  }
}
