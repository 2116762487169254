package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.StateFigures;

/**
 * An opened scenario.
 *
 * @param source its files
 * @param design scenario and plan
 * @param loading the plan carried out
 * @param report the last judgement; of an earlier plan while this one is being judged
 * @param judged whether the report is of this plan
 * @param advice what follows from the report, once it was asked for
 * @param looking what is looked at
 */
public record Work(
    Source source,
    Design design,
    Loading loading,
    Optional<CheckReport> report,
    boolean judged,
    Optional<Advice> advice,
    Looking looking) {

  /** Just opened. */
  public static Work of(Source source, Design design) {
    return new Work(
        source,
        design,
        Loading.of(design.scenario(), design.plan()),
        Optional.empty(),
        /* judged= */ false,
        Optional.empty(),
        Looking.START);
  }

  /** Looking elsewhere. */
  public Work with(Looking other) {
    return new Work(source, design, loading, report, judged, advice, other);
  }

  /** Judged. */
  public Work with(CheckReport found) {
    return new Work(
        source, design, loading, Optional.of(found), /* judged= */ true, Optional.empty(), looking);
  }

  /** Advised. */
  public Work with(Advice found) {
    return new Work(source, design, loading, report, judged, Optional.of(found), looking);
  }

  /** Figures of all states; none before the first judgement. */
  public List<StateFigures> states() {
    return report.map(CheckReport::states).orElse(List.of());
  }

  /** Place of the shown state in the list of states, or -1. */
  public int stateIndex() {
    String id = looking.stateId().isEmpty() ? worstStateId() : looking.stateId();
    List<StateFigures> states = states();
    for (int i = 0; i < states.size(); i++) {
      if (states.get(i).state().id().equals(id)) {
        return i;
      }
    }
    return states.isEmpty() ? -1 : 0;
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
