package kitstow.tui.runtime;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.TextColor.ANSI;
import com.googlecode.lanterna.screen.Screen;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;

/**
 * Puts frames on a terminal. Colours are the terminal's own sixteen: text keeps the terminal's
 * ground, and where a ground is set its text is set with it, so that both read on light and dark.
 */
final class Painter {
  private final boolean colour;
  private final Map<Ink, Map<Integer, TextCharacter>> made = new EnumMap<>(Ink.class);

  Painter(boolean colour) {
    this.colour = colour;
  }

  /** Puts a frame into the buffer of a screen. */
  void paint(Frame frame, Screen screen) {
    int columns = Math.min(frame.area().columns(), screen.getTerminalSize().getColumns());
    int rows = Math.min(frame.area().rows(), screen.getTerminalSize().getRows());
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int sign = frame.signAt(column, row);
        if (sign != 0) {
          screen.setCharacter(column, row, known(sign, frame.inkAt(column, row)));
        }
      }
    }
  }

  /** Signs are made once: to make one costs more than to put it out. */
  private TextCharacter known(int sign, Ink ink) {
    return made.computeIfAbsent(ink, any -> new HashMap<>())
        .computeIfAbsent(sign, any -> character(sign, ink));
  }

  private TextCharacter character(int sign, Ink ink) {
    TextColor[] colours = colour ? colours(ink) : new TextColor[] {ANSI.DEFAULT, ANSI.DEFAULT};
    return TextCharacter.fromString(
        Character.toString(sign), colours[0], colours[1], colour ? styled(ink) : plain(ink))[0];
  }

  private static TextColor[] colours(Ink ink) {
    return switch (ink) {
      case PLAIN, STRONG, BAR, PICKED -> new TextColor[] {ANSI.DEFAULT, ANSI.DEFAULT};
      case WITHIN -> new TextColor[] {ANSI.WHITE_BRIGHT, ANSI.BLUE};
      case DOUBT -> new TextColor[] {ANSI.BLACK, ANSI.YELLOW};
      case BROKEN -> new TextColor[] {ANSI.WHITE_BRIGHT, ANSI.RED};
      case BAR_WITHIN -> new TextColor[] {ANSI.BLUE, ANSI.DEFAULT};
      case BAR_DOUBT -> new TextColor[] {ANSI.YELLOW, ANSI.DEFAULT};
      case BAR_BROKEN -> new TextColor[] {ANSI.RED, ANSI.DEFAULT};
      case MEDIUM -> new TextColor[] {ANSI.BLACK, ANSI.CYAN};
      case HEAVY -> new TextColor[] {ANSI.WHITE_BRIGHT, ANSI.BLUE};
    };
  }

  private static EnumSet<SGR> styled(Ink ink) {
    return switch (ink) {
      case STRONG -> EnumSet.of(SGR.BOLD);
      case BAR -> EnumSet.of(SGR.REVERSE);
      case PICKED -> EnumSet.of(SGR.REVERSE, SGR.BOLD);
      case WITHIN, BROKEN -> EnumSet.of(SGR.BOLD);
      // Bold black is grey on many terminals, and grey on yellow cannot be read.
      case DOUBT, PLAIN, BAR_WITHIN, BAR_DOUBT, BAR_BROKEN, MEDIUM, HEAVY ->
          EnumSet.noneOf(SGR.class);
    };
  }

  private static EnumSet<SGR> plain(Ink ink) {
    return switch (ink) {
      case STRONG, WITHIN -> EnumSet.of(SGR.BOLD);
      case BAR -> EnumSet.of(SGR.REVERSE);
      case PICKED, BROKEN -> EnumSet.of(SGR.REVERSE, SGR.BOLD);
      case DOUBT -> EnumSet.of(SGR.UNDERLINE, SGR.BOLD);
      case PLAIN, BAR_WITHIN, BAR_DOUBT, BAR_BROKEN, MEDIUM, HEAVY -> EnumSet.noneOf(SGR.class);
    };
  }
}
