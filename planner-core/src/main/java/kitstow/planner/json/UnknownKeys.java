package kitstow.planner.json;

import java.util.Map;
import java.util.Set;
import kitstow.planner.problem.Code;

/** Notes keys that mean nothing in their object, with the key that was probably meant. */
final class UnknownKeys {
  private UnknownKeys() {}

  /**
   * Looks through the keys of an object.
   *
   * @param known keys that mean something there
   * @param advice what else to say where no known key is similar
   */
  static void note(Node.ObjectNode node, Set<String> known, String advice, Faults faults) {
    for (Map.Entry<String, Node> member : node.members().entrySet()) {
      if (!known.contains(member.getKey())) {
        faults.error(
            Code.UNKNOWN_KEY,
            member.getValue().place(),
            "is an unknown key",
            Similar.to(member.getKey(), known)
                .map(key -> "did you mean " + key + "?")
                .orElseGet(() -> advice + "the keys known here are " + Shown.list(known)));
      }
    }
  }
}
