package kitstow.tui.runtime;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyType;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LookingJourneyTest {
  private static final Path REMOTE = Path.of("..", "scenarios", "remote-fortnight.json");
  private static final TerminalSize USUAL = new TerminalSize(120, 40);

  @Test
  void opensFindsLooksThroughThePagesAndEnds() {
    try (Robot robot = new Robot(Optional.of(REMOTE), USUAL)) {
      robot.sees("WITHIN ON PAPER ONLY").sees("Left side");
      robot.type("/recovery").sees("Recovery");
      robot.press(KeyType.Enter).type("2").sees("weigh.");
      robot.type("3").sees("Door by door").type(" ").sees("1 of 80 packed").sees("[x]");
      robot.type("7").sees("kg left to the GVM").type("4").sees("Why");
      robot.type("5").sees("Largest gap");
      robot.type("6").sees("DOUBT");
      robot.press(KeyType.Escape).sees("Left side");
      robot.type("?").sees("Keys here").press(KeyType.Escape).seesNo("Keys here");
      robot.type("q").ends();
    }
  }

  @Test
  void aClickChoosesAPageAndAThing() {
    try (Robot robot = new Robot(Optional.of(REMOTE), USUAL)) {
      robot.sees("WITHIN ON PAPER ONLY").sees("Rooftop tent");
      robot.click("Rooftop tent").sees("65.0 kg").sees("╔");
      robot.click("3 Pack").sees("Door by door");
      robot.type("q").ends();
    }
  }

  @Test
  void aStormOfSizesLeavesAWholeScreen() {
    try (Robot robot = new Robot(Optional.of(REMOTE), USUAL)) {
      robot.sees("WITHIN ON PAPER ONLY");
      for (int i = 0; i < 60; i++) {
        robot.resize(20 + 37 * i % 200, 5 + 11 * i % 60);
        robot.type(".");
      }
      robot.resize(79, 24).sees("needs 80x24");
      robot.resize(80, 24).sees("Moment 63 of 63").sees("1 Load").sees("q quit");
      robot.type("q").ends();
    }
  }

  @Test
  void aFileThatCannotBeUsedIsToldAndTheListFollows() {
    Path faulty = Path.of("..", "scenarios", "invalid", "no-such-file.json");
    try (Robot robot = new Robot(Optional.of(faulty), USUAL)) {
      robot.sees("This cannot be opened").sees("there is no such file");
      robot.press(KeyType.Escape).sees("Scenarios in");
      robot.type("q").ends();
    }
  }
}
