package kitstow.planner.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import kitstow.planner.problem.Code;

/**
 * Single values of the tree as numbers, texts, words, lists and objects, with their faults noted.
 */
final class Values {
  private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]*");
  private static final int LONGEST_ID = 60;
  private static final int LONGEST_TEXT = 2000;
  private static final int LONGEST_LIST = 1000;

  private Values() {}

  private static void wrongType(Node node, String wanted, String hint, Faults faults) {
    faults.error(Code.WRONG_TYPE, node.place(), "is " + node.shown() + ", must be " + wanted, hint);
  }

  /** A number in units of the last decimal of its measure. */
  static long number(Node node, Measure measure, Faults faults) {
    if (!(node instanceof Node.NumberNode number)) {
      String hint = node instanceof Node.TextNode ? "write the number without quotes" : "";
      wrongType(node, "a number", hint.isEmpty() ? measure.hint() : hint, faults);
      return measure.usable();
    }
    Optional<BigDecimal> exact = exact(number.raw());
    boolean negative = number.raw().startsWith("-");
    if (!exact.isPresent() ? !negative : measure.tooLarge(exact.get())) {
      faults.error(
          Code.OUT_OF_RANGE,
          node.place(),
          fact(number, measure) + measure.mostRule(),
          measure.hint());
    } else if (!exact.isPresent() || measure.tooSmall(exact.get())) {
      faults.error(
          Code.OUT_OF_RANGE,
          node.place(),
          fact(number, measure) + measure.leastRule(),
          measure.hint());
    } else if (measure.tooFine(exact.get())) {
      faults.error(
          Code.TOO_FINE, node.place(), fact(number, measure) + measure.fineRule(), measure.hint());
    } else {
      return measure.scaled(exact.get());
    }
    return measure.usable();
  }

  private static String fact(Node.NumberNode number, Measure measure) {
    return "is " + measure.with(Shown.number(number.raw())) + ", ";
  }

  /** The exact value; nothing if its exponent is beyond all measure. */
  private static Optional<BigDecimal> exact(String raw) {
    try {
      return Optional.of(new BigDecimal(raw));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** A text without control characters, neither empty nor overlong. */
  static String text(Node node, Faults faults) {
    if (!(node instanceof Node.TextNode textNode)) {
      wrongType(node, "a text", "write it in double quotes", faults);
      return "";
    }
    String text = textNode.text();
    if (text.length() > LONGEST_TEXT) {
      faults.error(
          Code.BAD_TEXT,
          node.place(),
          "has " + text.length() + " characters, must have " + LONGEST_TEXT + " or fewer",
          "shorten it");
    } else if (text.trim().isEmpty()) {
      faults.error(Code.BAD_TEXT, node.place(), "is empty, must say something", "write a text");
    }
    for (int i = 0; i < text.length(); i++) {
      if (Character.isISOControl(text.charAt(i))) {
        faults.error(
            Code.CONTROL_CHARACTER,
            node.place(),
            "has a control character at position " + (i + 1) + ", must have none",
            "write it in one line without tabs or escape signs");
        break;
      }
    }
    return text;
  }

  /** An id; a faulty one is returned as it is. */
  static String id(Node node, Faults faults) {
    if (!(node instanceof Node.TextNode textNode)) {
      wrongType(node, "a text", "write the id in double quotes", faults);
      return "?" + node.place().first();
    }
    String id = textNode.text();
    if (id.length() > LONGEST_ID) {
      faults.error(
          Code.BAD_ID,
          node.place(),
          "has " + id.length() + " characters, must have " + LONGEST_ID + " or fewer",
          "choose a shorter id");
    } else if (!ID.matcher(id).matches()) {
      faults.error(
          Code.BAD_ID,
          node.place(),
          "is "
              + Shown.quoted(id)
              + ", must have small letters, digits and hyphens only and not begin with a hyphen",
          "write it like front-bar or tank-2");
    }
    return id;
  }

  static boolean flag(Node node, Faults faults) {
    if (node instanceof Node.FlagNode flag) {
      return flag.value();
    }
    wrongType(node, "true or false", "write true or false without quotes", faults);
    return false;
  }

  static <E extends Enum<E>> Optional<E> word(Node node, Words<E> words, Faults faults) {
    if (!(node instanceof Node.TextNode textNode)) {
      wrongType(node, "a word", "write one of " + words.listed(), faults);
      return Optional.empty();
    }
    Optional<E> word = words.find(textNode.text());
    if (!word.isPresent()) {
      faults.error(
          Code.UNKNOWN_WORD,
          node.place(),
          "is " + Shown.quoted(textNode.text()) + ", must be one of " + words.listed(),
          Similar.to(textNode.text(), words.all())
              .map(similar -> "did you mean " + similar + "?")
              .orElse("choose the word that fits best"));
    }
    return word;
  }

  static List<Node> list(Node node, int least, Faults faults) {
    if (!(node instanceof Node.ListNode list)) {
      wrongType(node, "a list", "write it in square brackets, even if there is one only", faults);
      return List.of();
    }
    int size = list.entries().size();
    if (size < least) {
      faults.error(
          Code.LIST_LENGTH,
          node.place(),
          "has " + size + " entries, must have " + least + " or more",
          "put in at least " + least);
    } else if (size > LONGEST_LIST) {
      faults.error(
          Code.LIST_LENGTH,
          node.place(),
          "has " + size + " entries, must have " + LONGEST_LIST + " or fewer",
          "leave some out, or use a quantity");
    }
    return list.entries();
  }

  static Optional<Fields> object(Node node, Faults faults) {
    if (node instanceof Node.ObjectNode object) {
      return Optional.of(Fields.of(object, faults));
    }
    wrongType(node, "an object", "write it in curly brackets with its keys", faults);
    return Optional.empty();
  }
}
