package kitstow.tui.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Surface;
import kitstow.planner.report.StateFigures;

/** States by the number they have in the table of states. */
public final class StateNames {
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final Map<String, String> titles = new LinkedHashMap<>();

  /** Names of states in the order of the trip. */
  public StateNames(List<StateFigures> states) {
    for (StateFigures figures : states) {
      numbers.put(figures.state().id(), numbers.size() + 1);
      titles.put(figures.state().id(), figures.state().title());
    }
  }

  /** Number in the table of states. */
  String number(LoadState state) {
    return number(state.id());
  }

  /** Number in the table of states. */
  public String number(String stateId) {
    return String.valueOf(numbers.getOrDefault(stateId, 0));
  }

  /** "state 3 (Desert, start)". */
  String named(String stateId) {
    return "state "
        + numbers.getOrDefault(stateId, 0)
        + " ("
        + titles.getOrDefault(stateId, stateId)
        + ")";
  }

  /** What the ute does in a state. */
  public static String kind(LoadState state) {
    if (state.noteOnly()) {
      return "note";
    }
    return state.kind() == LoadKind.MOVING ? surface(state.surface()) : word(state.kind());
  }

  private static String word(LoadKind kind) {
    return switch (kind) {
      case MOVING -> "moving";
      case PARKED -> "parked";
      case CERTIFICATION -> "certif.";
    };
  }

  private static String surface(Surface surface) {
    return switch (surface) {
      case ROAD -> "road";
      case OFF_ROAD -> "off road";
    };
  }
}
