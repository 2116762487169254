package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.LoadPlanner;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Space;
import kitstow.tui.edit.Design;
import kitstow.tui.keys.Action;
import kitstow.tui.keys.Target;
import kitstow.tui.view.Eye;

/**
 * The mouse on the pictures: the first click chooses a thing, a second takes it up, one elsewhere
 * carries it there, one on itself puts it down; a thing that is dragged is carried and put down.
 */
final class MouseUpdate {
  private MouseUpdate() {}

  static Step pointed(AppState state, Work work, Target.Spot spot) {
    Optional<Activity.Carrying> carrying = work.carrying();
    if (carrying.isPresent()) {
      return spot.key().equals(carrying.get().key())
          ? ActionUpdate.apply(state, Action.DROP)
          : moved(state, work, carrying.get(), spot);
    }
    if (spot.key().isEmpty()) {
      return Step.to(state);
    }
    boolean again = spot.key().equals(work.looking().chosen());
    Eye eye = Eye.valueOf(spot.eye());
    Work at = work.with(work.looking().from(eye).at(spot.key()));
    return again
        ? ActionUpdate.apply(state.with(at), Action.CARRY)
        : Step.to(state.with(at).saying("Click it again to take it up, or drag it."));
  }

  /** The button is let go over a spot: what was pressed on is carried there and put down. */
  static Step dragged(AppState state, Work work, Target.Spot from, Target.Spot to) {
    Optional<String> held = work.carrying().map(Activity.Carrying::key);
    boolean moves =
        !from.key().isEmpty() && !from.key().equals(to.key()) && from.eye().equals(to.eye());
    if (!moves || (held.isPresent() && !held.get().equals(from.key()))) {
      return Step.to(state);
    }
    Work at = work.with(work.looking().from(Eye.valueOf(to.eye())).at(from.key()));
    Step taken =
        held.isPresent() ? Step.to(state) : ActionUpdate.apply(state.with(at), Action.CARRY);
    Work carrying = taken.state().work().orElseThrow();
    if (carrying.carrying().isEmpty()) {
      return taken;
    }
    Step there = moved(taken.state(), carrying, carrying.carrying().get(), to);
    Step down = ActionUpdate.apply(there.state(), Action.DROP);
    AppState end =
        there.state().note().isEmpty() ? down.state() : down.state().saying(there.state().note());
    List<Effect> effects = new ArrayList<>(taken.effects());
    effects.addAll(there.effects());
    effects.addAll(down.effects());
    return new Step(end, effects);
  }

  /** Carries a thing into the space under a spot, as near to it as the space allows. */
  private static Step moved(
      AppState state, Work work, Activity.Carrying carrying, Target.Spot spot) {
    PlacedItem item = work.loading().placed().get(carrying.key());
    Optional<Space> under = under(work, spot);
    if (item == null || under.isEmpty()) {
      return Step.to(state.saying("There is no space there; Esc puts it back."));
    }
    Space space = under.get();
    Work there = space.id().equals(item.space().id()) ? work : into(work, item, space);
    PlacedItem held = there.loading().placed().get(carrying.key());
    if (held == null || !held.space().id().equals(space.id())) {
      return Step.to(state.saying("That space does not take it as things stand."));
    }
    Eye eye = Eye.valueOf(spot.eye());
    BoxMm box = new Slide(there.loading(), held).near(eye, spot.acrossMm(), spot.upMm());
    Design design = Placements.with(there.design(), Placements.at(held, box));
    return Step.to(
        state.with(there.with(design).with(there.looking().from(eye).at(carrying.key()))),
        new Effect.Judge(design));
  }

  private static Work into(Work work, PlacedItem item, Space space) {
    Design design = work.design();
    Optional<Placement> place =
        LoadPlanner.spots(design.scenario(), design.plan(), item.item().id(), item.unit())
            .in(space.id());
    return place.map(at -> work.with(Placements.with(design, at))).orElse(work);
  }

  /** The smallest space that is seen under a spot. */
  private static Optional<Space> under(Work work, Target.Spot spot) {
    Eye eye = Eye.valueOf(spot.eye());
    Space best = null;
    long least = Long.MAX_VALUE;
    for (Space space : work.loading().rig().spaces().values()) {
      BoxMm box = space.box();
      boolean holds =
          eye.sees(box, space.zone())
              && eye.minAcrossMm(box) <= spot.acrossMm()
              && spot.acrossMm() <= eye.maxAcrossMm(box)
              && eye.minUpMm(box) <= spot.upMm()
              && spot.upMm() <= eye.maxUpMm(box);
      long size =
          (long) (eye.maxAcrossMm(box) - eye.minAcrossMm(box))
              * (eye.maxUpMm(box) - eye.minUpMm(box));
      if (holds && size < least) {
        best = space;
        least = size;
      }
    }
    return Optional.ofNullable(best);
  }
}
