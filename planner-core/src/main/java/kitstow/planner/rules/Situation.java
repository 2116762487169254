package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.Settings;
import kitstow.planner.model.Space;
import kitstow.planner.model.Surface;
import kitstow.planner.packing.Contacts;
import kitstow.planner.statics.LoadLine;
import kitstow.planner.trip.AxleKerb;
import kitstow.planner.trip.EmptyUte;
import kitstow.planner.trip.Timeline;

/** A loading with its trip, and what several rules look up in it. */
public final class Situation {
  private final Loading loading;
  private final Timeline timeline;
  private final AxleKerb kerb;
  private final Map<Case, List<LoadLine>> linesByCase = new ConcurrentHashMap<>();
  private final Map<String, List<Contacts>> contactsBySpace = new LinkedHashMap<>();

  /** All of a state that decides which lines a limit has. */
  private record Case(LimitRule rule, LoadKind kind, Surface surface, Optional<String> trailerId) {}

  private Situation(Loading loading, Timeline timeline) {
    this.loading = loading;
    this.timeline = timeline;
    this.kerb = EmptyUte.kerbOf(loading.scenario());
    for (Space space : loading.rig().spaces().values()) {
      if (standsOnFloor(space)) {
        List<PlacedItem> items = loading.in(space.id());
        List<Contacts> contacts = new ArrayList<>();
        for (PlacedItem item : items) {
          contacts.add(Contacts.of(item, space, items));
        }
        contactsBySpace.put(space.id(), contacts);
      }
    }
  }

  /** A loading with its own trip. */
  public static Situation of(Loading loading) {
    return new Situation(loading, Timeline.of(loading));
  }

  /** A loading in given states. */
  public static Situation of(Loading loading, Timeline timeline) {
    return new Situation(loading, timeline);
  }

  /** Whether things stand in a space as on a floor; false on bare bars. */
  static boolean standsOnFloor(Space space) {
    return space.bars().map(RoofBars::platformFloor).orElse(true);
  }

  /** Loading. */
  public Loading loading() {
    return loading;
  }

  /** Trip. */
  public Timeline timeline() {
    return timeline;
  }

  /** Axle loads of the ute at kerb. */
  public AxleKerb kerb() {
    return kerb;
  }

  /** Settings. */
  public Settings settings() {
    return loading.scenario().settings();
  }

  /**
   * Lines of a limit in a state. They are the same in every state of one kind, surface and trailer,
   * since no limit that moves with a body along the vehicle is judged while slides are out.
   */
  public List<LoadLine> lines(LimitRule rule, LoadState state) {
    if (state.kind() != LoadKind.PARKED && state.anyMovedAlong()) {
      return rule.lines(loading, state);
    }
    return linesByCase.computeIfAbsent(
        new Case(rule, state.kind(), state.surface(), state.trailerId()),
        same -> rule.lines(loading, state));
  }

  /** States that limits are held against. */
  public List<LoadState> judgedStates() {
    List<LoadState> judged = new ArrayList<>();
    for (LoadState state : timeline.states()) {
      if (!state.noteOnly()) {
        judged.add(state);
      }
    }
    return judged;
  }

  /** What every item stands on, by space; spaces with bare bars are left out. */
  public Map<String, List<Contacts>> contactsBySpace() {
    return contactsBySpace;
  }

  /** Contacts of one item; absent on bare bars. */
  public Optional<Contacts> contactsOf(PlacedItem item) {
    for (Contacts contacts : contactsBySpace.getOrDefault(item.space().id(), List.of())) {
      if (contacts.item().is(item)) {
        return Optional.of(contacts);
      }
    }
    return Optional.empty();
  }
}
