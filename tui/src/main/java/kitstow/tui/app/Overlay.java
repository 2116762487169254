package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Catalogue;
import kitstow.tui.edit.Design;
import kitstow.tui.edit.Form;
import kitstow.tui.edit.Founding;

/** What lies over the page. */
public sealed interface Overlay {
  /** Nothing. */
  Overlay NONE = new None();

  /** What it comes to. */
  <R> R read(Reader<R> reader);

  /** One method for each kind. */
  interface Reader<R> {
    /** See {@link None}. */
    R none();

    /** See {@link Keys}. */
    R keys(Keys keys);

    /** See {@link Find}. */
    R find(Find find);

    /** See {@link Told}. */
    R told(Told told);

    /** See {@link Ask}. */
    R ask(Ask ask);

    /** See {@link Editing}. */
    R editing(Editing editing);

    /** See {@link Pick}. */
    R pick(Pick pick);

    /** See {@link Begin}. */
    R begin(Begin begin);

    /** See {@link FileName}. */
    R fileName(FileName fileName);
  }

  /** Nothing. */
  record None() implements Overlay {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.none();
    }
  }

  /**
   * All keys.
   *
   * @param row first line
   */
  record Keys(int row) implements Overlay {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.keys(this);
    }
  }

  /**
   * A thing is looked for.
   *
   * @param typed what was typed so far
   * @param before what was looked at before
   */
  record Find(String typed, Looking before) implements Overlay {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.find(this);
    }
  }

  /**
   * Something is told that has several lines.
   *
   * @param title what it is about
   * @param lines what is told
   */
  record Told(String title, List<String> lines) implements Overlay {
    /** Copies its collections. */
    public Told {
      lines = List.copyOf(lines);
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.told(this);
    }
  }

  /**
   * A question.
   *
   * @param question the question
   * @param yes what Enter does, in words
   * @param ifYes what Enter does
   * @param no what n does, in words
   * @param ifNo what n does
   * @param about the design it is about, where it must be answered
   */
  record Ask(
      String question, String yes, Decision ifYes, String no, Decision ifNo, Optional<Design> about)
      implements Overlay {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.ask(this);
    }
  }

  /**
   * Something is edited.
   *
   * @param form its fields
   */
  record Editing(Form form) implements Overlay {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.editing(this);
    }
  }

  /**
   * Something is picked from the catalogue.
   *
   * @param what what sort of thing
   * @param typed a part of its name
   * @param row marked row
   */
  record Pick(Picked what, String typed, int row) implements Overlay {
    /** Something else typed or marked. */
    public Pick at(String other, int marked) {
      return new Pick(what, other, Math.max(0, marked));
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.pick(this);
    }
  }

  /**
   * A new scenario is begun.
   *
   * @param founding what it is begun with
   * @param form its fields
   * @param catalogue what can be added to it
   */
  record Begin(Founding founding, Form form, Catalogue catalogue) implements Overlay {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.begin(this);
    }
  }

  /**
   * The name of a file is asked for, from which gear is read.
   *
   * @param typed what was typed so far
   */
  record FileName(String typed) implements Overlay {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.fileName(this);
    }
  }
}
