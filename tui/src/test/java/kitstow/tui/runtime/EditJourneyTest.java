package kitstow.tui.runtime;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyType;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Gear is changed with figures that cannot be, then with good ones, and all is undone. */
class EditJourneyTest extends OwnState {
  private static final Path REMOTE = Path.of("..", "scenarios", "remote-fortnight.json");
  private static final int STEPS = 50;

  @Test
  void refusesWhatCannotBeTakesWhatCanAndUndoesIt() {
    try (Robot robot = new Robot(Optional.of(REMOTE), new TerminalSize(120, 40))) {
      robot.sees("80 aboard, 1 at home");
      robot.type("/fridge").press(KeyType.Enter).type("8").press(KeyType.Enter).sees("Mass");
      robot.press(KeyType.Tab).press(KeyType.Delete).type("heavy").sees("! e.g. 12.5");
      robot.press(KeyType.Enter).sees("Put right");
      robot.press(KeyType.Delete).type("1 kg").sees("its content alone is");
      robot.press(KeyType.Delete).type("44,5 kg").seesNo("!").press(KeyType.Enter);
      robot.sees("Done: change");
      robot.type("u").sees("Undone: change").type("q").ends();
    }
  }

  @Test
  void fiftyStepsAreTakenAndUndone() {
    try (Robot robot = new Robot(Optional.of(REMOTE), new TerminalSize(120, 40))) {
      robot.sees("80 aboard, 1 at home");
      robot.type("/camp lights").press(KeyType.Enter);
      for (int i = 0; i < STEPS; i += 2) {
        robot.type("h").sees("Done: send home").type("b").sees("Done: bring");
      }
      for (int i = 0; i < STEPS; i += 2) {
        robot.type("u").sees("Undone: bring").type("u").sees("Undone: send home");
      }
      robot.sees("80 aboard, 1 at home").type("u").sees("nothing to undo");
      assertThat(robot.text()).doesNotContain("not saved");
      robot.type("q").ends();
    }
  }
}
