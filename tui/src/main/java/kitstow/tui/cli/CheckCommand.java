package kitstow.tui.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import kitstow.planner.LoadPlanner;
import kitstow.planner.json.ReportWriter;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Mend;
import kitstow.tui.view.LeversText;
import kitstow.tui.view.Page;
import kitstow.tui.view.ReportText;
import kitstow.tui.view.Subjects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges a plan and tells how the loaded ute stands in every moment of the trip. */
@Command(
    name = "check",
    description = "Judges a plan: masses, axles, ratings, support, company and reach.",
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
      "  kitstow check desert.json desert-plan.json",
      "  kitstow check desert.json desert-plan.json --json > report.json"
    })
public final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Layout layout;

  @Parameters(index = "0", paramLabel = "SCENARIO", description = "JSON file of the scenario.")
  private Path scenario;

  @Parameters(index = "1", paramLabel = "PLAN", description = "JSON file of a plan for it.")
  private Path plan;

  @Option(
      names = "--catalogue",
      paramLabel = "DIR",
      description =
          "Folder of catalogue files. Without it: the folder 'catalogue' beside the scenario, else"
              + " the built-in catalogue.")
  private @Nullable Path catalogue;

  @Option(names = "--json", description = "Write the report as JSON.")
  private boolean json;

  @Option(
      names = "--all",
      description = "List every limit, state and note; without it, those that matter most.")
  private boolean all;

  @Option(
      names = "--levers",
      description = "Add which single changes buy the most on the tightest limit.")
  private boolean levers;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    InputFaults faults = new InputFaults();
    Optional<CheckInput> input = CheckInput.read(scenario, plan, catalogue, faults);
    faults.print(spec.commandLine().getErr());
    if (input.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    CheckReport report = LoadPlanner.check(input.get().scenario(), input.get().plan());
    List<Mend> mends = LoadPlanner.mends(report);
    if (json) {
      out.print(
          levers
              ? ReportWriter.write(report, mends, LoadPlanner.levers(report))
              : ReportWriter.write(report, mends));
    } else {
      new ReportText(report, mends, layout.page(), all).lines().forEach(out::println);
      if (levers) {
        leverLines(report).forEach(out::println);
      }
    }
    out.flush();
    return report.broken() ? ExitCode.BROKEN : ExitCode.OK;
  }

  private List<String> leverLines(CheckReport report) {
    Page page = layout.page();
    List<String> lines = new ArrayList<>(page.heading("Levers"));
    Subjects subjects = new Subjects(report.situation().loading());
    lines.addAll(LeversText.lines(report, LoadPlanner.levers(report), subjects, page));
    return lines;
  }
}
