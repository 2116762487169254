/**
 * One class per rule and one catalogue of them, {@link kitstow.planner.rules.RuleBook}: used by the
 * solver, by checking and by explaining alike. A limit rule states its limits as {@link
 * kitstow.planner.statics.LoadLine}s per state; a plan rule judges a placement once. Numbers come
 * from statics and packing; nothing is computed twice. May import statics, packing, trip, model and
 * geometry. To add a rule: a constant in RuleId, a class here, a line in RuleBook, its twin in the
 * audit, and a test that breaks it by the smallest amount.
 */
@NullMarked
package kitstow.planner.rules;

import org.jspecify.annotations.NullMarked;
