package kitstow.tui.runtime;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.MouseAction;
import com.googlecode.lanterna.input.MouseActionType;
import java.util.Optional;
import kitstow.tui.app.Msg;
import kitstow.tui.keys.KeyName;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.widget.Frame;

/** What comes from the keyboard and the mouse, as messages. */
final class Strokes {
  private static final int WHEEL_ROWS = 3;

  private Strokes() {}

  /** A message for a stroke; none where it says nothing to us. */
  static Optional<Msg> read(KeyStroke stroke, Frame shown) {
    return stroke instanceof MouseAction mouse
        ? mouse(mouse, shown)
        : Optional.of(new Msg.Pressed(key(stroke)));
  }

  private static Optional<Msg> mouse(MouseAction mouse, Frame shown) {
    MouseActionType type = mouse.getActionType();
    if (type == MouseActionType.SCROLL_UP || type == MouseActionType.SCROLL_DOWN) {
      return Optional.of(
          new Msg.Rolled(type == MouseActionType.SCROLL_UP ? -WHEEL_ROWS : WHEEL_ROWS));
    }
    if (type != MouseActionType.CLICK_DOWN) {
      return Optional.empty();
    }
    TerminalPosition at = mouse.getPosition();
    return shown.targetAt(at.getColumn(), at.getRow()).map(Msg.Pointed::new);
  }

  private static KeyPress key(KeyStroke stroke) {
    boolean shift = stroke.isShiftDown();
    return switch (stroke.getKeyType()) {
      case Character ->
          stroke.isCtrlDown()
              ? KeyPress.control(Character.toLowerCase(stroke.getCharacter()))
              : KeyPress.sign(stroke.getCharacter());
      case Enter -> KeyPress.of(KeyName.ENTER);
      case Escape -> KeyPress.of(KeyName.ESCAPE);
      case Tab -> KeyPress.of(KeyName.TAB);
      case ReverseTab -> KeyPress.of(KeyName.BACK_TAB);
      case Backspace -> KeyPress.of(KeyName.BACKSPACE);
      case Delete -> KeyPress.of(KeyName.DELETE);
      case ArrowUp -> new KeyPress(KeyName.UP, 0, shift);
      case ArrowDown -> new KeyPress(KeyName.DOWN, 0, shift);
      case ArrowLeft -> new KeyPress(KeyName.LEFT, 0, shift);
      case ArrowRight -> new KeyPress(KeyName.RIGHT, 0, shift);
      case PageUp -> KeyPress.of(KeyName.PAGE_UP);
      case PageDown -> KeyPress.of(KeyName.PAGE_DOWN);
      case Home -> KeyPress.of(KeyName.HOME);
      case End -> KeyPress.of(KeyName.END);
      case F1 -> KeyPress.of(KeyName.F1);
      default -> KeyPress.of(KeyName.OTHER);
    };
  }
}
