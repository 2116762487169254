package kitstow.tui.app;

/**
 * A row of what lies over the page is pointed at: it is the one one is in then.
 *
 * @param state the state
 * @param row the row
 */
record PointedOverlay(AppState state, int row) implements Overlay.Reader<AppState> {
  @Override
  public AppState none() {
    return state;
  }

  @Override
  public AppState keys(Overlay.Keys keys) {
    return state;
  }

  @Override
  public AppState find(Overlay.Find find) {
    return state;
  }

  @Override
  public AppState told(Overlay.Told told) {
    return state;
  }

  @Override
  public AppState ask(Overlay.Ask ask) {
    return state;
  }

  @Override
  public AppState editing(Overlay.Editing editing) {
    return state.with(new Overlay.Editing(editing.form().in(row)));
  }

  @Override
  public AppState pick(Overlay.Pick pick) {
    return state.with(pick.at(pick.typed(), row));
  }

  @Override
  public AppState begin(Overlay.Begin begin) {
    return state.with(new Overlay.Begin(begin.founding(), begin.form().in(row), begin.catalogue()));
  }

  @Override
  public AppState fileName(Overlay.FileName fileName) {
    return state;
  }
}
