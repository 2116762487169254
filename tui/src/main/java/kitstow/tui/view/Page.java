package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;

/**
 * How a text is laid out.
 *
 * @param width columns of a line
 * @param ascii whether only ASCII may be used
 */
public record Page(int width, boolean ascii) {
  /** Columns that fit any terminal. */
  public static final int USUAL_WIDTH = 80;

  /** Columns of drawings. */
  public static final int DRAWING_WIDTH = 78;

  /** Fewest columns a page may have. */
  private static final int LEAST_WIDTH = 60;

  /** Refuses a page that no table fits on. */
  public Page {
    if (width < LEAST_WIDTH) {
      throw new IllegalArgumentException("page of " + width + " columns, least " + LEAST_WIDTH);
    }
  }

  /** A sentence broken into lines, the first after {@code lead}, the others below its text. */
  public List<String> paragraph(String lead, String text) {
    List<String> lines = new ArrayList<>();
    String indent = " ".repeat(lead.length());
    for (String line : wrapped(shown(text), width - lead.length())) {
      lines.add((lines.isEmpty() ? lead : indent) + line);
    }
    return lines;
  }

  /** A text as it may be shown here: nothing in it drives the terminal, ASCII where asked for. */
  public String shown(String text) {
    String safe = Plain.safe(text);
    return ascii ? Plain.ascii(safe) : safe;
  }

  /** A heading with a line of its own, after an empty one. */
  public List<String> heading(String text) {
    return List.of("", text, (ascii ? "-" : "─").repeat(text.length()));
  }

  /** Breaks a text at blanks; a word longer than a line is cut. */
  public static List<String> wrapped(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split(" +", -1)) {
      String rest = word;
      if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.length() > width) {
        lines.add(rest.substring(0, width));
        rest = rest.substring(width);
      }
      line.append(line.length() > 0 ? " " : "").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }
}
