package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.LoadPlanner;
import kitstow.planner.advice.Spots;
import kitstow.planner.model.Item;
import kitstow.planner.model.Pin;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Space;
import kitstow.tui.edit.Design;
import kitstow.tui.keys.Action;
import kitstow.tui.view.Eye;
import kitstow.tui.view.Subjects;

/** What is done by hand: carry, turn, pin, send home, bring back, undo, redo. */
final class CarryUpdate {
  /** A step by shift and arrow. */
  private static final int FINE_MM = 10;

  private CarryUpdate() {}

  /** An action while nothing is carried. */
  static Step byHand(AppState state, Work work, Action action) {
    if (action == Action.UNDO) {
      return undone(state, work);
    }
    if (action == Action.REDO) {
      return redone(state, work);
    }
    String key = work.looking().chosen();
    Item item = Things.item(work.loading(), key).orElseThrow();
    PlacedItem placed = work.loading().placed().get(key);
    if (action == Action.PIN) {
      return pin(state, work, item, Optional.ofNullable(placed));
    }
    if (placed == null) {
      return brought(state, work, item, key, action == Action.CARRY);
    }
    return switch (action) {
      case HOME ->
          done(
              state,
              work,
              "send home " + Things.name(work.loading(), key),
              Placements.without(work.design(), item.id(), placed.unit()));
      case TURN -> turned(state, work, placed);
      default ->
          Step.to(
              state.with(
                  work.with(new Activity.Carrying(key, work.design()))
                      .with(work.looking().on(Sheet.LOAD))));
    };
  }

  private static Step turned(AppState state, Work work, PlacedItem placed) {
    return Placements.turned(placed)
        .map(
            placement ->
                done(
                    state,
                    work,
                    "turn " + placed.item().title(),
                    Placements.with(work.design(), placement)))
        .orElse(Step.to(state.saying("It may stand one way only.")));
  }

  private static Step brought(AppState state, Work work, Item item, String key, boolean thenCarry) {
    Design before = work.design();
    Optional<Placement> best =
        LoadPlanner.spots(before.scenario(), before.plan(), item.id(), Things.unit(item, key))
            .best();
    if (best.isEmpty()) {
      return Step.to(
          state.saying("No space takes it as things stand; 4 says why, for each space."));
    }
    Design after = Placements.with(before, best.get());
    if (!thenCarry) {
      return lookingAt(done(state, work, "bring " + item.title(), after), key);
    }
    Work carried = work.with(after).with(new Activity.Carrying(key, before));
    return lookingAt(
        new Step(
            state.with(carried.with(work.looking().on(Sheet.LOAD))),
            List.of(new Effect.Judge(after))),
        key);
  }

  /** The same step, seen from where a thing is seen. */
  private static Step lookingAt(Step step, String key) {
    Work work = step.state().work().orElseThrow();
    Looking looking = work.looking();
    Eye eye = Things.seenFrom(work.loading(), key, looking.eye());
    return new Step(step.state().with(work.with(looking.from(eye).at(key))), step.effects());
  }

  private static Step pin(AppState state, Work work, Item item, Optional<PlacedItem> placed) {
    if (item.pin().isPresent()) {
      return done(
          state,
          work,
          "take the pin off " + item.title(),
          Placements.pinned(work.design(), item.id(), Optional.empty()));
    }
    Placement at = placed.orElseThrow().placement();
    if (item.quantity() == 1) {
      Pin pin = new Pin(at.spaceId(), Optional.of(at.corner()), Optional.of(at.turn()));
      return done(
          state,
          work,
          "pin " + item.title(),
          Placements.pinned(work.design(), item.id(), Optional.of(pin)));
    }
    return Placements.onlySpace(work.loading(), item)
        .map(
            space ->
                done(
                    state,
                    work,
                    "pin all " + item.quantity() + " x " + item.title(),
                    Placements.pinned(
                        work.design(),
                        item.id(),
                        Optional.of(new Pin(space.id(), Optional.empty(), Optional.empty())))))
        .orElse(
            Step.to(
                state.saying(
                    "A pin holds for all "
                        + item.quantity()
                        + " of them, and they are not in one space.")));
  }

  /** A change by hand, noted, judged and kept safe. */
  static Step done(AppState state, Work work, String what, Design after) {
    Design before = work.settled();
    Work changed = work.with(after).with(work.past().with(new Change(what, before, after)));
    return new Step(
        state.with(changed).saying("Done: " + what + ". u undoes it."),
        List.of(new Effect.Judge(after), new Effect.KeepSafe(changed.source(), after)));
  }

  private static Step undone(AppState state, Work work) {
    return work.past()
        .last()
        .map(
            change ->
                restored(
                    state, work, change.before(), work.past().back(), "Undone: " + change.what()))
        .orElse(Step.to(state.saying("Nothing to undo.")));
  }

  private static Step redone(AppState state, Work work) {
    return work.past()
        .lastUndone()
        .map(
            change ->
                restored(
                    state, work, change.after(), work.past().forth(), "Again: " + change.what()))
        .orElse(Step.to(state.saying("Nothing to do again.")));
  }

  private static Step restored(AppState state, Work work, Design design, Past past, String note) {
    Work restored = work.with(design).with(past);
    return new Step(
        state.with(restored).saying(note + "."),
        List.of(new Effect.Judge(design), new Effect.KeepSafe(work.source(), design)));
  }

  /** An action while a thing is carried. */
  static Step carrying(AppState state, Work work, Activity.Carrying carrying, Action action) {
    PlacedItem item = work.loading().placed().get(carrying.key());
    if (item == null) {
      return dropped(state, work, carrying);
    }
    Eye eye = work.looking().eye();
    return switch (action) {
      case LEFT -> pushed(state, work, item, across(eye), -1, false);
      case RIGHT -> pushed(state, work, item, across(eye), 1, false);
      case UP -> pushed(state, work, item, up(eye), 1, false);
      case DOWN -> pushed(state, work, item, up(eye), -1, false);
      case PAN_LEFT -> pushed(state, work, item, across(eye), -1, true);
      case PAN_RIGHT -> pushed(state, work, item, across(eye), 1, true);
      case PAN_UP -> pushed(state, work, item, up(eye), 1, true);
      case PAN_DOWN -> pushed(state, work, item, up(eye), -1, true);
      case PAGE_UP -> pushed(state, work, item, deep(eye), away(eye), false);
      case PAGE_DOWN -> pushed(state, work, item, deep(eye), -away(eye), false);
      case NEXT_SPACE -> toSpace(state, work, carrying, item, 1);
      case PREVIOUS_SPACE -> toSpace(state, work, carrying, item, -1);
      case TURN ->
          Placements.turned(item)
              .map(placement -> held(state, work, Placements.with(work.design(), placement)))
              .orElse(Step.to(state.saying("It may stand one way only.")));
      case DROP -> dropped(state, work, carrying);
      case HOME ->
          done(
              state,
              work.with(Activity.NONE),
              "send home " + item.item().title(),
              Placements.without(carrying.before(), item.item().id(), item.unit()));
      case BACK -> putBack(state, work, carrying);
      default -> Step.to(state);
    };
  }

  /** As it was before the thing was taken up. */
  static Step putBack(AppState state, Work work, Activity.Carrying carrying) {
    return Step.to(
        state
            .with(work.with(Activity.NONE).with(carrying.before()))
            .saying("Put back where it was."),
        new Effect.Judge(carrying.before()));
  }

  private static Step dropped(AppState state, Work work, Activity.Carrying carrying) {
    Design after = work.design();
    Work free = work.with(Activity.NONE);
    if (after.equals(carrying.before())) {
      return Step.to(state.with(free).saying("It stays where it was."));
    }
    String what = "carry " + Things.name(work.loading(), carrying.key());
    Work changed = free.with(work.past().with(new Change(what, carrying.before(), after)));
    return Step.to(
        state.with(changed).saying("Done: " + what + ". u undoes it."),
        new Effect.KeepSafe(changed.source(), after));
  }

  private static Step pushed(
      AppState state, Work work, PlacedItem item, Slide.Axis axis, int sign, boolean finely) {
    return new Slide(work.loading(), item)
        .pushed(axis, sign, finely, FINE_MM)
        .map(box -> held(state, work, Placements.with(work.design(), Placements.at(item, box))))
        .orElse(Step.to(state.saying("It goes no farther that way; Tab tries the next space.")));
  }

  private static Step held(AppState state, Work work, Design design) {
    return Step.to(state.with(work.with(design)), new Effect.Judge(design));
  }

  /** Into the next space that takes it. */
  private static Step toSpace(
      AppState state, Work work, Activity.Carrying carrying, PlacedItem item, int by) {
    Spots spots =
        LoadPlanner.spots(
            work.design().scenario(), work.design().plan(), item.item().id(), item.unit());
    List<Space> spaces = new ArrayList<>(work.loading().rig().spaces().values());
    int at = spaces.indexOf(item.space());
    for (int i = 1; i < spaces.size(); i++) {
      Space space = spaces.get(Math.floorMod(at + by * i, spaces.size()));
      Optional<Placement> place = spots.in(space.id());
      if (place.isPresent()) {
        Step step = held(state, work, Placements.with(work.design(), place.get()));
        return lookingAt(
            new Step(
                step.state().saying("In " + new Subjects(work.loading()).space(space) + "."),
                step.effects()),
            carrying.key());
      }
    }
    return Step.to(state.saying("No other space takes it as things stand."));
  }

  private static Slide.Axis across(Eye eye) {
    return eye == Eye.REAR ? Slide.Axis.Y : Slide.Axis.X;
  }

  private static Slide.Axis up(Eye eye) {
    return eye.flat() ? Slide.Axis.Y : Slide.Axis.Z;
  }

  private static Slide.Axis deep(Eye eye) {
    return switch (eye) {
      case LEFT, RIGHT -> Slide.Axis.Y;
      case ABOVE, ROOFS -> Slide.Axis.Z;
      case REAR -> Slide.Axis.X;
    };
  }

  /** Which way along that axis leads away from the eye, or up where one looks down. */
  private static int away(Eye eye) {
    return switch (eye) {
      case LEFT, ABOVE, ROOFS -> 1;
      case RIGHT, REAR -> -1;
    };
  }
}
