/**
 * The independent judge: reads a loading and its states, and names every binding rule that is
 * broken. Its answer must be the one the rules give, found another way.
 *
 * <p>Two judges that share a sum share its mistake. So nothing here calls the planner's own
 * overlap, support, lever or axle code: this package imports the records of {@code model}, and of
 * {@code geometry} only the plain values that those records are made of. It turns items, places
 * boxes, reads ratings and pulls slides out by itself, and where there is a choice it goes another
 * way than the obvious one: moments about the rear axle instead of the front one, influence lines
 * for bars, tangents instead of a hull, corner places instead of splitting a door.
 *
 * <p>What it does share with the first judge is what both are given. {@code Rig} says where bays,
 * modules, doors and spaces stand, which slides carry what, what is in which module, and the ids of
 * air. {@code Loading} says which bodies there are, with their zones, and puts the items in their
 * spaces; the audit works out the items' boxes again and refuses those that differ, but not the
 * spaces they are in. {@code LoadState} says what each body weighs in a moment and how far it has
 * moved. A mistake in these is a mistake of both judges, and neither sees it. So they have tests of
 * their own, apart from both: the places in {@code SharedPlacesTest}, by figures worked out by
 * hand; the moments in the tests of {@code trip}, masses against a trip driven in tiny steps and
 * moves by figures worked out by hand.
 *
 * <p>What belongs here is a check of a finished plan. What does not: load states (they are given),
 * notes and preferences, texts, search. Start with {@link kitstow.planner.audit.Audit}; {@link
 * kitstow.planner.audit.Block} and {@link kitstow.planner.audit.AuditCase} carry the rest.
 */
@NullMarked
package kitstow.planner.audit;

import org.jspecify.annotations.NullMarked;
