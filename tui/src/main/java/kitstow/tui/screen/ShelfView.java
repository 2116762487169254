package kitstow.tui.screen;

import java.nio.file.Path;
import kitstow.tui.app.Shelf;
import kitstow.tui.keys.Target;
import kitstow.tui.view.Page;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Ink;
import kitstow.tui.widget.Lines;

/** The list of scenarios. */
final class ShelfView {
  private static final int HEAD_ROWS = 4;
  private static final int NOTE_ROWS = 6;
  private static final int MOST_NOTE_COLUMNS = 96;
  private static final int TITLE_COLUMNS = 46;

  private ShelfView() {}

  static void draw(Frame frame, Area area, Shelf shelf) {
    frame.paint(area.top(1), Ink.BAR);
    frame.text(area, 1, 0, "kitstow: what goes where in a ute with a tray and a canopy", Ink.BAR);
    frame.text(area, 1, 2, "Scenarios in " + named(shelf.folder()), Ink.STRONG);
    Area list = area.belowTop(HEAD_ROWS).aboveBottom(NOTE_ROWS);
    if (shelf.entries().isEmpty()) {
      frame.text(
          list,
          3,
          0,
          shelf.listed() ? "There is none here; n begins one." : "looking ...",
          Ink.PLAIN);
      return;
    }
    int first = Lines.firstFor(shelf.row(), shelf.entries().size(), list.rows());
    for (int y = 0; y < list.rows() && first + y < shelf.entries().size(); y++) {
      Shelf.Entry entry = shelf.entries().get(first + y);
      boolean here = first + y == shelf.row();
      Area row = list.belowTop(y).top(1);
      Ink ink = here ? Ink.PICKED : Ink.PLAIN;
      if (here) {
        frame.paint(row, Ink.PICKED);
      }
      frame.text(row, 1, 0, here ? ">" : " ", ink);
      frame.text(row.left(TITLE_COLUMNS + 3), 3, 0, entry.title(), ink);
      frame.text(row, TITLE_COLUMNS + 5, 0, entry.planned() ? "packed" : "", ink);
      frame.text(row, TITLE_COLUMNS + 13, 0, entry.file().getFileName().toString(), ink);
      frame.target(row, new Target.Row(first + y));
    }
    Lines.more(frame, list, first, shelf.entries().size());
    note(frame, area.bottom(NOTE_ROWS), shelf.entries().get(shelf.row()).note());
  }

  /** The folder as it was given; the one that the program runs in by its whole name. */
  private static Path named(Path folder) {
    return folder.toString().isEmpty() ? folder.toAbsolutePath() : folder;
  }

  private static void note(Frame frame, Area area, String note) {
    int y = 1;
    for (String line : Page.wrapped(note, Math.min(MOST_NOTE_COLUMNS, area.columns() - 4))) {
      frame.text(area, 3, y, line, Ink.PLAIN);
      y++;
    }
  }
}
