package kitstow.tui;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;

/** One run of the command, with what it printed. */
record Run(int exitCode, String out, String err) {
  static Run of(String... args) {
    return of(Main.commandLine(), args);
  }

  static Run of(CommandLine commandLine, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Main.execute(commandLine, new PrintWriter(out, true), new PrintWriter(err, true), args);
    return new Run(code, out.toString(), err.toString());
  }

  List<String> outLines() {
    return out.lines().toList();
  }

  List<String> errLines() {
    return err.lines().toList();
  }

  /** A file of the small trip. */
  static String small(String name) {
    return resource("small/" + name).toString();
  }

  static Path resource(String name) {
    try {
      return Path.of(Run.class.getResource(name).toURI());
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException(name, e);
    }
  }
}
