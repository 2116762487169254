package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Tank;
import kitstow.planner.report.Lever;
import kitstow.tui.edit.Design;
import kitstow.tui.edit.TankEditor;

/** What would take load off the tightest limit. */
final class Levers {
  private Levers() {}

  /** The design with the lever that is told first. */
  static Optional<Design> first(Work work) {
    List<Lever> levers = work.advice().flatMap(Advice::levers).orElse(List.of());
    return levers.isEmpty() ? Optional.empty() : Optional.of(with(work.design(), levers.get(0)));
  }

  private static Design with(Design design, Lever lever) {
    if (lever.change() instanceof Lever.Repacked repacked) {
      return design.with(repacked.plan());
    }
    if (lever.change() instanceof Lever.Drained drained) {
      Tank tank = EditRows.tank(design.scenario(), drained.tankId()).orElseThrow();
      return TankEditor.filled(design, tank, tank.startMl() - drained.ml());
    }
    throw new IllegalStateException("no such change: " + lever.change());
  }

  /** Why none can be carried out. */
  static Optional<String> whyNot(Work work) {
    if (work.advice().flatMap(Advice::levers).isEmpty()) {
      return Optional.of("levers are being tried out; page 6 shows them");
    }
    return first(work).isEmpty()
        ? Optional.of("no single change takes load off the tightest limit")
        : Optional.empty();
  }
}
