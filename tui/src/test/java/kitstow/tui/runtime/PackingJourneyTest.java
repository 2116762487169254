package kitstow.tui.runtime;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.RuleKind;
import kitstow.planner.report.CheckReport;
import kitstow.tui.cli.CheckInput;
import kitstow.tui.cli.InputFaults;
import org.junit.jupiter.api.Test;

class PackingJourneyTest extends OwnState {
  private static final String NO_OTHER = " No other space takes it";
  private static final String FITS = "it may stand here";
  private static final String HEAVY = "too heavy here";
  private static final String BARRED = "it may NOT stand here";

  /** Without these there is room wherever the rest stands. */
  private static final Set<String> BULKY =
      Set.of(
          "swag-double",
          "bedding",
          "clothes-bag",
          "folding-armchair",
          "roll-top-table",
          "crockery-box",
          "washing-up-tub",
          "camp-oven",
          "fire-pit",
          "boots-tub",
          "folding-toilet",
          "shower-tent",
          "awning-walls");

  private static final Path SHIPPED = Path.of("..", "scenarios");

  @Test
  void opensSearchesCarriesPinsSearchesRoundThePinComparesAndSaves() throws IOException {
    Path file = roomy(folder.resolve("counter.json"));
    try (Robot robot = new Robot(Optional.of(file), new TerminalSize(120, 40))) {
      robot.sees("0 aboard, 22 at home").sees("NOT AS IT MUST BE");
      robot.type("s").sees("SEARCHING").sees("best so far");
      robot.type("s").sees("s searches on");
      carrySomethingElsewhere(robot);
      robot.type("p").sees("PINNED");
      robot.seesNo(" ... ").type("k").sees("Kept; 7 sets plans side by side");
      robot.type("s").sees("SEARCHING").sees("best so far");
      robot.type("s").sees("s searches on").sees("PINNED");
      robot.type("7").sees("kept 1").sees("Stays home");
      robot.type("W").sees("Saved in counter-own.plan.json");
      robot.type("q").ends();
    }
    InputFaults faults = new InputFaults();
    CheckInput saved =
        CheckInput.read(
                folder.resolve("counter-own.json"),
                folder.resolve("counter-own.plan.json"),
                null,
                faults)
            .orElseThrow(() -> new AssertionError(faults.lines()));
    CheckReport report = LoadPlanner.check(saved.scenario(), saved.plan());
    assertThat(saved.scenario().items()).filteredOn(item -> item.pin().isPresent()).hasSize(1);
    assertThat(report.brokenFindings())
        .extracting(finding -> finding.rule().kind())
        .doesNotContain(RuleKind.GEOMETRY, RuleKind.COMPANY, RuleKind.REACH);
    assertThat(folder.resolve("state").resolve("kitstow")).isEmptyDirectory();
  }

  /** A shipped scenario without its bulky gear. */
  private static Path roomy(Path file) throws IOException {
    JsonObject scenario =
        JsonParser.parseString(Files.readString(SHIPPED.resolve("counter-1500.json")))
            .getAsJsonObject();
    JsonArray rest = new JsonArray();
    for (JsonElement gear : scenario.getAsJsonArray("gear")) {
      if (!BULKY.contains(gear.getAsJsonObject().get("entry").getAsString())) {
        rest.add(gear);
      }
    }
    scenario.add("gear", rest);
    return Files.writeString(file, scenario.toString());
  }

  /** Where things stand is the search's: the first of these that another space takes is carried. */
  private static void carrySomethingElsewhere(Robot robot) {
    for (String thing : List.of("first-aid", "drinks", "tool roll", "camp lights", "compressor")) {
      robot.type("/" + thing).press(KeyType.Enter).type("m").sees(FITS);
      robot.press(KeyType.Tab);
      boolean elsewhere = robot.saysOneOf(NO_OTHER, " In ").equals(" In ");
      if (elsewhere && robot.seesOneOf(FITS, HEAVY, BARRED).equals(FITS)) {
        robot.press(KeyType.Enter).sees("Done: carry");
        return;
      }
      robot.press(KeyType.Escape).sees("Put back");
    }
    throw new AssertionError("nothing can be carried elsewhere\n" + robot.text());
  }

  @Test
  void workThatWasNotSavedIsFoundAgainAfterACrash() throws IOException {
    Path file = Files.copy(SHIPPED.resolve("remote-fortnight.json"), folder.resolve("remote.json"));
    Files.copy(SHIPPED.resolve("remote-fortnight.plan.json"), folder.resolve("remote.plan.json"));
    try (Robot robot = new Robot(Optional.of(file), new TerminalSize(120, 40))) {
      robot.sees("80 aboard, 1 at home").sees("WITHIN ON PAPER ONLY");
      robot.type("/fridge").press(KeyType.Enter).type("h").sees("79 aboard, 2 at home");
    }
    try (Robot robot = new Robot(Optional.of(file), new TerminalSize(120, 40))) {
      robot.sees("Work on this was not saved last time.");
      robot.press(KeyType.Enter).sees("not saved, 79 aboard, 2 at home");
      robot.type("u").sees(" 80 aboard, 1 at home").type("q").ends();
    }
    try (Robot robot = new Robot(Optional.of(file), new TerminalSize(120, 40))) {
      robot.sees("80 aboard, 1 at home").sees("WITHIN ON PAPER ONLY");
      robot.type("q").ends();
    }
  }
}
