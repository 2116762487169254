package kitstow.tui.app;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.StateFigures;
import kitstow.tui.edit.Design;

/**
 * An opened scenario.
 *
 * @param source its files
 * @param design scenario and plan as they are shown
 * @param loading the plan carried out
 * @param report the last judgement; of an earlier plan while this one is being judged
 * @param judged whether the report is of this plan
 * @param advice what follows from the report, once it was asked for
 * @param looking what is looked at
 * @param past what was done
 * @param activity what is going on
 * @param saved what the files hold
 * @param packed body keys of units that are ticked on the pack list
 * @param catalogue what can be added
 * @param floor the last floor that was found, of this scenario
 */
public record Work(
    Source source,
    Design design,
    Loading loading,
    Optional<CheckReport> report,
    boolean judged,
    Optional<Advice> advice,
    Looking looking,
    Past past,
    Activity activity,
    Design saved,
    Set<String> packed,
    Catalogue catalogue,
    Optional<Floor> floor) {
  /** Copies its collections. */
  public Work {
    packed = Set.copyOf(packed);
  }

  /** Just opened. */
  public static Work of(Source source, Design design, Catalogue catalogue) {
    return new Work(
        source,
        design,
        Loading.of(design.scenario(), design.plan()),
        Optional.empty(),
        /* judged= */ false,
        Optional.empty(),
        Looking.START,
        Past.NONE,
        Activity.NONE,
        design,
        Set.of(),
        catalogue,
        Optional.empty());
  }

  /** Looking elsewhere. */
  public Work with(Looking other) {
    return new Work(
        source, design, loading, report, judged, advice, other, past, activity, saved, packed,
        catalogue, floor);
  }

  /** Judged. */
  public Work with(CheckReport found) {
    return new Work(
        source,
        design,
        loading,
        Optional.of(found),
        /* judged= */ true,
        Optional.empty(),
        looking,
        past,
        activity,
        saved,
        packed,
        catalogue,
        floor);
  }

  /** Advised. */
  public Work with(Advice found) {
    return new Work(
        source,
        design,
        loading,
        report,
        judged,
        Optional.of(found),
        looking,
        past,
        activity,
        saved,
        packed,
        catalogue,
        floor);
  }

  /** Another design, not judged yet. */
  public Work with(Design other) {
    Optional<Floor> known = floor.filter(one -> other.scenario().equals(design.scenario()));
    return new Work(
        source,
        other,
        Loading.of(other.scenario(), other.plan()),
        report,
        /* judged= */ false,
        Optional.empty(),
        looking,
        past,
        activity,
        saved,
        packed,
        catalogue,
        known);
  }

  /** With a floor. */
  public Work with(Floor found) {
    return new Work(
        source,
        design,
        loading,
        report,
        judged,
        advice,
        looking,
        past,
        activity,
        saved,
        packed,
        catalogue,
        Optional.of(found));
  }

  /** Another past. */
  public Work with(Past other) {
    return new Work(
        source, design, loading, report, judged, advice, looking, other, activity, saved, packed,
        catalogue, floor);
  }

  /** Something else going on. */
  public Work with(Activity other) {
    return new Work(
        source, design, loading, report, judged, advice, looking, past, other, saved, packed,
        catalogue, floor);
  }

  /** Saved in files. */
  public Work saved(Source files, Design what) {
    return new Work(
        files, design, loading, report, judged, advice, looking, past, activity, what, packed,
        catalogue, floor);
  }

  /** A unit ticked on the pack list, or no more. */
  public Work ticked(String key) {
    Set<String> other = new HashSet<>(packed);
    if (!other.remove(key)) {
      other.add(key);
    }
    return new Work(
        source, design, loading, report, judged, advice, looking, past, activity, saved, other,
        catalogue, floor);
  }

  /** Whether the files hold something else. */
  public boolean unsaved() {
    return !settled().equals(saved);
  }

  /** The design without what is only being tried. */
  public Design settled() {
    return activity.match(() -> design, carrying -> carrying.before(), search -> search.before());
  }

  /** The least moment that any plan can have which places what this one does, if it is known. */
  public OptionalDouble floorNm() {
    return floor.map(one -> one.nmFor(loading)).orElse(OptionalDouble.empty());
  }

  /** The search that is going on. */
  public Optional<Activity.Searching> searching() {
    return activity.match(Optional::empty, carrying -> Optional.empty(), Optional::of);
  }

  /** What is being carried. */
  public Optional<Activity.Carrying> carrying() {
    return activity.match(Optional::empty, Optional::of, search -> Optional.empty());
  }

  /** Figures of all states; none before the first judgement. */
  public List<StateFigures> states() {
    return report.map(CheckReport::states).orElse(List.of());
  }

  /**
   * Place of the shown state in the list of states, or -1. Another plan may not have the moment
   * that is looked at (when a can is emptied, say): then the one nearest to it in the trip.
   */
  public int stateIndex() {
    String id = looking.stateId().isEmpty() ? worstStateId() : looking.stateId();
    List<StateFigures> states = states();
    int nearest = states.isEmpty() ? -1 : 0;
    int shared = 0;
    for (int i = 0; i < states.size(); i++) {
      String other = states.get(i).state().id();
      if (other.equals(id)) {
        return i;
      }
      int same = sharedBeginning(id, other);
      if (same > shared) {
        nearest = i;
        shared = same;
      }
    }
    return nearest;
  }

  /** Number of signs at the beginning that two ids share; ids of one leg begin alike. */
  private static int sharedBeginning(String a, String b) {
    int shared = 0;
    while (shared < Math.min(a.length(), b.length()) && a.charAt(shared) == b.charAt(shared)) {
      shared++;
    }
    return shared;
  }

  /** Figures of the shown state. */
  public Optional<StateFigures> state() {
    int index = stateIndex();
    return index < 0 ? Optional.empty() : Optional.of(states().get(index));
  }

  /** The shown state, where its bodies are those of the load that is drawn. */
  public Optional<LoadState> drawnState() {
    return judged ? state().map(StateFigures::state) : Optional.empty();
  }

  /** The state that decides the answer. */
  public String worstStateId() {
    return report
        .flatMap(found -> found.verdict().tightest())
        .map(LimitReading::state)
        .map(LoadState::id)
        .orElse("");
  }
}
