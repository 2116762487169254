package kitstow.planner.trip;

import java.util.HashSet;
import java.util.Set;

/** Keeps the ids of a trip's states apart, whatever legs and containers are called. */
final class StateIds {
  private final Set<String> taken = new HashSet<>();

  /** The wanted id, or with a number where it is taken. */
  String unique(String wanted) {
    String id = wanted.replace('#', '-');
    String free = id;
    for (int n = 2; !taken.add(free); n++) {
      free = id + "-" + n;
    }
    return free;
  }
}
