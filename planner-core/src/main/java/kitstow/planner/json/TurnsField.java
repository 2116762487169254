package kitstow.planner.json;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.geometry.Turn;
import kitstow.planner.problem.Code;

/** Reads how an item may stand: one word for the usual sets, or a list of turns. */
final class TurnsField {
  private static final Set<Turn> UPRIGHT = EnumSet.of(Turn.LWH, Turn.WLH);

  /** Sets of turns by their word; flat is the same as upright. */
  private static final Map<String, Set<Turn>> BY_WORD = new LinkedHashMap<>();

  static {
    BY_WORD.put("upright", UPRIGHT);
    BY_WORD.put("flat", UPRIGHT);
    BY_WORD.put("edge", EnumSet.of(Turn.LWH, Turn.WLH, Turn.LHW, Turn.HLW));
    BY_WORD.put("any", EnumSet.allOf(Turn.class));
  }

  private static final String HINT =
      "write one of " + Shown.list(BY_WORD.keySet()) + ", or a list of turns such as [\"LWH\"]";

  private TurnsField() {}

  /** The word for a set of turns, or the turns. */
  static String text(Set<Turn> turns) {
    for (Map.Entry<String, Set<Turn>> word : BY_WORD.entrySet()) {
      if (word.getValue().equals(turns)) {
        return word.getKey();
      }
    }
    List<String> names = new ArrayList<>();
    for (Turn turn : new TreeSet<>(turns)) {
      names.add(turn.name());
    }
    return String.join(" ", names);
  }

  static Set<Turn> read(Fields fields, Faults faults) {
    return fields
        .required("turns", HINT)
        .map(
            node ->
                node instanceof Node.TextNode text
                    ? byWord(text, faults)
                    : listed(fields, node, faults))
        .orElse(UPRIGHT);
  }

  private static Set<Turn> byWord(Node.TextNode text, Faults faults) {
    Optional<Set<Turn>> turns = Optional.ofNullable(BY_WORD.get(text.text()));
    if (!turns.isPresent()) {
      faults.error(
          Code.UNKNOWN_WORD,
          text.place(),
          "is " + Shown.quoted(text.text()) + ", must be one of " + Shown.list(BY_WORD.keySet()),
          HINT);
    }
    return turns.orElse(UPRIGHT);
  }

  private static Set<Turn> listed(Fields fields, Node node, Faults faults) {
    if (!(node instanceof Node.ListNode)) {
      faults.error(
          Code.WRONG_TYPE,
          node.place(),
          "is " + node.shown() + ", must be a word or a list of turns",
          HINT);
      return UPRIGHT;
    }
    List<Node> entries = fields.entries("turns", /* least= */ 1, HINT);
    Set<Turn> turns = Lists.words(entries, Words.TURN, Turn.class, faults);
    return turns.isEmpty() ? UPRIGHT : turns;
  }
}
