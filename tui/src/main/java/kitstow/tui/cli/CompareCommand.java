package kitstow.tui.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.tui.view.CompareText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Sets plans side by side: canopies, fit-outs, loads, without the trailer, on a day at work. */
@Command(
    name = "compare",
    description = "Sets plans side by side, a column for each.",
    exitCodeOnInvalidInput = ExitCode.BAD_INPUT,
    exitCodeOnExecutionException = ExitCode.OWN_FAULT,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every plan within limits, if only on paper; notes do not count",
      "1:a plan breaks a rule or leaves home what must come along",
      "2:the command line or an input file is wrong",
      "70:a fault in kitstow itself"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  kitstow compare box-1000.json box-1500.json box-1700.json --seconds 20",
      "  kitstow compare towing.json:towing-plan.json --without-trailer --work-day"
    })
public final class CompareCommand implements Callable<Integer> {
  private static final String BETWEEN = ".json:";

  @Spec private CommandSpec spec;

  @Mixin private Layout layout;

  @Mixin private SearchOptions search;

  @Parameters(
      arity = "1..*",
      paramLabel = "SCENARIO[:PLAN]",
      description =
          "JSON file of a scenario, after a colon that of a plan for it. Where none is given one is"
              + " searched for.")
  private List<String> columns;

  @Option(
      names = "--without-trailer",
      description = "Add a column for each plan with nothing on the tow ball, all else the same.")
  private boolean withoutTrailer;

  @Option(
      names = "--work-day",
      description =
          "Add a column for each plan on a day at work: fit-out, emergency gear and tanks as they"
              + " are, the driver alone, no trailer, the trip's other gear left, one day on the"
              + " road.")
  private boolean workDay;

  @Option(
      names = "--catalogue",
      paramLabel = "DIR",
      description =
          "Folder of catalogue files. Without it: the folder 'catalogue' beside each scenario, else"
              + " the built-in catalogue.")
  private @Nullable Path catalogue;

  /** A column that was read; without a plan it is to be searched for. */
  private record Asked(String name, Scenario scenario, Optional<LoadPlan> plan) {}

  @Override
  public Integer call() {
    search.refuseWrong(spec);
    int count = columns.size() * (1 + (withoutTrailer ? 1 : 0) + (workDay ? 1 : 0));
    if (count < 2 || count > CompareText.MOST_COLUMNS) {
      throw new ParameterException(
          spec.commandLine(),
          "makes " + count + " columns, must be 2 to " + CompareText.MOST_COLUMNS);
    }
    InputFaults faults = new InputFaults();
    List<Asked> asked = new ArrayList<>();
    for (String column : columns) {
      read(column, faults).ifPresent(asked::add);
    }
    PrintWriter err = spec.commandLine().getErr();
    faults.print(err);
    if (faults.stop() || asked.size() < columns.size()) {
      return ExitCode.BAD_INPUT;
    }
    try (Interruption interruption = new Interruption()) {
      return print(judged(asked, interruption));
    }
  }

  private Optional<Asked> read(String column, InputFaults faults) {
    int colon = column.toLowerCase(Locale.ROOT).indexOf(BETWEEN);
    if (colon < 0) {
      return CheckInput.readScenario(Path.of(column), catalogue, faults)
          .map(scenario -> new Asked(column, scenario, Optional.empty()));
    }
    int end = colon + BETWEEN.length();
    Path scenario = Path.of(column.substring(0, end - 1));
    return CheckInput.read(scenario, Path.of(column.substring(end)), catalogue, faults)
        .map(input -> new Asked(column, input.scenario(), Optional.of(input.plan())));
  }

  private List<CompareText.Column> judged(List<Asked> asked, Interruption interruption) {
    PrintWriter err = spec.commandLine().getErr();
    List<CompareText.Column> judged = new ArrayList<>();
    for (Asked one : asked) {
      CheckReport report =
          one.plan().isPresent()
              ? LoadPlanner.check(one.scenario(), one.plan().get())
              : Searching.of(
                      LoadPlanner::plan,
                      search.request(one.scenario(), Optional.empty()),
                      err,
                      interruption)
                  .report();
      String title = one.scenario().title();
      judged.add(new CompareText.Column(title, LoadPlanner.figures(report)));
      if (withoutTrailer) {
        judged.add(
            new CompareText.Column(
                title + ", no trailer",
                LoadPlanner.figures(LoadPlanner.withoutTrailer(report)),
                "no trailer"));
      }
      if (workDay) {
        judged.add(
            new CompareText.Column(
                title + ", work day",
                LoadPlanner.figures(LoadPlanner.workDay(report)),
                "work day"));
      }
    }
    return judged;
  }

  private int print(List<CompareText.Column> judged) {
    PrintWriter out = spec.commandLine().getOut();
    new CompareText(judged, layout.page()).lines().forEach(out::println);
    out.flush();
    boolean broken = judged.stream().anyMatch(column -> column.figures().report().broken());
    return broken ? ExitCode.BROKEN : ExitCode.OK;
  }
}
