package kitstow.tui.app;

import java.nio.file.Path;
import java.util.List;

/**
 * The scenarios there are to open.
 *
 * @param folder folder they are in
 * @param entries scenarios, by file name
 * @param row marked row
 * @param listed whether the folder has been looked through
 */
public record Shelf(Path folder, List<Entry> entries, int row, boolean listed) {
  /** Copies its collections. */
  public Shelf {
    entries = List.copyOf(entries);
  }

  /**
   * A scenario.
   *
   * @param file its file
   * @param title its title, or what is wrong with it
   * @param note what it is
   * @param planned whether there is a plan for it
   */
  public record Entry(Path file, String title, String note, boolean planned) {}

  /** Another row marked. */
  public Shelf atRow(int other) {
    int last = Math.max(0, entries.size() - 1);
    return new Shelf(folder, entries, Math.max(0, Math.min(last, other)), listed);
  }
}
