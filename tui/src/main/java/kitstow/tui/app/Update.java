package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.advice.PlanFigures;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Item;
import kitstow.planner.report.CheckReport;
import kitstow.tui.keys.Action;
import kitstow.tui.keys.KeyMap;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.keys.Target;

/** The one function by which the state changes. */
public final class Update {
  private Update() {}

  /** What a message makes of a state. */
  public static Step apply(AppState state, Msg msg) {
    return msg.read(new Reading(state));
  }

  private record Reading(AppState state) implements Msg.Reader<Step> {
    @Override
    public Step pressed(KeyPress key) {
      AppState quiet = state.saying("");
      return quiet.overlay().read(new Typing(quiet, key));
    }

    @Override
    public Step pointed(Target target) {
      if (!state.overlay().equals(Overlay.NONE)) {
        return target.match(
            spot -> Step.to(state),
            row -> Step.to(state.overlay().read(new PointedOverlay(state, row.index()))),
            press -> Step.to(state));
      }
      return target.match(
          spot ->
              state
                  .work()
                  .map(work -> MouseUpdate.pointed(state.saying(""), work, spot))
                  .orElse(Step.to(state)),
          row -> pointedAtRow(row.index()),
          press -> pressed(press.key()));
    }

    @Override
    public Step dragged(Msg.Dragged dragged) {
      Optional<Target.Spot> from = spot(dragged.from());
      Optional<Target.Spot> to = spot(dragged.to());
      boolean idle = state.overlay().equals(Overlay.NONE) && state.work().isPresent();
      return idle && from.isPresent() && to.isPresent()
          ? MouseUpdate.dragged(state.saying(""), state.work().get(), from.get(), to.get())
          : Step.to(state);
    }

    private static Optional<Target.Spot> spot(Target target) {
      return target.match(Optional::of, row -> Optional.empty(), press -> Optional.empty());
    }

    /** A row is marked first and taken when it is pointed at again. */
    private Step pointedAtRow(int index) {
      if (state.work().isPresent()) {
        Work work = state.work().get();
        boolean again = work.looking().row() == index;
        Sheet sheet = work.looking().sheet();
        if (again && (sheet.edits() || sheet == Sheet.GEAR)) {
          return ActionUpdate.apply(state.saying(""), Action.EDIT);
        }
        Work at = work.with(work.looking().atRow(index));
        return Step.to(
            state.with(
                sheet == Sheet.GEAR ? at.with(at.looking().at(GearUpdate.firstUnit(at))) : at));
      }
      return state.shelf().row() == index
          ? ActionUpdate.apply(state, Action.TAKE)
          : Step.to(state.with(state.shelf().atRow(index)));
    }

    @Override
    public Step rolled(int by) {
      if (state.work().isEmpty()) {
        return Step.to(state.with(state.shelf().atRow(state.shelf().row() + by)));
      }
      Work work = state.work().get();
      Looking looking = work.looking();
      return Step.to(
          state.with(
              work.with(
                  looking.sheet() == Sheet.LOAD
                      ? looking.zoomed(by < 0 ? 1 : -1)
                      : looking.atRow(looking.row() + by))));
    }

    @Override
    public Step resized(Size size) {
      return Step.to(state.with(size));
    }

    @Override
    public Step listed(List<Shelf.Entry> entries) {
      Shelf shelf = state.shelf();
      return Step.to(
          state.with(new Shelf(shelf.folder(), entries, 0, /* listed= */ true).atRow(shelf.row())));
    }

    @Override
    public Step opened(Msg.Opened opened) {
      Work work = Work.of(opened.source(), opened.design(), opened.catalogue());
      AppState open = state.with(work).with(Overlay.NONE).saying("");
      Overlay overlay =
          opened.warnings().isEmpty()
              ? Overlay.NONE
              : new Overlay.Told("Probably not meant", opened.warnings());
      return Step.to(
          open.with(opened.recovered().map(LeaveUpdate::recovery).orElse(overlay)),
          new Effect.Judge(opened.design()));
    }

    @Override
    public Step notOpened(List<String> faults) {
      AppState told = state.saying("").with(new Overlay.Told("This cannot be opened", faults));
      return state.shelf().listed()
          ? Step.to(told)
          : Step.to(told, new Effect.ListFolder(state.shelf().folder()));
    }

    @Override
    public Step catalogueRead(Catalogue catalogue) {
      return BeginUpdate.catalogueRead(state, catalogue);
    }

    @Override
    public Step gearRead(List<Item> items) {
      return BeginUpdate.gearRead(state, items);
    }

    @Override
    public Step gearRefused(List<String> faults) {
      return Step.to(state.saying("").with(new Overlay.Told("This table cannot be used", faults)));
    }

    @Override
    public Step judged(Msg.Judged judged) {
      Optional<Work> of = state.work().filter(work -> work.design().equals(judged.design()));
      return of.map(work -> judged(work, judged.report())).orElse(Step.to(state));
    }

    /** What is carried changes too often for a floor to be worth its time. */
    private Step judged(Work work, CheckReport report) {
      Step step = ActionUpdate.advised(state.with(work.with(report)));
      return work.carrying().isPresent() || work.floorNm().isPresent()
          ? step
          : step.and(new Effect.FindFloor(report));
    }

    @Override
    public Step kept(PlanFigures figures) {
      return ActionUpdate.kept(state, figures);
    }

    @Override
    public Step floorFound(Floor floor) {
      return Step.to(state.work().map(work -> state.with(work.with(floor))).orElse(state));
    }

    @Override
    public Step advised(Advice advice) {
      return Step.to(
          state
              .work()
              .filter(work -> work.report().filter(advice.report()::equals).isPresent())
              .map(work -> state.with(work.with(advice)))
              .orElse(state));
    }

    @Override
    public Step ticked(Msg.Ticked ticked) {
      return SearchUpdate.ticked(state, ticked);
    }

    @Override
    public Step better(Msg.Better better) {
      return SearchUpdate.better(state, better);
    }

    @Override
    public Step searchEnded(Msg.SearchEnded ended) {
      return SearchUpdate.ended(state, ended);
    }

    @Override
    public Step saved(Msg.Saved saved) {
      return LeaveUpdate.saved(state, saved);
    }

    @Override
    public Step notSaved(String why) {
      return Step.to(
          state.then(Optional.empty()).with(new Overlay.Told("Not saved", List.of(why))));
    }

    @Override
    public Step failed(String what) {
      return Step.to(state.with(new Overlay.Told("A fault of our own", List.of(what))));
    }
  }

  /** What a key does, by what lies over the page. */
  private record Typing(AppState state, KeyPress key) implements Overlay.Reader<Step> {
    @Override
    public Step none() {
      return KeyMap.action(state.place(), key)
          .map(action -> ActionUpdate.apply(state, action))
          .orElseGet(() -> Step.to(state.saying(Elsewhere.told(key))));
    }

    @Override
    public Step keys(Overlay.Keys keys) {
      return OverlayUpdate.keys(state, keys, key);
    }

    @Override
    public Step find(Overlay.Find find) {
      return OverlayUpdate.find(state, find, key);
    }

    @Override
    public Step told(Overlay.Told told) {
      return Step.to(state.with(Overlay.NONE));
    }

    @Override
    public Step ask(Overlay.Ask ask) {
      return OverlayUpdate.ask(state, ask, key);
    }

    @Override
    public Step editing(Overlay.Editing editing) {
      return FormUpdate.pressed(state, editing.form(), key);
    }

    @Override
    public Step begin(Overlay.Begin begin) {
      return BeginUpdate.pressed(state, begin, key);
    }

    @Override
    public Step fileName(Overlay.FileName fileName) {
      return BeginUpdate.fileName(state, fileName, key);
    }

    @Override
    public Step pick(Overlay.Pick pick) {
      return PickUpdate.pressed(state, pick, key);
    }
  }
}
