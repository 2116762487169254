package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Item;
import kitstow.planner.model.Mark;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Need;
import kitstow.planner.model.SupplyKind;
import kitstow.tui.Shipped;
import kitstow.tui.edit.Design;
import kitstow.tui.keys.KeyName;
import kitstow.tui.screen.View;
import org.junit.jupiter.api.Test;

class GearEditTest {
  private final Desk desk = new Desk(Shipped.REMOTE);

  @Test
  void badInputIsToldWhileItIsTypedAndCannotBeTaken() {
    Design before = desk.work().design();
    open("fridge");
    desk.press(KeyName.TAB).press(KeyName.DELETE).type("heavy");
    assertThat(shown()).contains("! e.g. 12.5");
    desk.press(KeyName.ENTER);
    assertThat(desk.work().design()).isEqualTo(before);
    assertThat(desk.state().note()).contains("Put right");
    desk.press(KeyName.DELETE).type("1 kg");
    assertThat(shown()).contains("its content alone is");
    desk.press(KeyName.ESCAPE);
    assertThat(desk.work().design()).isEqualTo(before);
  }

  @Test
  void otherFiguresMakeAnEntryOfItsOwnAndCanBeUndone() {
    Design before = desk.work().design();
    open("fridge");
    desk.press(KeyName.TAB).press(KeyName.DELETE).type("100 lb");
    desk.press(KeyName.TAB);
    while (!shown().contains("< weighed >")) {
      desk.press(KeyName.RIGHT);
    }
    desk.press(KeyName.TAB).press(KeyName.DELETE).type("65 cm").press(KeyName.ENTER).judge();
    Item fridge = Things.item(desk.work().loading(), "fridge").orElseThrow();
    assertThat(fridge.mass().massG()).isEqualTo(45_359L);
    assertThat(fridge.mass().source()).isEqualTo(MassSource.WEIGHED);
    assertThat(fridge.mass().toleranceG()).isEqualTo(453L);
    assertThat(fridge.shapes().get(0)).isEqualTo(new SizeMm(650, 380, 440));
    assertThat(fridge.entryId()).isEqualTo("own-fridge");
    desk.type("u");
    assertThat(desk.work().design()).isEqualTo(before);
  }

  @Test
  void howItStandsWhatItCarriesAndWhatItIsLikeCanBeChanged() {
    Item before = Things.item(desk.work().loading(), "fridge").orElseThrow();
    open("fridge");
    for (int i = 0; i < 8; i++) {
      desk.press(KeyName.TAB);
    }
    desk.press(KeyName.RIGHT);
    desk.press(KeyName.TAB).press(KeyName.DELETE).type("10 kg");
    desk.press(KeyName.TAB).press(KeyName.TAB).press(KeyName.DELETE).type("food, dustproof");
    assertThat(shown()).contains("! any of food, fuel");
    desk.press(KeyName.ENTER);
    assertThat(desk.state().note()).contains("Put right");
    desk.press(KeyName.DELETE).type("Food, heavy tool,").press(KeyName.ENTER).judge();
    Item after = Things.item(desk.work().loading(), "fridge").orElseThrow();
    assertThat(after.turns()).isNotEqualTo(before.turns()).contains(Turn.LHW);
    assertThat(after.bearsG()).isEqualTo(10_000L);
    assertThat(after.marks()).containsExactlyInAnyOrder(Mark.FOOD, Mark.HEAVY_TOOL);
    assertThat(after.reach()).isEqualTo(before.reach());
    assertThat(after.keepClear()).isEqualTo(before.keepClear());
    assertThat(after.entryId()).isEqualTo("own-fridge");
    desk.type("u");
    assertThat(Things.item(desk.work().loading(), "fridge")).contains(before);
  }

  @Test
  void gearIsAddedFromTheCatalogueAndIsAtHomeAtFirst() {
    int before = desk.work().design().scenario().items().size();
    desk.type("8nno such thing").press(KeyName.ENTER);
    assertThat(desk.state().note()).contains("nothing of that name");
    desk.press(KeyName.ESCAPE).type("nchair").press(KeyName.ENTER).judge();
    List<Item> items = desk.work().design().scenario().items();
    assertThat(items).hasSize(before + 1);
    Item added = items.get(before);
    assertThat(added.title().toLowerCase(Locale.ROOT)).contains("chair");
    assertThat(desk.work().loading().home()).contains(added.keyOf(1));
  }

  @Test
  void whatIsMarkedOnThePageIsChosen() {
    desk.type("8");
    String first = desk.work().design().scenario().items().get(0).keyOf(1);
    assertThat(desk.work().looking().chosen()).isEqualTo(first);
  }

  @Test
  void fewerOfAKindTakesTheRestOutOfThePlan() {
    open("engine-oil");
    for (int i = 0; i < 6; i++) {
      desk.press(KeyName.TAB);
    }
    desk.press(KeyName.DELETE).type("1").press(KeyName.TAB).press(KeyName.RIGHT);
    desk.press(KeyName.ENTER).judge();
    Item oil = Things.item(desk.work().loading(), "engine-oil").orElseThrow();
    assertThat(oil.quantity()).isEqualTo(1);
    assertThat(oil.need()).isNotEqualTo(Need.MUST);
    assertThat(desk.work().loading().placed()).doesNotContainKey("engine-oil#2");
  }

  @Test
  void whatIsRemovedIsNoMoreUsedUpOnTheTripUntilThatIsUndone() {
    Design before = desk.work().design();
    assertThat(foodFrom()).contains("fridge");
    mark("fridge");
    desk.type("d").judge();
    assertThat(Things.item(desk.work().loading(), "fridge")).isEmpty();
    assertThat(foodFrom()).doesNotContain("fridge");
    desk.type("u");
    assertThat(desk.work().design()).isEqualTo(before);
  }

  private List<String> foodFrom() {
    return desk.work().design().scenario().trip().orders().stream()
        .filter(order -> order.kind() == SupplyKind.FOOD)
        .flatMap(order -> order.groups().stream())
        .flatMap(List::stream)
        .toList();
  }

  private void open(String id) {
    mark(id);
    desk.press(KeyName.ENTER);
    assertThat(desk.state().overlay()).isInstanceOf(Overlay.Editing.class);
  }

  private void mark(String id) {
    desk.type("1").type("8");
    while (!GearUpdate.marked(desk.work()).orElseThrow().id().equals(id)) {
      int row = desk.work().looking().row();
      desk.press(KeyName.DOWN);
      assertThat(desk.work().looking().row()).as(id).isGreaterThan(row);
    }
  }

  private String shown() {
    return String.join("\n", View.draw(desk.state()).lines());
  }
}
