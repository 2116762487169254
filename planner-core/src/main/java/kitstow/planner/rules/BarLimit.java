package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.packing.BarCarriage;
import kitstow.planner.statics.LoadLine;

/** Load on one bar of a roof or side rack within its rating. */
final class BarLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return RuleCard.deratedRating(RuleId.BAR_LIMIT, "load on one bar within its rating");
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    List<LoadLine> lines = new ArrayList<>();
    for (Space space : loading.rig().spaces().values()) {
      space.bars().ifPresent(bars -> addLines(space, bars, loading, state, lines));
    }
    return lines;
  }

  private static void addLines(
      Space space, RoofBars bars, Loading loading, LoadState state, List<LoadLine> lines) {
    Map<String, LoadLine.Builder> byBar = new LinkedHashMap<>();
    for (RoofBars.Bar bar : bars.bars()) {
      byBar.put(
          bar.id(),
          LoadLine.of(
                  RuleId.BAR_LIMIT,
                  space.id() + ":" + bar.id(),
                  bar.ratings().inG(state.kind(), state.surface()),
                  BarCarriage.SHARE_PARTS)
              .forgiveHalfGram());
    }
    for (PlacedItem item : loading.in(space.id())) {
      for (BarCarriage.Share share : BarCarriage.shares(item.box(), space, bars)) {
        LoadLine.Builder line = byBar.get(share.bar().id());
        if (line != null) {
          line.add(loading.indexOf(item.key()), share.parts());
        }
      }
    }
    for (LoadLine.Builder line : byBar.values()) {
      if (line.hasTerms()) {
        lines.add(line.build());
      }
    }
  }
}
