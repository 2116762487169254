package kitstow.tui.keys;

/** Kinds of keys. */
public enum KeyName {
  /** A sign. */
  SIGN("sign"),
  /** A sign with the control key. */
  CONTROL("Ctrl"),
  /** Enter. */
  ENTER("Enter"),
  /** Escape. */
  ESCAPE("Esc"),
  /** Tab. */
  TAB("Tab"),
  /** Shift and tab. */
  BACK_TAB("Shift-Tab"),
  /** Backspace. */
  BACKSPACE("Backspace"),
  /** Delete. */
  DELETE("Del"),
  /** Arrow up. */
  UP("Up"),
  /** Arrow down. */
  DOWN("Down"),
  /** Arrow left. */
  LEFT("Left"),
  /** Arrow right. */
  RIGHT("Right"),
  /** Page up. */
  PAGE_UP("PgUp"),
  /** Page down. */
  PAGE_DOWN("PgDn"),
  /** Home. */
  HOME("Home"),
  /** End. */
  END("End"),
  /** F1. */
  F1("F1"),
  /** Any other key. */
  OTHER("other");

  private final String title;

  KeyName(String title) {
    this.title = title;
  }

  /** What is written on the key. */
  String title() {
    return title;
  }
}
