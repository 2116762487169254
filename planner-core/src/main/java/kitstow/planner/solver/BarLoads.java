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
  /** Overload by bar in its worst state, grams rounded up. */
  Map<String, Long> overG(List<PlacedItem> placed, StateTable table) {
    Map<String, Long> over = new LinkedHashMap<>();
    Map<String, long[]> loads = new LinkedHashMap<>();
    Map<String, RoofBars.Bar> bars = new LinkedHashMap<>();
    for (PlacedItem item : placed) {
      Space space = item.space();
      if (!space.bars().isPresent()) {
        continue;
      }
      for (BarCarriage.Share share : BarCarriage.shares(item.box(), space, space.bars().get())) {
        String key = RuleId.BAR_LIMIT + " " + space.id() + ":" + share.bar().id();
        bars.put(key, share.bar());
        long[] load = loads.computeIfAbsent(key, k -> new long[table.states().size()]);
        for (int s = 0; s < load.length; s++) {
          load[s] += share.parts() * table.massG(item, s);
        }
      }
    }
    for (Map.Entry<String, long[]> entry : loads.entrySet()) {
      RoofBars.Bar bar = bars.get(entry.getKey());
      long[] load = entry.getValue();
      for (int s = 0; s < load.length && bar != null; s++) {
        LoadState state = table.states().get(s);
        long limitG = bar.ratings().inG(state.kind(), state.surface());
        long excess = load[s] - limitG * BarCarriage.SHARE_PARTS;
        if (excess > BarCarriage.SHARE_PARTS / 2L) {
          long grams = (excess + BarCarriage.SHARE_PARTS - 1L) / BarCarriage.SHARE_PARTS;
          over.merge(entry.getKey(), grams, Math::max);
        }
      }
    }
    return over;
  }
}
