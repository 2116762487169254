package kitstow.planner.json;

import java.util.List;
import java.util.Map;

/** A value of a JSON text with its place. Numbers keep their text, so that nothing is rounded. */
sealed interface Node {
  /** Where it is. */
  Place place();

  /** What it is, for messages: "a list", "the text \"7\"". */
  String shown();

  /** An object; keys in the order of the text, of a key written twice the first. */
  record ObjectNode(Place place, Map<String, Node> members) implements Node {
    @Override
    public String shown() {
      return "an object";
    }
  }

  /** A list. */
  record ListNode(Place place, List<Node> entries) implements Node {
    @Override
    public String shown() {
      return "a list";
    }
  }

  /** A string. */
  record TextNode(Place place, String text) implements Node {
    @Override
    public String shown() {
      return "the text " + Shown.quoted(text);
    }
  }

  /** A number as it is written. */
  record NumberNode(Place place, String raw) implements Node {
    @Override
    public String shown() {
      return "the number " + Shown.number(raw);
    }
  }

  /** True or false. */
  record FlagNode(Place place, boolean value) implements Node {
    @Override
    public String shown() {
      return String.valueOf(value);
    }
  }

  /** A null. */
  record NullNode(Place place) implements Node {
    @Override
    public String shown() {
      return "null";
    }
  }
}
