package kitstow.tui;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.PrintWriter;
import kitstow.tui.cli.CheckCommand;
import kitstow.tui.cli.CompareCommand;
import kitstow.tui.cli.ExitCode;
import kitstow.tui.cli.GearCommand;
import kitstow.tui.cli.OwnFault;
import kitstow.tui.cli.PlanCommand;
import kitstow.tui.cli.RulesCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The {@code kitstow} command. */
@Command(
    name = "kitstow",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    subcommands = {
      PlanCommand.class,
      CheckCommand.class,
      CompareCommand.class,
      GearCommand.class,
      RulesCommand.class
    },
    description = "Plans where the kit goes in a ute with a tray and a canopy.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done; a plan is within its limits",
      "1:a plan breaks a rule or leaves home what must come along",
      "2:the command line or an input file is wrong",
      "3:no plan was found in time",
      "70:a fault in kitstow itself"
    },
    footerHeading = "%nExamples:%n",
    footer = {"  kitstow plan desert.json", "  kitstow check desert.json desert-plan.json"},
    exitCodeOnInvalidInput = ExitCode.BAD_INPUT,
    exitCodeOnExecutionException = ExitCode.OWN_FAULT)
public final class Main implements Runnable {
  @Spec private CommandSpec spec;

  private Main() {}

  /** Runs the command and ends the process with its exit code. */
  public static void main(String[] args) {
    // The solver logs to nowhere; without this its logging would say so on standard error.
    System.setProperty("slf4j.internal.verbosity", "ERROR");
    PrintWriter out = new PrintWriter(System.out, true, UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, UTF_8);
    int code;
    try {
      code = execute(commandLine(), out, err, args);
    } catch (Throwable fault) { // StackOverflowError and its like pass picocli by
      code = OwnFault.report(fault, Version.text(), err);
    }
    System.exit(code);
  }

  static CommandLine commandLine() {
    return new CommandLine(new Main());
  }

  static int execute(CommandLine commandLine, PrintWriter out, PrintWriter err, String... args) {
    return commandLine
        .setOut(out)
        .setErr(err)
        .setExecutionExceptionHandler(
            (fault, failed, parsed) -> OwnFault.report(fault, Version.text(), err))
        .execute(args);
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  /** Takes the version from the manifest of the jar that holds this class. */
  static final class Version implements CommandLine.IVersionProvider {
    static String text() {
      String version = Main.class.getPackage().getImplementationVersion();
      return "kitstow " + (version == null ? "(not packaged)" : version);
    }

    @Override
    public String[] getVersion() {
      return new String[] {text()};
    }
  }
}
