package kitstow.tui.view;

import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Ute;

/** A ute by its title and what its empty axle loads rest on. */
final class UteText {
  /** How the title of a catalogue entry begins to tell its basis. */
  private static final String BASIS = ", given as ";

  private UteText() {}

  /** The title; where the axle loads were weighed, the date in place of the catalogue's basis. */
  static String of(Ute ute) {
    EmptyAxleLoads empty = ute.empty();
    boolean weighed =
        empty.front().source() == MassSource.WEIGHED && empty.rear().source() == MassSource.WEIGHED;
    if (!weighed) {
      return ute.title();
    }
    int basis = ute.title().indexOf(BASIS);
    return (basis < 0 ? ute.title() : ute.title().substring(0, basis))
        + ", weighed "
        + empty.date();
  }
}
