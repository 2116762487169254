package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.statics.LoadLine;

/**
 * A limit in one state of a plan, read again for a changed plan with what everything weighed in
 * that state: a quick look before the trip is run again.
 */
final class SameMasses {
  private final Loading loading;
  private final LoadState state;
  private final LimitRule rule;
  private final String subjectId;
  private final Optional<LoadLine> now;

  private SameMasses(Loading loading, LoadState state, LimitRule rule, String subjectId) {
    this.loading = loading;
    this.state = state;
    this.rule = rule;
    this.subjectId = subjectId;
    this.now = line(loading, state);
  }

  /** A reading of a limit; nothing where the rule is no limit. */
  static Optional<SameMasses> of(Loading loading, LoadState state, RuleId rule, String subjectId) {
    for (LimitRule limit : RuleBook.LIMITS) {
      if (limit.card().id() == rule) {
        return Optional.of(new SameMasses(loading, state, limit, subjectId));
      }
    }
    return Optional.empty();
  }

  /** By how many kilograms another plan is over the limit, below zero where it is within. */
  double overKg(Loading changed) {
    LoadState then = carriedOver(changed);
    return line(changed, then)
        .map(line -> (line.loadG(then) - line.limitG()) / 1000.0)
        .orElse(-1.0);
  }

  /** What a body puts on the limit now, kilograms. */
  double loadKg(String key) {
    Optional<LoadLine> line = now;
    double sum = 0.0;
    int body = loading.indexOf(key);
    if (line.isPresent()) {
      for (LoadLine.Term term : line.get().terms()) {
        if (term.body() == body) {
          sum += state.massG(term.body()) * (double) term.numerator();
        }
      }
      sum /= line.get().denominator() * 1000.0;
    }
    return sum;
  }

  private Optional<LoadLine> line(Loading of, LoadState in) {
    for (LoadLine line : rule.lines(of, in)) {
      if (line.subjectId().equals(subjectId)) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  private LoadState carriedOver(Loading changed) {
    int size = changed.bodies().size();
    long[] massG = new long[size];
    List<ShiftMm> shift = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      int was = loading.indexOf(changed.bodies().get(i).key());
      massG[i] = was < 0 ? changed.bodies().get(i).nominalG() : state.massG(was);
      shift.add(was < 0 ? ShiftMm.NONE : state.shift(was));
    }
    return new LoadState(
        state.id(),
        state.title(),
        state.kind(),
        state.surface(),
        state.trailerId(),
        state.legId(),
        state.slidesOut(),
        state.noteOnly(),
        massG,
        shift);
  }
}
