package kitstow.tui.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import kitstow.tui.view.Plain;

/** Tells of a fault of our own: one sentence on the screen, everything else in a log file. */
public final class OwnFault {
  private static final int LONGEST_DETAIL = 200;

  private OwnFault() {}

  /**
   * Reports a fault.
   *
   * @return the exit code for it
   */
  public static int report(Throwable fault, String version, PrintWriter err) {
    err.println(
        Plain.safe(
            "kitstow failed through a fault of its own: "
                + fault.getClass().getSimpleName()
                + detail(fault)
                + "; "
                + log(fault, version)
                + "."));
    err.flush();
    return ExitCode.OWN_FAULT;
  }

  private static String detail(Throwable fault) {
    String message = fault.getMessage();
    String first = message == null ? "" : message.lines().findFirst().orElse("");
    if (first.length() > LONGEST_DETAIL) {
      first = first.substring(0, LONGEST_DETAIL) + "...";
    }
    return first.isEmpty() ? "" : " (" + first + ")";
  }

  private static String log(Throwable fault, String version) {
    try {
      Path log = Files.createTempFile("kitstow-", ".log");
      try (PrintWriter writer = new PrintWriter(Files.newBufferedWriter(log, UTF_8))) {
        writer.println(version + ", Java " + System.getProperty("java.version"));
        fault.printStackTrace(writer);
      }
      return "what happened is written in " + log;
    } catch (IOException e) {
      return "no log could be written";
    }
  }
}
