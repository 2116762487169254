package kitstow.tui.runtime;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.DefaultTerminalFactory;
import com.googlecode.lanterna.terminal.MouseCaptureMode;
import com.googlecode.lanterna.terminal.Terminal;
import com.googlecode.lanterna.terminal.ansi.UnixLikeTerminal.CtrlCBehaviour;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The terminal there is, or a window in its place. */
public final class Terminals {
  private static final TerminalSize WINDOW = new TerminalSize(120, 40);

  private Terminals() {}

  /** Whether somebody sits at a terminal, as far as Java 17 can tell. */
  @SuppressWarnings("SystemConsoleNull") // on Java 22 and later a usage text less at worst
  public static boolean here() {
    for (int stream : List.of(0, 1)) {
      Path link = Path.of("/proc/self/fd/" + stream);
      if (Files.isSymbolicLink(link)) {
        try {
          String target = Files.readSymbolicLink(link).toString();
          if (!target.startsWith("/dev/pts/") && !target.startsWith("/dev/tty")) {
            return false;
          }
        } catch (IOException e) {
          return false;
        }
      }
    }
    return System.console() != null;
  }

  /**
   * Opens a terminal.
   *
   * @param window whether a window is asked for; it is opened too where the console cannot be
   *     driven, as on Windows
   * @throws IOException if neither can be had
   */
  public static Terminal open(boolean window) throws IOException {
    DefaultTerminalFactory factory =
        new DefaultTerminalFactory()
            .setInitialTerminalSize(WINDOW)
            .setTerminalEmulatorTitle("kitstow")
            .setMouseCaptureMode(MouseCaptureMode.CLICK_RELEASE)
            .setUnixTerminalCtrlCBehaviour(CtrlCBehaviour.TRAP);
    boolean windows =
        System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
    return window || windows
        ? factory.createTerminalEmulator()
        : factory.setForceTextTerminal(true).createTerminal();
  }
}
