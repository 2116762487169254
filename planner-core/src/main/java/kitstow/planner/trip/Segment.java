package kitstow.planner.trip;

import java.util.Arrays;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.ShiftMm;

/**
 * The stretch of a leg between two moving states that follow each other; every mass changes evenly
 * along it. Resupply and decanting are jumps and lie between two segments.
 *
 * @param fromIndex index of its first state in the timeline
 * @param toIndex index of its last state
 * @param from its first state
 * @param to its last state
 * @param start when it begins
 * @param end when it ends
 */
public record Segment(
    int fromIndex, int toIndex, LoadState from, LoadState to, Moment start, Moment end) {
  /** The state a fraction of the way along, 0 to 1; its masses are rounded to a gram. */
  public LoadState at(double fraction) {
    if (!(fraction >= 0.0 && fraction <= 1.0)) {
      throw new IllegalArgumentException("fraction must be 0 to 1: " + fraction);
    }
    long[] massG = new long[from.size()];
    ShiftMm[] shift = new ShiftMm[from.size()];
    for (int i = 0; i < massG.length; i++) {
      massG[i] = Math.round(between((double) from.massG(i), (double) to.massG(i), fraction));
      shift[i] = between(from.shift(i), to.shift(i), fraction);
    }
    long permille = Math.round(fraction * 1000.0);
    return new LoadState(
        from.id() + "+" + permille,
        from.title() + " (" + permille + "/1000 on)",
        from.kind(),
        from.surface(),
        from.trailerId(),
        from.legId(),
        from.slidesOut(),
        from.noteOnly(),
        massG,
        Arrays.asList(shift));
  }

  private static ShiftMm between(ShiftMm from, ShiftMm to, double fraction) {
    if (from.equals(to)) {
      return from;
    }
    return new ShiftMm(
        (int) Math.round(between(from.xMm(), to.xMm(), fraction)),
        (int) Math.round(between(from.yMm(), to.yMm(), fraction)),
        between(from.zMm(), to.zMm(), fraction));
  }

  private static double between(double from, double to, double fraction) {
    return from + (to - from) * fraction;
  }
}
