package kitstow.planner.testkit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trailer;

/**
 * A moment of a loading: every body with its nominal mass in its place, empty seats and the ball
 * with none. Nothing of the trip is worked out; what matters to a test is set by hand.
 */
public final class StateBuilder {
  private final Loading loading;
  private final LoadKind kind;
  private final Map<String, Long> massG = new LinkedHashMap<>();
  private final Map<String, ShiftMm> shift = new LinkedHashMap<>();
  private String id;
  private Surface surface = Surface.ROAD;
  private Optional<String> trailerId = Optional.empty();
  private Optional<String> legId = Optional.empty();
  private boolean noteOnly;

  private StateBuilder(Loading loading, LoadKind kind, String id) {
    this.loading = loading;
    this.kind = kind;
    this.id = id;
  }

  /** Starts a state on the road. */
  public static StateBuilder driving(Loading loading) {
    return new StateBuilder(loading, LoadKind.MOVING, "driving");
  }

  /** Starts a state at a camp. */
  public static StateBuilder parked(Loading loading) {
    return new StateBuilder(loading, LoadKind.PARKED, "parked");
  }

  /** Starts a certification state: no gear, and every seat with the certification allowance. */
  public static StateBuilder certified(Loading loading) {
    StateBuilder state = new StateBuilder(loading, LoadKind.CERTIFICATION, "certified");
    long seatG = loading.scenario().settings().seatAllowanceG();
    for (Body body : loading.bodies()) {
      if (body.kind() == BodyKind.ITEM) {
        state.massG(body.key(), 0L);
      } else if (body.kind() == BodyKind.PERSON) {
        state.massG(body.key(), seatG);
      }
    }
    return state;
  }

  /** Another id. */
  public StateBuilder id(String value) {
    id = value;
    return this;
  }

  /** Off the road. */
  public StateBuilder offRoad() {
    surface = Surface.OFF_ROAD;
    return this;
  }

  /** With a trailer of the scenario on the ball. */
  public StateBuilder towing(String trailer) {
    trailerId = Optional.of(trailer);
    for (Trailer known : loading.scenario().trailers()) {
      if (known.id().equals(trailer)) {
        massG(Loading.BALL, known.ball().massG());
      }
    }
    return this;
  }

  /** On a leg. */
  public StateBuilder leg(String leg) {
    legId = Optional.of(leg);
    return this;
  }

  /** Another mass of a body. */
  public StateBuilder massG(String key, long value) {
    massG.put(key, value);
    return this;
  }

  /** A body that has moved. */
  public StateBuilder shift(String key, int xMm, int yMm) {
    shift.put(key, new ShiftMm(xMm, yMm, 0.0));
    return this;
  }

  /** Judged by no limit. */
  public StateBuilder noteOnly() {
    noteOnly = true;
    return this;
  }

  /** The state. */
  public LoadState build() {
    List<Body> bodies = loading.bodies();
    long[] masses = new long[bodies.size()];
    List<ShiftMm> shifts = new ArrayList<>();
    for (int i = 0; i < masses.length; i++) {
      Body body = bodies.get(i);
      boolean onlyWhenSet = body.kind() == BodyKind.BALL || body.key().startsWith(Loading.SEAT);
      masses[i] = massG.getOrDefault(body.key(), onlyWhenSet ? 0L : body.nominalG());
      shifts.add(shift.getOrDefault(body.key(), ShiftMm.NONE));
    }
    return new LoadState(
        id,
        id,
        kind,
        surface,
        trailerId,
        legId,
        /* slidesOut= */ Set.of(),
        noteOnly,
        masses,
        shifts);
  }
}
