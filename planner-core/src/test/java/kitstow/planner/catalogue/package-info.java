/**
 * Checks of the shipped catalogue. The ranges of the trade are typed in here once more, apart from
 * the catalogue files, each with what it rests on; an entry that leaves its range, or that the
 * ranges do not know, fails. Start with {@link kitstow.planner.catalogue.CatalogueRangesTest}.
 */
@NullMarked
package kitstow.planner.catalogue;

import org.jspecify.annotations.NullMarked;
