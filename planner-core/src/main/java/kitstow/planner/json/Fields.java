package kitstow.planner.json;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import kitstow.planner.problem.Code;
import kitstow.planner.problem.JsonPath;

/**
 * The fields of one object. Every accessor notes what is wrong with its field and returns a value
 * that is usable, so that reading goes on. {@link #done()} notes keys nobody asked for.
 *
 * <p>Fields of an object that is missing or of another type are silent: that one fault was noted.
 */
final class Fields {
  private final Node.ObjectNode node;
  private final Faults faults;
  private final boolean silent;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Set<String> lacking = new HashSet<>();

  private Fields(Node.ObjectNode node, Faults faults, boolean silent) {
    this.node = node;
    this.faults = faults;
    this.silent = silent;
  }

  static Fields of(Node.ObjectNode node, Faults faults) {
    return new Fields(node, faults, /* silent= */ false);
  }

  /** Fields of an object that is not there; any number of its own stands for its place. */
  static Fields silent(Place place, Faults faults) {
    return new Fields(new Node.ObjectNode(place, Map.of()), faults, /* silent= */ true);
  }

  /** Where the object is. */
  Place place() {
    return node.place();
  }

  /** Where a field is, or would be. */
  Place place(String key) {
    Node member = node.members().get(key);
    return member == null ? node.place().lacking(key) : member.place();
  }

  /** Whether the object has a field of this name. */
  boolean has(String key) {
    return node.members().containsKey(key);
  }

  /** Whether the object is there at all. */
  boolean present() {
    return !silent;
  }

  /** Whether nothing is wrong with these fields, so that they can be compared with others. */
  boolean good(String... keys) {
    if (silent) {
      return false;
    }
    for (String key : keys) {
      Node member = node.members().get(key);
      if (lacking.contains(key) || (member != null && faults.anyIn(member.place()))) {
        return false;
      }
    }
    return true;
  }

  /** Whether the ids of all objects in these lists are known, so that references can be judged. */
  boolean idsKnown(String... keys) {
    boolean known = !silent;
    for (String key : keys) {
      Node member = node.members().get(key);
      known &= member == null ? !lacking.contains(key) : Lists.idsKnown(member, faults);
    }
    return known;
  }

  /** Notes a fault of one field. */
  void error(Code code, String key, String message, String hint) {
    if (!silent) {
      faults.error(code, place(key), message, hint);
    }
  }

  private Optional<Node> given(String key) {
    asked.add(key);
    Node member = node.members().get(key);
    if (member instanceof Node.NullNode) {
      lacking.add(key);
      faults.error(
          Code.NULL_VALUE,
          member.place(),
          "is null, must have a value",
          "give a value, or leave the key out if it is optional");
      return Optional.empty();
    }
    return Optional.ofNullable(member);
  }

  /** Any value that must be there. */
  Optional<Node> required(String key, String hint) {
    Optional<Node> member = given(key);
    if (!has(key) && !silent) {
      lacking.add(key);
      faults.error(Code.MISSING_KEY, place(key), "is missing", hint);
    }
    return member;
  }

  /** Makes a key known that has no meaning beside the others of this object. */
  void ask(String key) {
    asked.add(key);
  }

  /** Another look at the object after its faults have been noted. */
  Reread again() {
    return new Reread(node);
  }

  /** Any value that may be there. */
  Optional<Node> optional(String key) {
    return given(key);
  }

  /** A number that must be there, in units of the last decimal. */
  long number(String key, Measure measure) {
    return required(key, measure.hint())
        .map(member -> Values.number(member, measure, faults))
        .orElseGet(measure::usable);
  }

  /** A number that may be there, in units of the last decimal. */
  OptionalLong numberIfGiven(String key, Measure measure) {
    Optional<Long> number = optional(key).map(member -> Values.number(member, measure, faults));
    return number.isPresent() ? OptionalLong.of(number.get()) : OptionalLong.empty();
  }

  /** A number that may be there, in units of the last decimal. */
  long numberOr(String key, Measure measure, long otherwise) {
    return numberIfGiven(key, measure).orElse(otherwise);
  }

  /** A whole number that must be there. */
  int whole(String key, Measure measure) {
    return Math.toIntExact(number(key, measure));
  }

  /** A whole number that may be there. */
  int wholeOr(String key, Measure measure, int otherwise) {
    return Math.toIntExact(numberOr(key, measure, otherwise));
  }

  /** A whole number that may be there. */
  OptionalInt wholeIfGiven(String key, Measure measure) {
    OptionalLong number = numberIfGiven(key, measure);
    return number.isPresent()
        ? OptionalInt.of(Math.toIntExact(number.getAsLong()))
        : OptionalInt.empty();
  }

  /** A text for people that must be there. */
  String text(String key, String hint) {
    return required(key, hint).map(member -> Values.text(member, faults)).orElse("");
  }

  /** A text or a name that may be there. */
  Optional<String> textIfGiven(String key) {
    return optional(key).map(member -> Values.text(member, faults));
  }

  /** An id that must be there; a faulty one is returned as it is, so that references match. */
  String id(String key) {
    return required(key, "give an id of small letters, digits and hyphens, e.g. long-range-tank")
        .map(member -> Values.id(member, faults))
        .orElseGet(this::nameless);
  }

  /** An id that may be there. */
  Optional<String> idIfGiven(String key) {
    return optional(key).map(member -> Values.id(member, faults));
  }

  /** The name of something, which must be there. */
  String name(String key, String hint) {
    return required(key, hint).map(member -> Values.text(member, faults)).orElseGet(this::nameless);
  }

  /** A name nothing else can have. */
  private String nameless() {
    return "?" + node.place().first();
  }

  /** True or false, which must be there. */
  boolean flag(String key) {
    return required(key, "write true or false")
        .map(member -> Values.flag(member, faults))
        .orElse(false);
  }

  /** True or false, which may be there. */
  boolean flagOr(String key, boolean otherwise) {
    return optional(key).map(member -> Values.flag(member, faults)).orElse(otherwise);
  }

  /** A word that must be there. */
  <E extends Enum<E>> E word(String key, Words<E> words) {
    return required(key, "write one of " + words.listed())
        .flatMap(member -> Values.word(member, words, faults))
        .orElseGet(words::usable);
  }

  /** A word that may be there. */
  <E extends Enum<E>> Optional<E> wordIfGiven(String key, Words<E> words) {
    return optional(key).flatMap(member -> Values.word(member, words, faults));
  }

  /** A word that may be there. */
  <E extends Enum<E>> E wordOr(String key, Words<E> words, E otherwise) {
    return wordIfGiven(key, words).orElse(otherwise);
  }

  /** A list of different words that may be there. */
  <E extends Enum<E>> Set<E> words(String key, Words<E> words, Class<E> type) {
    return Lists.words(entriesIfGiven(key), words, type, faults);
  }

  /** A list of different names that may be there. */
  List<String> namesIfGiven(String key) {
    return Lists.names(entriesIfGiven(key), faults);
  }

  /** A list of different names that must be there. */
  List<String> names(String key, int least, String hint) {
    return Lists.names(entries(key, least, hint), faults);
  }

  /** A list that may be there. */
  List<Node> entriesIfGiven(String key) {
    return optional(key).map(member -> Values.list(member, 0, faults)).orElse(List.of());
  }

  /** A list that must be there. */
  List<Node> entries(String key, int least, String hint) {
    return required(key, hint).map(member -> Values.list(member, least, faults)).orElse(List.of());
  }

  /** A list of objects that may be there; entries of another type are noted and left out. */
  List<Fields> objectsIfGiven(String key) {
    return Lists.objects(entriesIfGiven(key), faults);
  }

  /** A list of objects that must be there. */
  List<Fields> objects(String key, int least, String hint) {
    return Lists.objects(entries(key, least, hint), faults);
  }

  /** An object that must be there; its fields are silent if it is not. */
  Fields object(String key, String hint) {
    return required(key, hint)
        .flatMap(member -> Values.object(member, faults))
        .orElseGet(() -> silent(place(key), faults));
  }

  /** An object that may be there. */
  Optional<Fields> objectIfGiven(String key) {
    return optional(key).flatMap(member -> Values.object(member, faults));
  }

  /** All fields of an object whose keys are names; asks for all of them. */
  Map<String, Node> members() {
    asked.addAll(node.members().keySet());
    Map<String, Node> members = new LinkedHashMap<>();
    for (String key : node.members().keySet()) {
      given(key).ifPresent(member -> members.put(key, member));
    }
    return members;
  }

  /** Notes keys nobody asked for. */
  void done() {
    UnknownKeys.note(node, asked, "", faults);
  }

  /** The same where a catalogue entry is named: its figures cannot be changed beside its name. */
  void doneBesideEntry(String ownEntriesKey) {
    JsonPath own = JsonPath.root().key("define").key(ownEntriesKey);
    UnknownKeys.note(
        node,
        asked,
        "an entry's figures cannot be changed here; describe an own entry under " + own + "; ",
        faults);
  }
}
