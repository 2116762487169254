package kitstow.tui.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import kitstow.planner.json.GearTable;
import kitstow.planner.model.Item;
import kitstow.planner.model.Scenario;
import kitstow.tui.view.Plain;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Gear lists to and from spreadsheets. */
@Command(
    name = "gear",
    description = "Turns the gear of a scenario into a table, and a table into gear.",
    exitCodeOnInvalidInput = ExitCode.BAD_INPUT,
    exitCodeOnExecutionException = ExitCode.OWN_FAULT,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "2:the command line or an input file is wrong",
      "70:a fault in kitstow itself"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  kitstow gear desert.json --csv > gear.csv",
      "  kitstow gear gear.csv > entries.json"
    })
public final class GearCommand implements Callable<Integer> {
  private static final String CSV = ".csv";
  private static final int MOST_NAMED = 5;

  @Spec private CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  @SuppressWarnings("UnusedVariable") // picocli acts on it
  private boolean help;

  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description =
          "JSON file of a scenario, with --csv; or a table of gear that ends in .csv, for the entries"
              + " of a scenario's \"define\" and \"gear\".")
  private Path file;

  @Option(names = "--csv", description = "Write the gear of the scenario as a table.")
  private boolean csv;

  @Option(
      names = "--catalogue",
      paramLabel = "DIR",
      description =
          "Folder of catalogue files. Without it: the folder 'catalogue' beside the file, else the"
              + " built-in catalogue.")
  private @Nullable Path catalogue;

  @Override
  public Integer call() {
    boolean table = file.toString().toLowerCase(Locale.ROOT).endsWith(CSV);
    if (table == csv) {
      throw new ParameterException(
          spec.commandLine(),
          table
              ? "--csv is for the gear of a scenario, " + file + " is a table already"
              : "give --csv to write the gear of a scenario, or name a table that ends in .csv");
    }
    InputFaults faults = new InputFaults();
    Optional<String> text = table ? entries(faults) : table(faults);
    faults.print(spec.commandLine().getErr());
    if (faults.stop() || text.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    PrintWriter out = spec.commandLine().getOut();
    out.print(text.get());
    out.flush();
    return ExitCode.OK;
  }

  private Optional<String> entries(InputFaults faults) {
    return CatalogueSource.read(catalogue, file, faults)
        .flatMap(stock -> GearCsv.read(file, stock.gear(), faults))
        .map(GearTable::write);
  }

  private Optional<String> table(InputFaults faults) {
    Optional<Scenario> scenario = CheckInput.readScenario(file, catalogue, faults);
    scenario.ifPresent(read -> tellWhatIsLost(read.items(), faults));
    return scenario.map(read -> GearCsv.write(read.items()));
  }

  private static void tellWhatIsLost(List<Item> items, InputFaults faults) {
    List<String> lost = new ArrayList<>();
    for (Item item : items) {
      if (GearTable.losesSomething(item)) {
        lost.add(item.id());
      }
    }
    if (!lost.isEmpty()) {
      int named = Math.min(MOST_NAMED, lost.size());
      faults.remark(
          Plain.safe(
              "note: a table has no column for room kept clear, growth, pins, further shapes and"
                  + " tolerances of their own; left out of "
                  + String.join(", ", lost.subList(0, named))
                  + (lost.size() > named ? " and " + (lost.size() - named) + " more" : "")));
    }
  }
}
