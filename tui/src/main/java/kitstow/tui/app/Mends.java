package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.report.Mend;

/** What would put right what is broken. */
final class Mends {
  private Mends() {}

  /** The first mend that changes something, in the order of the findings. */
  static Optional<Mend> first(Work work) {
    List<Mend> mends = work.advice().flatMap(Advice::mends).orElse(List.of());
    return mends.stream().filter(mend -> !mend.steps().isEmpty()).findFirst();
  }

  /** Why none can be carried out. */
  static Optional<String> whyNot(Work work) {
    if (work.advice().flatMap(Advice::mends).isEmpty()) {
      return Optional.of("what would mend it is being tried out; page 6 shows it");
    }
    if (first(work).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        work.report().filter(report -> report.broken()).isPresent()
            ? "no change that would mend it was found; s searches for another plan"
            : "nothing is broken");
  }
}
