package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.statics.LoadLine;

/** A rating in kilograms that must hold in every state it applies to. */
public non-sealed interface LimitRule extends Rule {
  /** The limits of this rule that apply in a state. */
  List<LoadLine> lines(Loading loading, LoadState state);
}
