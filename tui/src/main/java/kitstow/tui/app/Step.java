package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;

/**
 * What an update comes to.
 *
 * @param state the new state
 * @param effects what is to be done outside
 */
public record Step(AppState state, List<Effect> effects) {
  /** Copies its collections. */
  public Step {
    effects = List.copyOf(effects);
  }

  /** A state with nothing to do. */
  public static Step to(AppState state) {
    return new Step(state, List.of());
  }

  /** A state with one thing to do. */
  public static Step to(AppState state, Effect effect) {
    return new Step(state, List.of(effect));
  }

  /** The same with something over the page. */
  public Step to(Overlay overlay) {
    return new Step(state.with(overlay), effects);
  }

  /** The same with one thing more to do. */
  public Step and(Effect effect) {
    List<Effect> all = new ArrayList<>(effects);
    all.add(effect);
    return new Step(state, all);
  }

  /** The same with one thing to do before all others. */
  public Step first(Effect effect) {
    List<Effect> all = new ArrayList<>(List.of(effect));
    all.addAll(effects);
    return new Step(state, all);
  }
}
