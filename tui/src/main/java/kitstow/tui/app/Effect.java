package kitstow.tui.app;

import java.nio.file.Path;
import kitstow.planner.report.CheckReport;

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

    /** Judges a design; an older one that waits may be left out. */
    void judge(Design design);

    /** Finds what follows from a report. */
    void advise(CheckReport report);

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

  /** End the program. */
  record End() implements Effect {
    @Override
    public void by(Doer doer) {
      doer.end();
    }
  }
}
