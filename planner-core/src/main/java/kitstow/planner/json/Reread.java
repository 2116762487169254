package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks at an object once more after its faults have been noted; what is faulty is left out. */
final class Reread {
  private final Node.ObjectNode node;

  Reread(Node.ObjectNode node) {
    this.node = node;
  }

  /** A text; empty if it is not there. */
  String text(String key) {
    return node.members().get(key) instanceof Node.TextNode text ? text.text() : "";
  }

  /** Where a value of an inner object is. */
  Optional<Place> placeIn(String object, String key) {
    return node.members().get(object) instanceof Node.ObjectNode inner
        ? Optional.ofNullable(inner.members().get(key)).map(Node::place)
        : Optional.empty();
  }

  /** The object under a key, in a list so that there may be none. */
  List<Reread> object(String key) {
    return node.members().get(key) instanceof Node.ObjectNode object
        ? List.of(new Reread(object))
        : List.of();
  }

  /** Objects of a list. */
  List<Reread> objects(String key) {
    List<Reread> objects = new ArrayList<>();
    if (node.members().get(key) instanceof Node.ListNode list) {
      for (Node entry : list.entries()) {
        if (entry instanceof Node.ObjectNode object) {
          objects.add(new Reread(object));
        }
      }
    }
    return objects;
  }

  /** Texts of a list. */
  List<Node.TextNode> texts(String key) {
    List<Node.TextNode> texts = new ArrayList<>();
    if (node.members().get(key) instanceof Node.ListNode list) {
      for (Node entry : list.entries()) {
        if (entry instanceof Node.TextNode text) {
          texts.add(text);
        }
      }
    }
    return texts;
  }
}
