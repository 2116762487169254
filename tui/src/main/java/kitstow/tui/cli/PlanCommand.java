package kitstow.tui.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import kitstow.planner.LoadPlanner;
import kitstow.planner.json.PlanWriter;
import kitstow.planner.json.ReportWriter;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Mend;
import kitstow.planner.report.Searched;
import kitstow.planner.solver.PlanSearch;
import kitstow.tui.view.PlanText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Finds a plan and tells how the ute stands with it. */
@Command(
    name = "plan",
    description = "Finds a place for everything and judges the plan like any other.",
    exitCodeOnInvalidInput = ExitCode.BAD_INPUT,
    exitCodeOnExecutionException = ExitCode.OWN_FAULT,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:within limits, if only on paper; notes do not count",
      "1:a rule is broken, or something that must come along stays home",
      "2:the command line or an input file is wrong",
      "70:a fault in kitstow itself"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  kitstow plan desert.json --out desert-plan.json",
      "  kitstow plan desert.json --from desert-plan.json --seconds 60 --json > report.json"
    })
public final class PlanCommand implements Callable<Integer> {
  private final Searching.Planner planner;

  @Spec private CommandSpec spec;

  @Mixin private Layout layout;

  @Mixin private SearchOptions search;

  @Parameters(index = "0", paramLabel = "SCENARIO", description = "JSON file of the scenario.")
  private Path scenario;

  @Option(
      names = "--catalogue",
      paramLabel = "DIR",
      description =
          "Folder of catalogue files. Without it: the folder 'catalogue' beside the scenario, else"
              + " the built-in catalogue.")
  private @Nullable Path catalogue;

  @Option(
      names = "--from",
      paramLabel = "PLAN",
      description = "Go on from this plan instead of packing from nothing.")
  private @Nullable Path fromFile;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write the plan to this file; 'check' reads it.")
  private @Nullable Path outFile;

  @Option(names = "--json", description = "Write the report as JSON.")
  private boolean json;

  @Option(
      names = "--all",
      description = "List every limit, state and note; without it, those that matter most.")
  private boolean all;

  /** The verb with the planner behind it. */
  public PlanCommand() {
    this(LoadPlanner::plan);
  }

  PlanCommand(Searching.Planner planner) {
    this.planner = planner;
  }

  @Override
  public Integer call() {
    search.refuseWrong(spec);
    PrintWriter err = spec.commandLine().getErr();
    InputFaults faults = new InputFaults();
    if (outFile != null) {
      OutFile.check(outFile, faults);
    }
    Optional<Scenario> asked;
    Optional<LoadPlan> start = Optional.empty();
    if (fromFile == null) {
      asked = CheckInput.readScenario(scenario, catalogue, faults);
    } else {
      Optional<CheckInput> both = CheckInput.read(scenario, fromFile, catalogue, faults);
      asked = both.map(CheckInput::scenario);
      start = both.map(CheckInput::plan);
    }
    faults.print(err);
    if (faults.stop() || asked.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    try (Interruption interruption = new Interruption()) {
      return search(search.request(asked.get(), start), interruption);
    }
  }

  private int search(PlanSearch.Request request, Interruption interruption) {
    PrintWriter err = spec.commandLine().getErr();
    Searching.Found found = Searching.of(planner, request, err, interruption);
    CheckReport report = found.report();
    print(found);
    if (outFile != null) {
      String plan = PlanWriter.write(report.situation().loading().plan());
      Optional<String> fault = OutFile.write(outFile, plan);
      if (fault.isPresent()) {
        err.println(fault.get());
        return ExitCode.BAD_INPUT;
      }
    }
    return report.broken() ? ExitCode.BROKEN : ExitCode.OK;
  }

  private void print(Searching.Found found) {
    CheckReport report = found.report();
    PrintWriter out = spec.commandLine().getOut();
    OptionalLong seed = report.situation().loading().plan().origin().seed();
    Searched searched =
        new Searched(
            seed.orElse(0L),
            search.stepsLimit(),
            search.secondsLimit(),
            found.scoreCalculations(),
            OptionalDouble.of(found.tookSeconds()),
            LoadPlanner.homeReasons(report),
            LoadPlanner.roomLeft(report),
            LoadPlanner.levers(report),
            LoadPlanner.bound(report));
    List<Mend> mends = LoadPlanner.mends(report);
    if (json) {
      out.print(ReportWriter.write(report, searched, mends));
    } else {
      new PlanText(report, searched, mends, search.seeds(), layout.page(), all)
          .lines()
          .forEach(out::println);
    }
    out.flush();
  }
}
