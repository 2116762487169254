package kitstow.tui.app;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.advice.PlanFigures;
import kitstow.planner.model.Item;
import kitstow.planner.report.StateFigures;
import kitstow.tui.keys.Action;
import kitstow.tui.view.CompareText;

/** What an action makes of a state. */
final class ActionUpdate {
  private static final int SCREENFUL = 10;

  /** What works on the thing that is carried. */
  private static final Set<Action> CARRIED =
      EnumSet.of(
          Action.UP,
          Action.DOWN,
          Action.LEFT,
          Action.RIGHT,
          Action.PAN_UP,
          Action.PAN_DOWN,
          Action.PAN_LEFT,
          Action.PAN_RIGHT,
          Action.PAGE_UP,
          Action.PAGE_DOWN,
          Action.NEXT_SPACE,
          Action.PREVIOUS_SPACE,
          Action.TURN,
          Action.DROP,
          Action.HOME,
          Action.BACK);

  private ActionUpdate() {}

  static Step apply(AppState state, Action action) {
    Optional<String> refused = Refusals.why(state, action);
    if (refused.isPresent()) {
      return Step.to(state.saying("Not now: " + refused.get() + "."));
    }
    Optional<Activity.Carrying> carrying = state.work().flatMap(Work::carrying);
    if (carrying.isPresent() && CARRIED.contains(action)) {
      return CarryUpdate.carrying(state, state.work().orElseThrow(), carrying.get(), action);
    }
    return switch (action) {
      case QUIT -> LeaveUpdate.quit(state);
      case HELP -> Step.to(state.with(new Overlay.Keys(0)));
      case BACK -> back(state);
      case TAKE -> take(state);
      case BEGIN ->
          Step.to(
              state.saying("reading the catalogue ..."),
              new Effect.ReadCatalogue(state.shelf().folder()));
      case UP -> moved(state, -1, 0, 1);
      case DOWN -> moved(state, 1, 0, -1);
      case LEFT -> moved(state, 0, -1, 0);
      case RIGHT -> moved(state, 0, 1, 0);
      case PAGE_UP -> moved(state, -SCREENFUL, 0, 0);
      case PAGE_DOWN -> moved(state, SCREENFUL, 0, 0);
      default -> state.work().map(work -> inWork(state, work, action)).orElse(Step.to(state));
    };
  }

  private static Step inWork(AppState state, Work work, Action action) {
    Looking looking = work.looking();
    return switch (action) {
      case SHEET_LOAD -> to(state, work, Sheet.LOAD);
      case SHEET_LIMITS -> to(state, work, Sheet.LIMITS);
      case SHEET_PACK -> to(state, work, Sheet.PACK);
      case SHEET_HOME -> to(state, work, Sheet.HOME);
      case SHEET_ROOM -> to(state, work, Sheet.ROOM);
      case SHEET_FINDINGS -> to(state, work, Sheet.FINDINGS);
      case SHEET_COMPARE -> to(state, work, Sheet.COMPARE);
      case SHEET_GEAR -> to(state, work, Sheet.GEAR);
      case IMPORT -> Step.to(state.with(new Overlay.FileName("")));
      case SHEET_TRIP -> to(state, work, Sheet.TRIP);
      case SHEET_UTE -> to(state, work, Sheet.UTE);
      case EDIT, ADD, REMOVE ->
          looking.sheet() == Sheet.GEAR
              ? GearUpdate.apply(state, work, action)
              : EditUpdate.apply(state, work, action);
      case EARLIER, LATER -> EditUpdate.apply(state, work, action);
      case KEEP -> kept(state, work);
      case FORGET_KEPT -> Step.to(state.keeping(List.of()).saying("No column is kept any more."));
      case TICK -> ticked(state, work);
      case LEVER ->
          Levers.first(work)
              .map(after -> CarryUpdate.done(state, work, "pull the first lever", after))
              .orElse(Step.to(state));
      case MEND ->
          Mends.first(work)
              .map(
                  mend ->
                      CarryUpdate.done(
                          state, work, "mend what is broken", work.design().with(mend.plan())))
              .orElse(Step.to(state));
      case NEXT_SHEET -> to(state, work, looking.sheet().plus(1));
      case PREVIOUS_SHEET -> to(state, work, looking.sheet().plus(-1));
      case NEXT_THING -> chosen(state, work, Things.beside(work.loading(), looking.chosen(), 1));
      case PREVIOUS_THING ->
          chosen(state, work, Things.beside(work.loading(), looking.chosen(), -1));
      case FIND -> Step.to(state.with(new Overlay.Find("", looking)));
      case NEXT_VIEW -> looking(state, work, looking.from(looking.eye().next()));
      case ZOOM_IN -> looking(state, work, looking.zoomed(1));
      case ZOOM_OUT -> looking(state, work, looking.zoomed(-1));
      case PAN_LEFT -> looking(state, work, looking.panned(-1, 0));
      case PAN_RIGHT -> looking(state, work, looking.panned(1, 0));
      case PAN_UP -> looking(state, work, looking.panned(0, 1));
      case PAN_DOWN -> looking(state, work, looking.panned(0, -1));
      case NEXT_STATE -> inState(state, work, 1);
      case PREVIOUS_STATE -> inState(state, work, -1);
      case WORST_STATE -> looking(state, work, looking.in(""));
      case CARRY, TURN, PIN, HOME, BRING, UNDO, REDO -> CarryUpdate.byHand(state, work, action);
      case SEARCH ->
          work.searching()
              .map(search -> SearchUpdate.stop(state, work, search))
              .orElseGet(() -> SearchUpdate.start(state, work, /* longer= */ false));
      case SEARCH_LONGER -> SearchUpdate.start(state, work, /* longer= */ true);
      case SAVE -> LeaveUpdate.save(state, work);
      default -> Step.to(state);
    };
  }

  private static Step back(AppState state) {
    if (state.work().isEmpty()) {
      return Step.to(state);
    }
    Work work = state.work().get();
    if (work.looking().sheet() != Sheet.LOAD) {
      return to(state, work, Sheet.LOAD);
    }
    return LeaveUpdate.close(state, work);
  }

  private static Step take(AppState state) {
    Shelf shelf = state.shelf();
    return state.work().isPresent() || shelf.entries().isEmpty()
        ? Step.to(state)
        : Step.to(
            state.saying("reading ..."), new Effect.Open(shelf.entries().get(shelf.row()).file()));
  }

  /** Up and down a list, or to the neighbour in a picture. */
  private static Step moved(AppState state, int rows, int across, int up) {
    if (state.work().isEmpty()) {
      return Step.to(state.with(state.shelf().atRow(state.shelf().row() + rows)));
    }
    Work work = state.work().get();
    Looking looking = work.looking();
    if (looking.sheet() == Sheet.PACK) {
      int last = Math.max(0, PackRows.keys(work).size() - 1);
      return looking(state, work, looking.atRow(Math.min(last, looking.row() + rows)));
    }
    if (looking.sheet() == Sheet.GEAR) {
      int last = Math.max(0, work.design().scenario().items().size() - 1);
      Work at = work.with(looking.atRow(Math.max(0, Math.min(last, looking.row() + rows))));
      return looking(state, at, at.looking().at(GearUpdate.firstUnit(at)));
    }
    if (looking.sheet().edits()) {
      int last = Math.max(0, EditRows.of(work).size() - 1);
      return looking(state, work, looking.atRow(Math.min(last, looking.row() + rows)));
    }
    if (looking.sheet() != Sheet.LOAD) {
      return looking(state, work, looking.atRow(looking.row() + rows));
    }
    Optional<String> next =
        Things.neighbour(work.loading(), looking.chosen(), looking.eye(), across, up);
    return next.map(key -> looking(state, work, looking.at(key))).orElse(Step.to(state));
  }

  /** Chooses a thing and looks from where it is seen. */
  static Step chosen(AppState state, Work work, String key) {
    Looking looking = work.looking();
    return looking(
        state, work, looking.from(Things.seenFrom(work.loading(), key, looking.eye())).at(key));
  }

  private static Step inState(AppState state, Work work, int by) {
    List<StateFigures> states = work.states();
    if (states.isEmpty()) {
      return Step.to(state);
    }
    int index = Math.max(0, Math.min(states.size() - 1, work.stateIndex() + by));
    return looking(state, work, work.looking().in(states.get(index).state().id()));
  }

  private static Step kept(AppState state, Work work) {
    return Step.to(state.saying("Keeping ..."), new Effect.KeepColumn(work.report().orElseThrow()));
  }

  static Step kept(AppState state, PlanFigures figures) {
    List<CompareText.Column> columns = new ArrayList<>(state.kept());
    String title = figures.report().situation().loading().scenario().title();
    columns.add(new CompareText.Column(title + ", kept " + (columns.size() + 1), figures));
    return Step.to(state.keeping(columns).saying("Kept; 7 sets plans side by side."));
  }

  /** Ticks the marked thing and marks the next. */
  private static Step ticked(AppState state, Work work) {
    List<String> keys = PackRows.keys(work);
    if (keys.isEmpty()) {
      return Step.to(state);
    }
    int row = Math.min(work.looking().row(), keys.size() - 1);
    return Step.to(
        state.with(
            work.ticked(keys.get(row))
                .with(work.looking().atRow(Math.min(row + 1, keys.size() - 1)))));
  }

  private static Step to(AppState state, Work work, Sheet sheet) {
    return sheet == Sheet.GEAR
        ? toGear(state, work)
        : advised(state.with(work.with(work.looking().on(sheet))));
  }

  /** The gear list with what is chosen marked, or what is marked chosen. */
  private static Step toGear(AppState state, Work work) {
    Looking gear = work.looking().on(Sheet.GEAR);
    List<Item> items = work.design().scenario().items();
    Optional<Item> chosen = Things.item(work.loading(), gear.chosen());
    Work there = work.with(gear.atRow(chosen.map(items::indexOf).orElse(gear.row())));
    String first = GearUpdate.firstUnit(there);
    return advised(state.with(chosen.isPresent() ? there : there.with(there.looking().at(first))));
  }

  private static Step looking(AppState state, Work work, Looking looking) {
    return Step.to(state.with(work.with(looking)));
  }

  /** Asks for advice where the page needs it and there is none. */
  static Step advised(AppState state) {
    Optional<Effect> asked =
        state
            .work()
            .filter(work -> work.judged() && work.advice().isEmpty())
            .filter(work -> needsAdvice(work.looking().sheet()))
            .flatMap(Work::report)
            .map(Effect.Advise::new);
    return asked.map(effect -> Step.to(state, effect)).orElse(Step.to(state));
  }

  private static boolean needsAdvice(Sheet sheet) {
    return switch (sheet) {
      case LOAD, LIMITS, GEAR, TRIP, UTE -> false;
      case PACK, HOME, ROOM, FINDINGS, COMPARE -> true;
    };
  }
}
