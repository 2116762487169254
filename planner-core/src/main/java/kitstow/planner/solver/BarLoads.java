package kitstow.planner.solver;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.packing.BarCarriage;

/** Overloads of single bars, where the place of an item on them matters. */
final class BarLoads {
  private static final double HALF_A_GRAM = 0.5;

  /** Overload by bar in its worst state, grams rounded up. */
  Map<String, Long> overG(List<PlacedItem> placed, StateTable table) {
    Map<String, Long> over = new LinkedHashMap<>();
    Map<String, double[]> loads = new LinkedHashMap<>();
    Map<String, RoofBars.Bar> bars = new LinkedHashMap<>();
    for (PlacedItem item : placed) {
      Space space = item.space();
      if (!space.bars().isPresent()) {
        continue;
      }
      for (BarCarriage.Share share : BarCarriage.shares(item.box(), space, space.bars().get())) {
        String key = RuleId.BAR_LIMIT + " " + space.id() + ":" + share.bar().id();
        bars.put(key, share.bar());
        double[] load = loads.computeIfAbsent(key, k -> new double[table.states().size()]);
        for (int s = 0; s < load.length; s++) {
          load[s] += share.ratio() * table.massG(item, s);
        }
      }
    }
    for (Map.Entry<String, double[]> entry : loads.entrySet()) {
      RoofBars.Bar bar = bars.get(entry.getKey());
      double[] load = entry.getValue();
      for (int s = 0; s < load.length && bar != null; s++) {
        LoadState state = table.states().get(s);
        double excess = load[s] - bar.ratings().inG(state.kind(), state.surface());
        if (excess > HALF_A_GRAM) {
          over.merge(entry.getKey(), (long) Math.ceil(excess - HALF_A_GRAM), Math::max);
        }
      }
    }
    return over;
  }
}
