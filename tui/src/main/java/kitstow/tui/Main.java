package kitstow.tui;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The {@code kitstow} command. */
@Command(
    name = "kitstow",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    description = "Plans where the kit goes in a vehicle.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "2:the command line or an input file is wrong",
      "70:a fault in kitstow itself"
    },
    exitCodeOnInvalidInput = Main.EXIT_BAD_INPUT,
    exitCodeOnExecutionException = Main.EXIT_OWN_FAULT)
public final class Main implements Runnable {
  static final int EXIT_OK = 0;
  static final int EXIT_BAD_INPUT = 2;
  static final int EXIT_OWN_FAULT = 70;

  @Spec private CommandSpec spec;

  private Main() {}

  /** Runs the command and ends the process with its exit code. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, true, UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, UTF_8);
    int code;
    try {
      code = execute(commandLine(), out, err, args);
    } catch (Throwable fault) { // StackOverflowError and its like pass picocli by
      code = reportFault(fault, err);
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
        .setExecutionExceptionHandler((fault, failed, parsed) -> reportFault(fault, err))
        .execute(args);
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int reportFault(Throwable fault, PrintWriter err) {
    String detail = fault.getMessage();
    err.println(
        "kitstow failed through a fault of its own: "
            + fault.getClass().getSimpleName()
            + (detail == null ? "" : " (" + detail.lines().findFirst().orElse("") + ")")
            + ".");
    err.flush();
    return EXIT_OWN_FAULT;
  }

  /** Takes the version from the manifest of the jar that holds this class. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"kitstow " + (version == null ? "(not packaged)" : version)};
    }
  }
}
