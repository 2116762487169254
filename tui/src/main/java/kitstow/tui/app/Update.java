package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Item;
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
        return Step.to(state);
      }
      return target.match(
          thing ->
              Step.to(
                  state
                      .work()
                      .filter(work -> work.carrying().isEmpty())
                      .map(work -> state.with(work.with(work.looking().at(thing.key()))))
                      .orElse(state)),
          row -> pointedAtRow(row.index()),
          press -> pressed(press.key()));
    }

    /** A row is marked first and taken when it is pointed at again. */
    private Step pointedAtRow(int index) {
      if (state.work().isPresent()) {
        Work work = state.work().get();
        return Step.to(state.with(work.with(work.looking().atRow(index))));
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
      return of.map(work -> ActionUpdate.advised(state.with(work.with(judged.report()))))
          .orElse(Step.to(state));
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
          .orElse(Step.to(state));
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
