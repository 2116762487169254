package kitstow.planner.json;

/**
 * The text of one file of several that are read together.
 *
 * @param name file name as faults shall show it
 * @param text what is in it
 */
public record NamedText(String name, String text) {}
