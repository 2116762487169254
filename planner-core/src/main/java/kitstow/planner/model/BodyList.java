package kitstow.planner.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Bodies as they are put together, by index and by key. */
final class BodyList {
  private final List<Body> bodies = new ArrayList<>();
  private final List<Body> view = Collections.unmodifiableList(bodies);
  private final Map<String, Integer> indexByKey = new LinkedHashMap<>();
  private final Map<String, Integer> entryByKey = new LinkedHashMap<>();
  private final List<Integer> entryByBody = new ArrayList<>();
  private final Map<Integer, Long> weighedWithUteG = new LinkedHashMap<>();

  /**
   * Adds a body.
   *
   * @throws IllegalArgumentException if its key is taken
   */
  void add(Draft draft) {
    Body body = draft.body();
    if (indexByKey.putIfAbsent(body.key(), bodies.size()) != null) {
      throw new IllegalArgumentException("two bodies with one key: " + body.key());
    }
    bodies.add(body);
    Integer entry = entryByKey.putIfAbsent(body.toleranceKey(), entryByKey.size());
    entryByBody.add(entry == null ? entryByKey.size() - 1 : entry);
  }

  /**
   * Adds something that was on the ute when its axles were weighed. It was on the scale then:
   * {@code EmptyUte} takes it out by its stated mass and a state puts the same mass in again, so
   * that its error cancels and only that of the weighing is left.
   */
  void addWeighedWithUte(Draft draft) {
    weighedWithUteG.put(bodies.size(), draft.ownToleranceG());
    add(draft.weighedWithUte());
  }

  List<Body> all() {
    return view;
  }

  /** Tolerance of a body's own mass, grams, weighed with the ute or not. */
  long ownToleranceG(int body) {
    return weighedWithUteG.getOrDefault(body, bodies.get(body).toleranceG());
  }

  /** Number of the entry whose error a body shares, counted from 0. */
  int entryOf(int body) {
    return entryByBody.get(body);
  }

  /** How many entries have errors of their own. */
  int entries() {
    return entryByKey.size();
  }

  /** Index of a body, or -1. */
  int indexOf(String key) {
    return indexByKey.getOrDefault(key, -1);
  }
}
