/**
 * The edge where JSON texts become records of the trade and back. Gson is used here only, and only
 * its token reader: nothing is bound by reflection. A text is read into a small tree that knows
 * paths, then a reader for each type notes every fault and goes on with a usable value. Bad input
 * is never an exception. No rule of loading is judged here. May import problem, report, model and
 * what these import. Start with {@link kitstow.planner.json.ScenarioReader}, then {@code Fields}.
 */
@NullMarked
package kitstow.planner.json;

import org.jspecify.annotations.NullMarked;
