package kitstow.planner.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One moment of the trip: what every body of a {@link Loading} weighs and how far it has moved.
 * Masses are rounded to a gram. Immutable.
 */
public final class LoadState {
  private final String id;
  private final String title;
  private final LoadKind kind;
  private final Surface surface;
  private final Optional<String> trailerId;
  private final Optional<String> legId;
  private final Set<String> slidesOut;
  private final boolean noteOnly;
  private final long[] massG;
  private final ShiftMm[] shift;
  private final boolean anyMovedAlong;

  /**
   * A state.
   *
   * @param id unique among the states of one trip
   * @param title shown to people
   * @param kind moving, parked or certification
   * @param surface what is driven on; of no account when parked
   * @param trailerId trailer on the ball, if any
   * @param legId leg it belongs to, if any
   * @param slidesOut ids of the modules that are pulled out
   * @param noteOnly whether it is shown as a note and judged by no limit
   * @param massG grams by body, in the order of {@link Loading#bodies()}
   * @param shift by body, in the same order
   */
  public LoadState(
      String id,
      String title,
      LoadKind kind,
      Surface surface,
      Optional<String> trailerId,
      Optional<String> legId,
      Set<String> slidesOut,
      boolean noteOnly,
      long[] massG,
      List<ShiftMm> shift) {
    if (massG.length != shift.size()) {
      throw new IllegalArgumentException(
          "masses and shifts differ in number: " + massG.length + ", " + shift.size());
    }
    this.id = id;
    this.title = title;
    this.kind = kind;
    this.surface = surface;
    this.trailerId = trailerId;
    this.legId = legId;
    this.slidesOut = Set.copyOf(slidesOut);
    this.noteOnly = noteOnly;
    this.massG = Arrays.copyOf(massG, massG.length);
    this.shift = shift.toArray(new ShiftMm[0]);
    boolean moved = false;
    for (ShiftMm one : shift) {
      moved |= one.xMm() != 0;
    }
    this.anyMovedAlong = moved;
  }

  /** Unique among the states of one trip. */
  public String id() {
    return id;
  }

  /** Shown to people. */
  public String title() {
    return title;
  }

  /** Moving, parked or certification. */
  public LoadKind kind() {
    return kind;
  }

  /** What is driven on. */
  public Surface surface() {
    return surface;
  }

  /** Trailer on the ball, if any. */
  public Optional<String> trailerId() {
    return trailerId;
  }

  /** Leg it belongs to, if any. */
  public Optional<String> legId() {
    return legId;
  }

  /** Whether any body has moved along the vehicle. */
  public boolean anyMovedAlong() {
    return anyMovedAlong;
  }

  /** Modules that are pulled out. */
  public Set<String> slidesOut() {
    return slidesOut;
  }

  /** Whether it is shown as a note only. */
  public boolean noteOnly() {
    return noteOnly;
  }

  /** Number of bodies. */
  public int size() {
    return massG.length;
  }

  /** Mass of a body in grams. */
  public long massG(int body) {
    return massG[body];
  }

  /** How far a body has moved. */
  public ShiftMm shift(int body) {
    return shift[body];
  }
}
