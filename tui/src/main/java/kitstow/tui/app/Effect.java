package kitstow.tui.app;

import java.nio.file.Path;
import java.util.List;
import kitstow.planner.model.Item;
import kitstow.planner.report.CheckReport;
import kitstow.tui.edit.Design;

/** What an update asks to be done outside. */
public sealed interface Effect {
  /** Has it done. */
  void by(Doer doer);

  /** One method for each kind. */
  interface Doer {
    /** Looks through a folder for scenarios. */
    void list(Path folder);

    /** Reads a scenario, and a plan for it if there is one. */
    void open(Path file);

    /** Reads the catalogue for a folder, to begin a scenario with. */
    void catalogue(Path folder);

    /**
     * Reads a table of gear; a name without a folder is looked for beside the scenario. What is
     * known already keeps what the table has no column for.
     */
    void gear(String file, Source source, List<Item> known);

    /** Judges a design; an older one that waits may be left out. */
    void judge(Design design);

    /** Finds what follows from a report. */
    void advise(CheckReport report);

    /** Finds the figures of a judged plan, for a column to keep. */
    void keepColumn(CheckReport report);

    /** Finds the floor of a judged plan; an older one that waits may be left out. */
    void floor(CheckReport report);

    /** Searches for a plan, from nothing or going on from the design, and tells of it by number. */
    void search(int number, Design design, double seconds, boolean fromNothing);

    /** Has the search stop; what it has is told as its end. */
    void stopSearch();

    /** Writes a design into its files, and a copy beside them where the scenario has changed. */
    void save(Source source, Design design, boolean scenarioChanged);

    /** Writes a design where it is found again after a crash. */
    void keepSafe(Source source, Design design);

    /** Forgets what was kept safe. */
    void forget(Source source);

    /** Ends the program. */
    void end();
  }

  /** Look through a folder. */
  record ListFolder(Path folder) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.list(folder);
    }
  }

  /** Read a scenario or a plan. */
  record Open(Path file) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.open(file);
    }
  }

  /** Read the catalogue. */
  record ReadCatalogue(Path folder) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.catalogue(folder);
    }
  }

  /** Read a table of gear, which may say nothing of what is known already. */
  record ReadGear(String file, Source source, List<Item> known) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.gear(file, source, known);
    }
  }

  /** Judge a design. */
  record Judge(Design design) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.judge(design);
    }
  }

  /** Find what follows from a report. */
  record Advise(CheckReport report) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.advise(report);
    }
  }

  /** Find the figures of a plan. */
  record KeepColumn(CheckReport report) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.keepColumn(report);
    }
  }

  /** Find the floor of a plan. */
  record FindFloor(CheckReport report) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.floor(report);
    }
  }

  /** Search for a plan. */
  record Search(int number, Design design, double seconds, boolean fromNothing) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.search(number, design, seconds, fromNothing);
    }
  }

  /** Stop the search. */
  record StopSearch() implements Effect {
    @Override
    public void by(Doer doer) {
      doer.stopSearch();
    }
  }

  /** Write files. */
  record Save(Source source, Design design, boolean scenarioChanged) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.save(source, design, scenarioChanged);
    }
  }

  /** Keep work safe against a crash. */
  record KeepSafe(Source source, Design design) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.keepSafe(source, design);
    }
  }

  /** Forget what was kept safe. */
  record Forget(Source source) implements Effect {
    @Override
    public void by(Doer doer) {
      doer.forget(source);
    }
  }

  /** End the program. */
  record End() implements Effect {
    @Override
    public void by(Doer doer) {
      doer.end();
    }
  }
}
