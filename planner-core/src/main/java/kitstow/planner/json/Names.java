package kitstow.planner.json;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import kitstow.planner.problem.Code;

/** The ids of one name space: notes one that is taken twice and a reference that nothing has. */
final class Names {
  private final Faults faults;
  private final String what;
  private final Map<String, String> paths = new LinkedHashMap<>();
  private boolean complete = true;

  /**
   * An empty name space.
   *
   * @param what what its names stand for, in the plural: "bays and spaces of the tray"
   */
  Names(Faults faults, String what) {
    this.faults = faults;
    this.what = what;
  }

  /** An empty name space that notes its faults in the same place. */
  Names another(String others) {
    return new Names(faults, others);
  }

  /** Takes an id. */
  void claim(String id, Place place) {
    claim(id, place, "is " + Shown.quoted(id));
  }

  /** Takes an id, with the fact that takes it. */
  void claim(String id, Place place, String fact) {
    String first = paths.putIfAbsent(id, place.path().toString());
    if (first != null && !faults.anyIn(place)) {
      faults.error(
          Code.DUPLICATE_ID,
          place,
          fact + ", which is taken at " + first,
          "ids must be unique among the " + what + "; choose another");
    }
  }

  /** Takes an id that is named nowhere in this text. */
  void add(String id) {
    paths.putIfAbsent(id, "");
  }

  /** Some names cannot be known because of another fault, so that no reference can be judged. */
  void incomplete() {
    complete = false;
  }

  boolean isComplete() {
    return complete;
  }

  boolean has(String id) {
    return paths.containsKey(id);
  }

  Set<String> all() {
    return paths.keySet();
  }

  /** Notes a reference that nothing has; whether something has it. */
  boolean check(String name, Place place) {
    if (paths.containsKey(name)) {
      return true;
    }
    noteUnknown(name, place, "is " + Shown.quoted(name));
    return false;
  }

  /** Notes a name that nothing has, with the fact that names it. */
  void noteUnknown(String name, Place place, String fact) {
    if (complete && !faults.anyIn(place)) {
      faults.error(
          Code.UNKNOWN_REFERENCE, place, fact + ", which is none of the " + what, hint(name));
    }
  }

  private String hint(String name) {
    if (paths.isEmpty()) {
      return "there are no " + what + "; put one in or take this out";
    }
    return Similar.to(name, paths.keySet())
        .map(similar -> "did you mean " + similar + "?")
        .orElseGet(() -> "choose from " + Shown.list(paths.keySet()));
  }
}
