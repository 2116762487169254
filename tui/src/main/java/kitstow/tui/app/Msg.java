package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.advice.PlanFigures;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.report.CheckReport;
import kitstow.tui.edit.Design;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.keys.Target;

/** What happens to the program. */
public sealed interface Msg {
  /** What it comes to. */
  <R> R read(Reader<R> reader);

  /** One method for each kind. */
  interface Reader<R> {
    /** See {@link Pressed}. */
    R pressed(KeyPress key);

    /** See {@link Pointed}. */
    R pointed(Target target);

    /** See {@link Dragged}. */
    R dragged(Dragged dragged);

    /** See {@link Rolled}. */
    R rolled(int by);

    /** See {@link Resized}. */
    R resized(Size size);

    /** See {@link Listed}. */
    R listed(List<Shelf.Entry> entries);

    /** See {@link Opened}. */
    R opened(Opened opened);

    /** See {@link NotOpened}. */
    R notOpened(List<String> faults);

    /** See {@link CatalogueRead}. */
    R catalogueRead(Catalogue catalogue);

    /** See {@link GearRead}. */
    R gearRead(List<Item> items);

    /** See {@link GearRefused}. */
    R gearRefused(List<String> faults);

    /** See {@link Judged}. */
    R judged(Judged judged);

    /** See {@link Kept}. */
    R kept(PlanFigures figures);

    /** See {@link FloorFound}. */
    R floorFound(Floor floor);

    /** See {@link Advised}. */
    R advised(Advice advice);

    /** See {@link Ticked}. */
    R ticked(Ticked ticked);

    /** See {@link Better}. */
    R better(Better better);

    /** See {@link SearchEnded}. */
    R searchEnded(SearchEnded ended);

    /** See {@link Saved}. */
    R saved(Saved saved);

    /** See {@link NotSaved}. */
    R notSaved(String why);

    /** See {@link Failed}. */
    R failed(String what);
  }

  /** A key was pressed. */
  record Pressed(KeyPress key) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.pressed(key);
    }
  }

  /** Something was pointed at. */
  record Pointed(Target target) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.pointed(target);
    }
  }

  /**
   * Something was dragged.
   *
   * @param from where the button was pressed
   * @param to where it was let go
   */
  record Dragged(Target from, Target to) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.dragged(this);
    }
  }

  /** The wheel was turned so many rows down. */
  record Rolled(int by) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.rolled(by);
    }
  }

  /** The screen has another size. */
  record Resized(Size size) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.resized(size);
    }
  }

  /** A folder was looked through. */
  record Listed(List<Shelf.Entry> entries) implements Msg {
    /** Copies its collections. */
    public Listed {
      entries = List.copyOf(entries);
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.listed(entries);
    }
  }

  /**
   * Files were read.
   *
   * @param source the files
   * @param design what they say
   * @param warnings what is probably not meant
   * @param recovered work on them that was not saved last time
   * @param catalogue what can be added; it may follow later
   */
  record Opened(
      Source source,
      Design design,
      List<String> warnings,
      Optional<Design> recovered,
      Catalogue catalogue)
      implements Msg {
    /** Copies its collections. */
    public Opened {
      warnings = List.copyOf(warnings);
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.opened(this);
    }
  }

  /** Files could not be used. */
  record NotOpened(List<String> faults) implements Msg {
    /** Copies its collections. */
    public NotOpened {
      faults = List.copyOf(faults);
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.notOpened(faults);
    }
  }

  /** The catalogue was read. */
  record CatalogueRead(Catalogue catalogue) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.catalogueRead(catalogue);
    }
  }

  /** A table of gear was read. */
  record GearRead(List<Item> items) implements Msg {
    /** Copies its collections. */
    public GearRead {
      items = List.copyOf(items);
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.gearRead(items);
    }
  }

  /** A table of gear could not be used. */
  record GearRefused(List<String> faults) implements Msg {
    /** Copies its collections. */
    public GearRefused {
      faults = List.copyOf(faults);
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.gearRefused(faults);
    }
  }

  /** A design was judged. */
  record Judged(Design design, CheckReport report) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.judged(this);
    }
  }

  /** The figures of a plan that is kept as a column. */
  record Kept(PlanFigures figures) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.kept(figures);
    }
  }

  /** A floor was found. */
  record FloorFound(Floor floor) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.floorFound(floor);
    }
  }

  /** Advice was found. */
  record Advised(Advice advice) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.advised(advice);
    }
  }

  /** A search goes on. */
  record Ticked(int number, double seconds) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.ticked(this);
    }
  }

  /** A search has found a better plan. */
  record Better(int number, LoadPlan plan, double momentNm, int unitsHome) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.better(this);
    }
  }

  /**
   * A search has ended.
   *
   * @param number its number
   * @param before how it was before
   * @param report what was found
   */
  record SearchEnded(int number, CheckReport before, CheckReport report) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.searchEnded(this);
    }
  }

  /** Files were written. */
  record Saved(Source source, Design design) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.saved(this);
    }
  }

  /** Files could not be written. */
  record NotSaved(String why) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.notSaved(why);
    }
  }

  /** A fault of our own, told in a sentence. */
  record Failed(String what) implements Msg {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.failed(what);
    }
  }
}
