package kitstow.tui.cli;

import java.util.Locale;
import kitstow.tui.view.Page;
import picocli.CommandLine.Option;

/** Help, and how text is laid out; the same for all verbs. */
final class Layout {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  @SuppressWarnings("UnusedVariable") // picocli acts on it
  private boolean help;

  @Option(
      names = "--ascii",
      description =
          "Use plain ASCII signs only. Chosen by itself on a console that does not show UTF-8.")
  private boolean ascii;

  /** The page to write on. */
  Page page() {
    return new Page(Page.USUAL_WIDTH, ascii || !showsUnicode(consoleEncoding()));
  }

  /** Encoding of the console; UTF-8 where the output goes to a file or another program. */
  private static String consoleEncoding() {
    String encoding = System.getProperty("stdout.encoding");
    if (encoding == null) {
      encoding = System.getProperty("sun.stdout.encoding");
    }
    return encoding == null ? "UTF-8" : encoding;
  }

  /** Whether a console of an encoding shows what we write, which is UTF-8. */
  static boolean showsUnicode(String encoding) {
    // Windows calls its UTF-8 code page 65001.
    String name = encoding.toUpperCase(Locale.ROOT);
    return name.equals("CP65001") || name.equals("UTF8") || name.equals("UTF-8");
  }
}
