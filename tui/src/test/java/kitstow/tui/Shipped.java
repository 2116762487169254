package kitstow.tui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.Catalogue;
import kitstow.planner.report.CheckReport;
import kitstow.tui.app.Advice;
import kitstow.tui.app.AppState;
import kitstow.tui.app.Msg;
import kitstow.tui.app.Size;
import kitstow.tui.app.Source;
import kitstow.tui.app.Update;
import kitstow.tui.cli.CatalogueSource;
import kitstow.tui.cli.CheckInput;
import kitstow.tui.cli.InputFaults;
import kitstow.tui.edit.Design;

/** A shipped scenario with its plan, read and judged once for all tests of the screen. */
public final class Shipped {
  private static final Path FOLDER = Path.of("..", "scenarios");

  /** The catalogue beside the shipped scenarios. */
  public static final Catalogue CATALOGUE =
      CatalogueSource.read(null, FOLDER.resolve("x.json"), new InputFaults()).orElseThrow();

  /** The demonstration of the README. */
  public static final Shipped REMOTE = new Shipped("remote-fortnight");

  private final Source source;
  private final Design design;
  private final CheckReport report;
  private final Advice advice;

  private Shipped(String name) {
    this.source = new Source(FOLDER.resolve(name + ".json"), FOLDER.resolve(name + ".plan.json"));
    InputFaults faults = new InputFaults();
    Optional<CheckInput> read =
        CheckInput.read(source.scenarioFile(), source.planFile(), null, faults);
    this.design = new Design(read.orElseThrow().scenario(), read.orElseThrow().plan());
    this.report = LoadPlanner.check(design.scenario(), design.plan());
    this.advice =
        new Advice(
            report,
            LoadPlanner.packList(report),
            LoadPlanner.homeReasons(report),
            LoadPlanner.roomLeft(report),
            LoadPlanner.figures(report),
            Optional.of(LoadPlanner.mends(report)),
            Optional.of(LoadPlanner.levers(report)));
  }

  /** The files. */
  public Source source() {
    return source;
  }

  /** Scenario and plan. */
  public Design design() {
    return design;
  }

  /** The report on it. */
  public CheckReport report() {
    return report;
  }

  /** The screen with it opened, judged and advised. */
  public AppState opened(Size size, boolean ascii) {
    AppState state = AppState.start(size, ascii, Path.of("scenarios"));
    state =
        Update.apply(state, new Msg.Opened(source, design, List.of(), Optional.empty(), CATALOGUE))
            .state();
    state = Update.apply(state, new Msg.Judged(design, report)).state();
    return Update.apply(state, new Msg.Advised(advice)).state();
  }
}
