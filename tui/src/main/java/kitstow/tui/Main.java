package kitstow.tui;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import kitstow.tui.cli.CheckCommand;
import kitstow.tui.cli.CompareCommand;
import kitstow.tui.cli.ExitCode;
import kitstow.tui.cli.GearCommand;
import kitstow.tui.cli.OwnFault;
import kitstow.tui.cli.PlanCommand;
import kitstow.tui.cli.RulesCommand;
import kitstow.tui.runtime.ScreenSession;
import kitstow.tui.runtime.Terminals;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The {@code kitstow} command. */
@Command(
    name = "kitstow",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    description = "Plans where the kit goes in a ute with a tray and a canopy.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done; a plan is within its limits",
      "1:a plan breaks a rule or leaves home what must come along",
      "2:the command line or an input file is wrong",
      "70:a fault in kitstow itself"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  kitstow desert.json",
      "  kitstow plan desert.json",
      "  kitstow check desert.json desert-plan.json"
    },
    exitCodeOnInvalidInput = ExitCode.BAD_INPUT,
    exitCodeOnExecutionException = ExitCode.OWN_FAULT)
public final class Main implements Callable<Integer> {
  private static final Map<String, Class<?>> SUBCOMMANDS = subcommands();

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      description =
          "JSON file of a scenario or a plan to open on the screen, or a folder of them; without"
              + " it, the scenarios there are.")
  private @Nullable Path file;

  @Option(names = "--window", description = "Open the screen in a window of its own.")
  private boolean window;

  @Option(
      names = "--ascii",
      description = "Keep the screen to plain ASCII signs; NO_COLOR keeps it to two colours.")
  private boolean ascii;

  @Option(
      names = "--catalogue",
      paramLabel = "DIR",
      description =
          "Folder of catalogue files. Without it: the folder 'catalogue' beside the scenario, else"
              + " the built-in catalogue.")
  private @Nullable Path catalogue;

  private Main() {}

  private static Map<String, Class<?>> subcommands() {
    Map<String, Class<?>> byName = new LinkedHashMap<>();
    for (Class<?> one :
        List.of(
            PlanCommand.class,
            CheckCommand.class,
            CompareCommand.class,
            GearCommand.class,
            RulesCommand.class)) {
      byName.put(one.getAnnotation(Command.class).name(), one);
    }
    return byName;
  }

  /** Runs the command and ends the process with its exit code. */
  public static void main(String[] args) {
    // The solver logs to nowhere; without this its logging would say so on standard error.
    System.setProperty("slf4j.internal.verbosity", "ERROR");
    PrintWriter out = new PrintWriter(System.out, true, UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, UTF_8);
    int code;
    try {
      code = execute(opensScreen(args) ? screenOnly() : commandLine(), out, err, args);
    } catch (Throwable fault) { // StackOverflowError and its like pass picocli by
      code = OwnFault.report(fault, Version.text(), err);
    }
    System.exit(code);
  }

  static CommandLine commandLine() {
    CommandLine whole = screenOnly();
    SUBCOMMANDS.values().forEach(whole::addSubcommand);
    return whole;
  }

  /** Without the subcommands, whose making the first screen would wait for. */
  private static CommandLine screenOnly() {
    return new CommandLine(new Main());
  }

  /** Whether the arguments can only mean a file for the screen. */
  private static boolean opensScreen(String... args) {
    return args.length == 1 && !args[0].startsWith("-") && !SUBCOMMANDS.containsKey(args[0]);
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
  public Integer call() throws IOException {
    if (!window && !Terminals.here()) {
      if (file == null) {
        commandLine().usage(spec.commandLine().getOut());
        return ExitCode.OK;
      }
      throw new ParameterException(
          spec.commandLine(),
          "The screen needs a terminal, and this is none; plan, check and compare do without");
    }
    String noColour = System.getenv("NO_COLOR");
    ScreenSession.run(
        () -> Terminals.open(window),
        new ScreenSession.Wish(
            Optional.ofNullable(file),
            Optional.ofNullable(catalogue),
            ascii,
            noColour == null || noColour.isEmpty()));
    return ExitCode.OK;
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
