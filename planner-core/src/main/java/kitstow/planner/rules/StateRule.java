package kitstow.planner.rules;

import java.util.List;
import kitstow.planner.model.LoadState;

/** Good practice that is looked at in every state; it makes notes and never breaks a plan. */
public non-sealed interface StateRule extends Rule {
  /** The figures this rule looks at in a state, whether within or beyond its setting. */
  List<StateCheck> checks(Situation situation, LoadState state);
}
