package kitstow.tui.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kitstow.tui.keys.Place;
import kitstow.tui.view.CompareText;

/**
 * Everything the screen shows.
 *
 * @param size size of the screen
 * @param ascii whether only ASCII may be used
 * @param shelf scenarios there are
 * @param work what is open
 * @param overlay what lies over the page
 * @param note one line about what has just happened, or ""
 * @param afterSaving what is to be done once the files are written
 * @param kept plans kept to be set beside others, from this scenario and others
 */
public record AppState(
    Size size,
    boolean ascii,
    Shelf shelf,
    Optional<Work> work,
    Overlay overlay,
    String note,
    Optional<Decision> afterSaving,
    List<CompareText.Column> kept) {
  /** Copies its collections. */
  public AppState {
    kept = List.copyOf(kept);
  }

  /** How the program starts. */
  public static AppState start(Size size, boolean ascii, Path folder) {
    return new AppState(
        size,
        ascii,
        new Shelf(folder, List.of(), 0, /* listed= */ false),
        Optional.empty(),
        Overlay.NONE,
        "",
        Optional.empty(),
        List.of());
  }

  /** Which keys hold. */
  public Place place() {
    return work.map(
            open -> open.carrying().isPresent() ? Place.CARRY : open.looking().sheet().place())
        .orElse(Place.SHELF);
  }

  /** Another size. */
  public AppState with(Size other) {
    return new AppState(other, ascii, shelf, work, overlay, note, afterSaving, kept);
  }

  /** Another list. */
  public AppState with(Shelf other) {
    return new AppState(size, ascii, other, work, overlay, note, afterSaving, kept);
  }

  /** Something open. */
  public AppState with(Work other) {
    return new AppState(size, ascii, shelf, Optional.of(other), overlay, note, afterSaving, kept);
  }

  /** Nothing open. */
  public AppState closed() {
    return new AppState(
        size, ascii, shelf, Optional.empty(), Overlay.NONE, "", Optional.empty(), kept);
  }

  /** Something over the page. */
  public AppState with(Overlay other) {
    return new AppState(size, ascii, shelf, work, other, note, afterSaving, kept);
  }

  /** Something to say. */
  public AppState saying(String text) {
    return new AppState(size, ascii, shelf, work, overlay, text, afterSaving, kept);
  }

  /** Something to do once the files are written. */
  public AppState then(Optional<Decision> decision) {
    return new AppState(size, ascii, shelf, work, overlay, note, decision, kept);
  }

  /** Other plans kept. */
  public AppState keeping(List<CompareText.Column> columns) {
    return new AppState(size, ascii, shelf, work, overlay, note, afterSaving, columns);
  }
}
