package kitstow.planner.report;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.rules.LimitRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.statics.LoadLine;

/** What loads a limit most. */
final class Contributors {
  /** What is load, and not the vehicle or who rides in it. */
  private static final Set<BodyKind> LOAD =
      EnumSet.of(
          BodyKind.ACCESSORY,
          BodyKind.MODULE,
          BodyKind.TANK,
          BodyKind.LIQUID,
          BodyKind.ITEM,
          BodyKind.BALL);

  private Contributors() {}

  /** The heaviest loads behind a reading, or "" where no body is behind it. */
  static String heaviest(Loading loading, LimitReading reading) {
    Amounts amounts = new Amounts();
    line(loading, reading).ifPresent(line -> add(amounts, loading, reading.state(), line));
    return amounts.heaviest();
  }

  /** Adds what each thing that could be left at home or moved puts on a limit. */
  private static void add(Amounts amounts, Loading loading, LoadState state, LoadLine line) {
    for (LoadLine.Term term : line.terms()) {
      Body body = loading.bodies().get(term.body());
      double kg = state.massG(term.body()) * (double) term.numerator() / line.denominator() / 1e3;
      if (kg > 0.0 && LOAD.contains(body.kind())) {
        amounts.add(body, kg);
      }
    }
  }

  /** The line behind a reading. */
  static Optional<LoadLine> line(Loading loading, LimitReading reading) {
    for (LimitRule rule : RuleBook.LIMITS) {
      if (rule.card().id() == reading.rule()) {
        for (LoadLine line : rule.lines(loading, reading.state())) {
          if (line.subjectId().equals(reading.subjectId())) {
            return Optional.of(line);
          }
        }
      }
    }
    return Optional.empty();
  }
}
