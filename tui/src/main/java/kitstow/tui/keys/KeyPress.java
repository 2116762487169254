package kitstow.tui.keys;

/**
 * A key as it was pressed.
 *
 * @param key kind of key
 * @param sign the sign of a {@link KeyName#SIGN}, else 0
 * @param shift whether shift was held with a key that is no sign
 */
public record KeyPress(KeyName key, int sign, boolean shift) {
  /** A sign. */
  public static KeyPress sign(int sign) {
    return new KeyPress(KeyName.SIGN, sign, /* shift= */ false);
  }

  /** A sign with the control key. */
  public static KeyPress control(int sign) {
    return new KeyPress(KeyName.CONTROL, sign, /* shift= */ false);
  }

  /** A key without a sign. */
  public static KeyPress of(KeyName key) {
    return new KeyPress(key, 0, /* shift= */ false);
  }

  /** A key without a sign, with shift. */
  public static KeyPress shifted(KeyName key) {
    return new KeyPress(key, 0, /* shift= */ true);
  }

  /** The key as it is written on a keyboard. */
  public String shown() {
    return switch (key) {
      case SIGN -> sign == ' ' ? "Space" : Character.toString(sign);
      case CONTROL -> "Ctrl-" + Character.toString(Character.toUpperCase(sign));
      default -> (shift ? "Shift-" : "") + key.title();
    };
  }
}
