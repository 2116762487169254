package kitstow.tui.app;

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
}
