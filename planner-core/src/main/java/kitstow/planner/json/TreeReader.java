package kitstow.planner.json;

import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.problem.Code;
import kitstow.planner.problem.JsonPath;

/**
 * Reads a text strictly into a tree. Keys that an object has twice are noted and reading goes on; a
 * fault of syntax, too much nesting or too many values ends it.
 */
final class TreeReader {
  /** Longest text that is read. */
  static final int MOST_CHARACTERS = 16 * 1024 * 1024;

  /** Most values that are read. */
  static final int MOST_VALUES = 500_000;

  /** Deepest nesting; our formats need eight. */
  static final int DEEPEST = 32;

  /** Ends the reading of a text that cannot be read on; never leaves this class. */
  private static final class Stop extends Exception {
    private static final long serialVersionUID = 1L;
  }

  private final JsonReader reader;
  private final Faults faults;
  private int values;

  private TreeReader(String text, Faults faults) {
    this.reader = new JsonReader(new StringReader(text));
    this.reader.setStrictness(Strictness.STRICT);
    this.faults = faults;
  }

  /** The tree of a text, or nothing if it could not be read to its end. */
  static Optional<Node> read(String text, JsonPath root, Faults faults) {
    Place start = new Place(root, 0, 0);
    if (text.length() > MOST_CHARACTERS) {
      faults.error(
          Code.TOO_LONG,
          start,
          "has " + text.length() + " characters, must have " + MOST_CHARACTERS + " or fewer",
          "leave out what the planner does not need");
      return Optional.empty();
    }
    TreeReader tree = new TreeReader(text, faults);
    try {
      Node node = tree.value(root, 1);
      if (tree.reader.peek() != JsonToken.END_DOCUMENT) {
        throw new IOException("text after the end");
      }
      return Optional.of(node);
    } catch (IOException e) {
      SyntaxText.note(e, start, faults);
    } catch (Stop e) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  private Node value(JsonPath path, int depth) throws IOException, Stop {
    int order = values++;
    Place place = new Place(path, order, order);
    if (values > MOST_VALUES) {
      faults.error(
          Code.TOO_LONG,
          place,
          "is more than the " + MOST_VALUES + " values that one text may hold",
          "leave out what the planner does not need");
      throw new Stop();
    }
    if (depth > DEEPEST) {
      faults.error(
          Code.NESTED_TOO_DEEP,
          place,
          "is nested deeper than " + DEEPEST + " levels",
          "look for a bracket that is not closed");
      throw new Stop();
    }
    return switch (reader.peek()) {
      case BEGIN_OBJECT -> object(path, order, depth);
      case BEGIN_ARRAY -> list(path, order, depth);
      case STRING -> new Node.TextNode(place, reader.nextString());
      case NUMBER -> new Node.NumberNode(place, reader.nextString());
      case BOOLEAN -> new Node.FlagNode(place, reader.nextBoolean());
      case NULL -> {
        reader.nextNull();
        yield new Node.NullNode(place);
      }
      case END_ARRAY, END_OBJECT, NAME, END_DOCUMENT -> throw new IOException("no value");
    };
  }

  private Node object(JsonPath path, int order, int depth) throws IOException, Stop {
    Map<String, Node> members = new LinkedHashMap<>();
    reader.beginObject();
    while (reader.hasNext()) {
      String key = reader.nextName();
      Node member = value(path.key(key), depth + 1);
      if (members.putIfAbsent(key, member) != null) {
        faults.error(
            Code.DUPLICATE_KEY,
            member.place(),
            "is the second " + Shown.quoted(key) + " in one object",
            "keep the one you mean and take the other out");
      }
    }
    reader.endObject();
    return new Node.ObjectNode(new Place(path, order, values - 1), members);
  }

  private Node list(JsonPath path, int order, int depth) throws IOException, Stop {
    List<Node> entries = new ArrayList<>();
    reader.beginArray();
    while (reader.hasNext()) {
      entries.add(value(path.index(entries.size()), depth + 1));
    }
    reader.endArray();
    return new Node.ListNode(new Place(path, order, values - 1), entries);
  }
}
