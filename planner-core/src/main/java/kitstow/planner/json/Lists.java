package kitstow.planner.json;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.problem.Code;

/** Entries of a list as words, names or objects, with their faults noted. */
final class Lists {
  private Lists() {}

  /** Different words. */
  static <E extends Enum<E>> Set<E> words(
      List<Node> entries, Words<E> words, Class<E> type, Faults faults) {
    Set<E> found = EnumSet.noneOf(type);
    for (Node entry : entries) {
      Optional<E> word = Values.word(entry, words, faults);
      if (word.isPresent() && !found.add(word.get())) {
        noteSecond(Words.of(word.get()), entry, faults);
      }
    }
    return found;
  }

  /** Different names. */
  static List<String> names(List<Node> entries, Faults faults) {
    Set<String> found = new LinkedHashSet<>();
    for (Node entry : entries) {
      String name = Values.text(entry, faults);
      if (!found.add(name) && !faults.anyIn(entry.place())) {
        noteSecond(name, entry, faults);
      }
    }
    return List.copyOf(found);
  }

  private static void noteSecond(String name, Node entry, Faults faults) {
    faults.error(
        Code.LISTED_TWICE,
        entry.place(),
        "is a second " + Shown.quoted(name) + " in one list",
        "list it once");
  }

  /**
   * Whether a value is a list of objects that all have an id; a list that may not be empty is not.
   */
  static boolean idsKnown(Node node, Faults faults) {
    if (!(node instanceof Node.ListNode list)
        || (list.entries().isEmpty() && faults.anyIn(node.place()))) {
      return false;
    }
    for (Node entry : list.entries()) {
      if (!(entry instanceof Node.ObjectNode object)
          || !(object.members().get("id") instanceof Node.TextNode)) {
        return false;
      }
    }
    return true;
  }

  /** Objects; entries of another type are left out. */
  static List<Fields> objects(List<Node> entries, Faults faults) {
    List<Fields> objects = new ArrayList<>();
    for (Node entry : entries) {
      Values.object(entry, faults).ifPresent(objects::add);
    }
    return objects;
  }
}
