package kitstow.tui.runtime;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.Item;
import kitstow.planner.model.Need;
import kitstow.planner.report.CheckReport;
import kitstow.tui.cli.CheckInput;
import kitstow.tui.cli.InputFaults;
import org.junit.jupiter.api.Test;

class BeginJourneyTest extends OwnState {
  private static final String TABLE =
      """
      id,title,lengthMm,widthMm,heightMm,massKg,massSource,quantity,need,turns,bearsKg,reach
      crate,Crate of oranges,400,300,250,11.5,weighed,2,should,upright,20,daily
      tarp,Tarpaulin,600,300,150,4,label,1,nice,any,5,rare
      """;

  private static final String BARE =
      """
      title,lengthMm,widthMm,heightMm,massKg
      Crate of oranges,400,300,250,12
      """;

  @Test
  void beginsWithNothingFitsFillsSearchesAndSaves() throws IOException {
    Files.writeString(folder.resolve("gear.csv"), TABLE);
    Files.writeString(folder.resolve("bare.csv"), BARE);
    Files.writeString(folder.resolve("bad.csv"), TABLE.replace("11.5", "heavy"));
    try (Robot robot = new Robot(Optional.of(folder), new TerminalSize(120, 40))) {
      robot.sees("n begins one");
      robot.type("n").sees("A new scenario").type("Coast").press(KeyType.Enter);
      robot.sees("Put right what is marked first");
      robot.press(KeyType.Tab).press(KeyType.ArrowRight).press(KeyType.Tab).press(KeyType.Tab);
      robot.press(KeyType.ArrowRight).sees("Canopy 1500").sees("300 mm, flush");
      for (int i = 0; i < 4; i++) {
        robot.press(KeyType.Tab);
      }
      robot.type("85").press(KeyType.Enter).sees("Saved in coast.plan.json").sees("[0 Ute]");
      robot.type("nflat").press(KeyType.Enter).sees("Done: add Flat fridge slide");
      robot.sees("< Left side, forward, full height >").press(KeyType.Enter);
      robot.type("nsingle drawer").press(KeyType.Enter).sees("Done: add Single drawer");
      robot.press(KeyType.Enter);
      robot.type("8nchest fridge").press(KeyType.Enter).sees("0 of 1");
      robot.type("ibad.csv").press(KeyType.Enter).sees("line 2, column 6 (massKg)");
      robot
          .press(KeyType.Escape)
          .type("inowhere.csv")
          .press(KeyType.Enter)
          .sees("there is no such file");
      robot.press(KeyType.Escape).type("igear.csv").press(KeyType.Enter);
      robot.sees("0 known, 2 new, 2 of these without marks").sees("Crate of oranges");
      robot.type("ibare.csv").press(KeyType.Enter).sees("1 known, 0 new");
      robot.type("s").sees("SEARCHING").sees("best so far");
      robot.type("s").sees("s searches on").sees("4 aboard, 0 at home");
      robot.type("W").sees("Saved in coast.plan.json for coast.json").type("q").ends();
    }
    InputFaults faults = new InputFaults();
    CheckInput saved =
        CheckInput.read(
                folder.resolve("coast.json"), folder.resolve("coast.plan.json"), null, faults)
            .orElseThrow(() -> new AssertionError(faults.lines()));
    assertThat(saved.scenario().modules()).hasSize(2);
    assertThat(saved.plan().placements()).hasSize(4);
    CheckReport report = LoadPlanner.check(saved.scenario(), saved.plan());
    assertThat(report.brokenFindings()).isEmpty();
    Item crate =
        saved.scenario().items().stream()
            .filter(item -> item.id().equals("crate"))
            .findFirst()
            .orElseThrow();
    assertThat(crate.mass().massG()).isEqualTo(12_000L);
    assertThat(crate.quantity()).isEqualTo(2);
    assertThat(crate.bearsG()).isEqualTo(20_000L);
    assertThat(crate.need()).isEqualTo(Need.SHOULD);
    try (var files = Files.list(folder)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .doesNotContain("coast-own.json")
          .contains("coast.json", "coast.plan.json");
    }
  }
}
