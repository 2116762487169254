package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists with one thing changed. */
final class Lists {
  private Lists() {}

  /** With a thing in the place of another, or at the end where there is none. */
  static <T> List<T> with(List<T> all, Optional<T> old, T changed) {
    List<T> other = new ArrayList<>(all);
    int at = old.map(other::indexOf).orElse(-1);
    if (at < 0) {
      other.add(changed);
    } else {
      other.set(at, changed);
    }
    return other;
  }

  static <T> List<T> without(List<T> all, T old) {
    List<T> other = new ArrayList<>(all);
    other.remove(old);
    return other;
  }

  /** With a thing some places on; as it was where that is beyond an end. */
  static <T> List<T> moved(List<T> all, T thing, int by) {
    List<T> other = new ArrayList<>(all);
    int at = other.indexOf(thing);
    int to = at + by;
    if (at >= 0 && to >= 0 && to < other.size()) {
      other.remove(at);
      other.add(to, thing);
    }
    return other;
  }
}
