package kitstow.planner.catalogue;

/** What a range rests on, in the words the catalogue uses. */
final class Basis {
  /** Known in the trade; nobody has published it. */
  static final String COMMON_PRACTICE = "common practice, no source";

  /** Nothing to go by in the trade: chosen freely so that an entry is whole. */
  static final String OUR_CHOICE = "our choice, generic";

  private Basis() {}

  /** One or several articles of the trade by their keys. */
  static String trade(String... keys) {
    return (keys.length == 1 ? "trade article, key " : "trade articles, keys ")
        + String.join(", ", keys);
  }

  /** Arithmetic on other figures. */
  static String computed(String from) {
    return "computed from " + from;
  }
}
