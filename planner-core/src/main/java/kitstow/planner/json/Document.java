package kitstow.planner.json;

import java.util.Optional;
import kitstow.planner.problem.Code;
import kitstow.planner.problem.JsonPath;

/** Opens a text of one kind: its tree, its version and its kind. */
final class Document {
  private static final long VERSION = 1L;

  private Document() {}

  /** The fields of the text, or nothing if it is of another kind or version, or no JSON. */
  static Optional<Fields> open(String text, JsonPath root, String kind, Faults faults) {
    Optional<Fields> fields =
        TreeReader.read(text, root, faults).flatMap(node -> Values.object(node, faults));
    return fields.filter(found -> isOf(found, kind, faults));
  }

  private static boolean isOf(Fields fields, String kind, Faults faults) {
    long version = fields.number("schemaVersion", Measure.VERSION);
    String found = fields.text("kind", "write \"kind\": \"" + kind + "\"");
    if (!fields.good("schemaVersion", "kind")) {
      return false;
    }
    if (version != VERSION) {
      faults.error(
          Code.WRONG_SCHEMA_VERSION,
          fields.place("schemaVersion"),
          "is " + version + ", must be " + VERSION,
          "use the planner the file was written for, or bring it up to date by hand");
    }
    if (!found.equals(kind)) {
      faults.error(
          Code.WRONG_KIND,
          fields.place("kind"),
          "is " + Shown.quoted(found) + ", must be " + Shown.quoted(kind),
          "give the " + kind + " here");
    }
    return fields.good("schemaVersion", "kind");
  }
}
