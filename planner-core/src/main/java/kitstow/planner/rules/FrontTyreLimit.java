package kitstow.planner.rules;

import java.util.List;
import java.util.OptionalLong;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.TyreSet;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.statics.TyreLoadIndex;

/** Front axle load within the load index of its tyres. */
final class FrontTyreLimit implements LimitRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        RuleId.FRONT_TYRE_LIMIT,
        "front axle load within what its tyres carry",
        "UN Regulation 54 Annex 4, read in public charts",
        SourceStatus.READ_SECOND_HAND,
        "",
        false);
  }

  @Override
  public List<LoadLine> lines(Loading loading, LoadState state) {

    TyreSet tyres = loading.scenario().ute().frontTyres();
    OptionalLong one = TyreLoadIndex.capacityG(tyres.loadIndex());
    return AxleLines.front(
        RuleId.FRONT_TYRE_LIMIT,
        "front-tyres",
        one.isPresent() ? OptionalLong.of(one.getAsLong() * tyres.count()) : one,
        loading,
        state);
  }
}
