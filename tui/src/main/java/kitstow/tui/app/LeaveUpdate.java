package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.tui.edit.Design;

/** Saving, closing and ending, so that nothing is lost unasked. */
final class LeaveUpdate {
  private LeaveUpdate() {}

  static Step save(AppState state, Work work) {
    boolean scenarioChanged = !work.settled().scenario().equals(work.saved().scenario());
    return Step.to(
        state.saying("Saving ..."),
        new Effect.Save(work.source(), work.settled(), scenarioChanged));
  }

  static Step quit(AppState state) {
    Optional<Work> unsaved = state.work().filter(Work::unsaved);
    return unsaved.isPresent()
        ? asked(state, Decision.SAVE_AND_END, "end without saving", Decision.END)
        : decided(state, Decision.END, Optional.empty());
  }

  static Step close(AppState state, Work work) {
    return work.unsaved()
        ? asked(state, Decision.SAVE_AND_CLOSE, "close without saving", Decision.CLOSE)
        : decided(state, Decision.CLOSE, Optional.empty());
  }

  private static Step asked(AppState state, Decision yes, String without, Decision no) {
    return Step.to(
        state.with(
            new Overlay.Ask("This is not saved.", "save", yes, without, no, Optional.empty())));
  }

  /** Work of last time was found. */
  static Overlay recovery(Design recovered) {
    return new Overlay.Ask(
        "Work on this was not saved last time.",
        "take it up",
        Decision.RECOVER,
        "forget it",
        Decision.FORGET,
        Optional.of(recovered));
  }

  static Step decided(AppState state, Decision decision, Optional<Design> about) {
    if (state.work().isEmpty()) {
      return Step.to(state, new Effect.End());
    }
    Work work = state.work().get();
    return switch (decision) {
      case SAVE_AND_END, SAVE_AND_CLOSE -> {
        Decision then = decision == Decision.SAVE_AND_END ? Decision.END : Decision.CLOSE;
        yield save(state.then(Optional.of(then)), work);
      }
      case END -> left(state, work, new Effect.End());
      case CLOSE -> left(state.closed(), work, new Effect.ListFolder(state.shelf().folder()));
      case RECOVER ->
          about
              .map(design -> CarryUpdate.done(state, work, "take up unsaved work", design))
              .orElse(Step.to(state));
      case FORGET -> Step.to(state, new Effect.Forget(work.source()));
    };
  }

  private static Step left(AppState state, Work work, Effect last) {
    List<Effect> effects = new ArrayList<>(SearchUpdate.abandon(work));
    effects.add(new Effect.Forget(work.source()));
    effects.add(last);
    return new Step(state, effects);
  }

  static Step saved(AppState state, Msg.Saved saved) {
    if (state.work().isEmpty()) {
      return Step.to(state);
    }
    Effect forget = new Effect.Forget(state.work().get().source());
    Work work = state.work().get().saved(saved.source(), saved.design());
    AppState written =
        state
            .with(work)
            .then(Optional.empty())
            .saying(
                "Saved in "
                    + saved.source().planFile().getFileName()
                    + " for "
                    + saved.source().scenarioFile().getFileName()
                    + ".");
    return state
        .afterSaving()
        .map(then -> decided(written, then, Optional.empty()))
        .orElse(Step.to(written))
        .first(forget);
  }
}
