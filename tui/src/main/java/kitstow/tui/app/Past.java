package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was done and what was undone, without a limit.
 *
 * @param done changes, the last one last
 * @param undone changes taken back, the last one last
 */
public record Past(List<Change> done, List<Change> undone) {
  /** Nothing was done. */
  public static final Past NONE = new Past(List.of(), List.of());

  /** Copies its collections. */
  public Past {
    done = List.copyOf(done);
    undone = List.copyOf(undone);
  }

  /** With one change more; what was undone is forgotten. */
  public Past with(Change change) {
    return new Past(and(done, change), List.of());
  }

  /** The change to take back next. */
  public Optional<Change> last() {
    return done.isEmpty() ? Optional.empty() : Optional.of(done.get(done.size() - 1));
  }

  /** The change to do again next. */
  public Optional<Change> lastUndone() {
    return undone.isEmpty() ? Optional.empty() : Optional.of(undone.get(undone.size() - 1));
  }

  /** With the last change taken back. */
  public Past back() {
    return last()
        .map(change -> new Past(done.subList(0, done.size() - 1), and(undone, change)))
        .orElse(this);
  }

  /** With the last change that was taken back done again. */
  public Past forth() {
    return lastUndone()
        .map(change -> new Past(and(done, change), undone.subList(0, undone.size() - 1)))
        .orElse(this);
  }

  private static List<Change> and(List<Change> changes, Change one) {
    List<Change> all = new ArrayList<>(changes);
    all.add(one);
    return all;
  }
}
