package kitstow.tui.widget;

/**
 * How a cell is shown. What an ink says is always said by a word or a sign too: it must read
 * without colour, and on light and dark ground.
 */
public enum Ink {
  /** As the terminal shows text. */
  PLAIN,
  /** Titles and what matters. */
  STRONG,
  /** Head and foot of the screen. */
  BAR,
  /** What is chosen. */
  PICKED,
  /** A word that says: within limits. */
  WITHIN,
  /** A word that says: in doubt. */
  DOUBT,
  /** A word that says: broken. */
  BROKEN,
  /** A bar within its limit. */
  BAR_WITHIN,
  /** A bar in doubt. */
  BAR_DOUBT,
  /** A bar over its limit. */
  BAR_BROKEN,
  /** Gear of 10 kg and more. */
  MEDIUM,
  /** Gear of 20 kg and more. */
  HEAVY
}
