package kitstow.tui.runtime;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.MouseAction;
import java.util.Optional;
import kitstow.tui.app.Msg;
import kitstow.tui.keys.KeyName;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.keys.Target;
import kitstow.tui.widget.Frame;

/** What comes from the keyboard and the mouse, as messages. */
final class Strokes {
  private static final int WHEEL_ROWS = 3;

  private Optional<Target> pressedOn = Optional.empty();

  /** A message for a stroke; none where it says nothing to us. */
  Optional<Msg> read(KeyStroke stroke, Frame shown) {
    return stroke instanceof MouseAction mouse
        ? mouse(mouse, shown)
        : Optional.of(new Msg.Pressed(key(stroke)));
  }

  private Optional<Msg> mouse(MouseAction mouse, Frame shown) {
    TerminalPosition at = mouse.getPosition();
    return switch (mouse.getActionType()) {
      case SCROLL_UP -> Optional.of(new Msg.Rolled(-WHEEL_ROWS));
      case SCROLL_DOWN -> Optional.of(new Msg.Rolled(WHEEL_ROWS));
      case CLICK_DOWN -> {
        pressedOn = shown.targetAt(at.getColumn(), at.getRow());
        yield pressedOn.map(Msg.Pointed::new);
      }
      case CLICK_RELEASE -> {
        Optional<Target> from = pressedOn;
        pressedOn = Optional.empty();
        yield from.flatMap(
            begun ->
                shown
                    .targetAt(at.getColumn(), at.getRow())
                    .filter(target -> !target.equals(begun))
                    .map(target -> new Msg.Dragged(begun, target)));
      }
      case DRAG, MOVE -> Optional.empty();
    };
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
