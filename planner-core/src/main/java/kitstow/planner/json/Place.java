package kitstow.planner.json;

import kitstow.planner.problem.JsonPath;

/**
 * Where a value is in its text.
 *
 * @param path its path
 * @param first its number in the order of the text
 * @param last number of the last value inside it; its own if it holds none
 */
record Place(JsonPath path, int first, int last) {
  /** Where a key would be that this object lacks. */
  Place lacking(String key) {
    return new Place(path.key(key), first, first);
  }
}
