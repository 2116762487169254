package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.json.ScenarioReader;
import kitstow.planner.json.ScenarioWriter;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Zone;
import kitstow.tui.Shipped;
import kitstow.tui.app.EditRow.Part;
import kitstow.tui.edit.Design;
import kitstow.tui.keys.KeyName;
import kitstow.tui.screen.View;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Bars, racks and the like: where they are, what they weigh, one more and one fewer. */
class AccessoryEditTest {
  private final Desk desk = new Desk(Shipped.REMOTE);
  private final Design before = desk.work().design();

  @AfterEach
  void whatWasMadeIsTheSameWhenItIsReadAgain() {
    List<Accessory> again =
        ScenarioReader.read(ScenarioWriter.write(scenario()), Catalogue.EMPTY)
            .match(read -> read.value().accessories(), refused -> List.of());
    assertThat(again).isEqualTo(scenario().accessories()).isNotEmpty();
  }

  @Test
  void anAccessoryOfTheCatalogueIsWhereItWasMeasured() {
    int accessories = scenario().accessories().size();
    mark(accessories);
    desk.press(KeyName.ENTER).type("solar").press(KeyName.ENTER);
    assertThat(shown()).contains("Fixed solar panel 200 W");
    desk.press(KeyName.ENTER);
    assertThat(desk.state().note()).contains("Put right what is marked first");
    assertThat(shown()).contains("from which axle");

    tab(3).type("40 cm");
    tab(1);
    turnTo("ahead of the rear axle");
    tab(1).type("1900");
    tab(1).type("250");
    tab(1);
    turnTo("right");
    tab(1);
    turnTo("canopy roof");
    desk.press(KeyName.ENTER).judge();

    assertThat(scenario().accessories()).hasSize(accessories + 1);
    Accessory added = scenario().accessories().get(accessories);
    BoxMm box = added.box();
    assertThat(box.minXMm() + box.maxXMm()).isEqualTo(2 * (wheelbaseMm() - 400));
    assertThat(box.minYMm() + box.maxYMm()).isEqualTo(2 * 250);
    assertThat(Math.floorDiv(box.minZMm() + box.maxZMm(), 2)).isEqualTo(1900);
    assertThat(added.roof()).contains(Zone.CANOPY_ROOF);
    assertThat(EditRows.marked(desk.work())).contains(new EditRow(Part.ACCESSORY, added.id()));
    assertThat(shown().replaceAll("\\s+", " "))
        .contains("400 mm ahead of the rear axle; on the canopy roof");
    desk.type("u");
    assertThat(desk.work().design()).isEqualTo(before);
  }

  @Test
  void anAccessoryThatIsNotTouchedIsAsItWas() {
    for (Accessory one : scenario().accessories()) {
      mark(scenario().accessories().indexOf(one));
      desk.press(KeyName.ENTER).press(KeyName.ENTER);
      assertThat(desk.state().note()).isEqualTo("Nothing has changed.");
    }
  }

  @Test
  void onePieceWithAnotherMassBecomesAnEntryOfItsOwn() {
    Accessory old = scenario().accessories().get(0);
    mark(0);
    desk.press(KeyName.ENTER);
    tab(1).type("95").press(KeyName.ENTER).judge();

    Accessory now = scenario().accessories().get(0);
    assertThat(now.mass().massG()).isEqualTo(95_000L);
    assertThat(now.entryId()).isNotEqualTo(old.entryId());
    assertThat(now.box()).isEqualTo(old.box());
    assertThat(now.mass().toleranceG()).isGreaterThan(old.mass().toleranceG());
  }

  @Test
  void nothingLiesInTheGround() {
    mark(0);
    desk.press(KeyName.ENTER);
    tab(5).type("100");
    assertThat(shown()).contains("would be in the ground");
    desk.press(KeyName.ESCAPE);
  }

  @Test
  void oneIsRemovedUnlessTheUteWasWeighedWithIt() {
    int accessories = scenario().accessories().size();
    mark(0);
    desk.type("d").judge();
    assertThat(scenario().accessories()).hasSize(accessories - 1);

    Accessory first = scenario().accessories().get(0);
    mark(Part.WEIGHING, 0);
    desk.press(KeyName.ENTER);
    for (int i = 0; i < 40 && !shown().contains("> On it: " + first.title()); i++) {
      desk.press(KeyName.TAB);
    }
    desk.press(KeyName.RIGHT).press(KeyName.ENTER).judge();
    assertThat(scenario().ute().empty().fitted()).contains(first.id());
    mark(0);
    desk.type("d");
    assertThat(desk.state().note()).contains("the ute was weighed with it");
    assertThat(scenario().accessories()).hasSize(accessories - 1).contains(first);
  }

  @Test
  void anotherNameAloneLeavesItsFiguresAndTheirSource() {
    Accessory old = scenario().accessories().get(0);
    mark(0);
    desk.press(KeyName.ENTER).type(", black").press(KeyName.ENTER).judge();

    Accessory now = scenario().accessories().get(0);
    assertThat(now.title()).isEqualTo(old.title() + ", black");
    assertThat(now.entryId()).isEqualTo(old.entryId());
    assertThat(now.source()).isEqualTo(old.source());
  }

  private Desk tab(int times) {
    for (int i = 0; i < times; i++) {
      desk.press(KeyName.TAB);
    }
    return desk;
  }

  private void turnTo(String word) {
    for (int i = 0; i < 6 && !shown().contains("< " + word + " >"); i++) {
      desk.press(KeyName.RIGHT);
    }
    assertThat(shown()).contains("< " + word + " >");
  }

  private void mark(int index) {
    mark(Part.ACCESSORY, index);
  }

  private void mark(Part part, int index) {
    desk.mark("0", part, index);
  }

  private int wheelbaseMm() {
    return scenario().ute().wheelbaseMm();
  }

  private Scenario scenario() {
    return desk.work().design().scenario();
  }

  private String shown() {
    return String.join("\n", View.draw(desk.state()).lines());
  }
}
