package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Pin;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.report.Finding;
import kitstow.tui.Shipped;
import kitstow.tui.edit.Design;
import kitstow.tui.keys.KeyName;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.screen.View;
import org.junit.jupiter.api.Test;

class ByHandTest {
  private static final String FRIDGE = "fridge";
  private final Desk desk = new Desk(Shipped.REMOTE);

  @Test
  void whatIsCarriedIsJudgedWhereItIsHeldAndPutBackByEscape() {
    Design before = desk.work().design();
    desk.choose(FRIDGE).type("m").press(KeyName.RIGHT);
    assertThat(desk.work().design()).isNotEqualTo(before);
    assertThat(desk.effects()).contains(new Effect.Judge(desk.work().design()));
    assertThat(desk.work().unsaved()).isFalse();

    desk.press(KeyName.ESCAPE);
    assertThat(desk.work().design()).isEqualTo(before);
    assertThat(desk.work().carrying()).isEmpty();
    assertThat(desk.work().past()).isEqualTo(Past.NONE);
  }

  @Test
  void whatIsPutDownCanBeUndoneAndDoneAgain() {
    Design before = desk.work().design();
    desk.choose(FRIDGE).type("m").press(KeyName.RIGHT).press(KeyName.ENTER);
    Design after = desk.work().design();
    assertThat(after).isNotEqualTo(before);
    assertThat(desk.work().unsaved()).isTrue();
    assertThat(desk.effects()).contains(new Effect.KeepSafe(desk.work().source(), after));
    desk.type("u");
    assertThat(desk.work().design()).isEqualTo(before);
    desk.type("r");
    assertThat(desk.work().design()).isEqualTo(after);
  }

  @Test
  void fiftyStepsAreUndoneOneByOneAndDoneAgain() {
    List<Design> designs = new ArrayList<>(List.of(desk.work().design()));
    List<String> keys = new ArrayList<>(desk.work().loading().placed().keySet());
    for (int i = 0; i < 50; i++) {
      desk.choose(keys.get(i)).type("h");
      designs.add(desk.work().design());
    }
    assertThat(desk.work().past().done()).hasSize(50);
    for (int i = 49; i >= 0; i--) {
      desk.type("u");
      assertThat(desk.work().design()).isEqualTo(designs.get(i));
    }
    desk.type("u");
    assertThat(desk.state().note()).contains("nothing to undo");
    for (int i = 1; i <= 50; i++) {
      desk.type("r");
      assertThat(desk.work().design()).isEqualTo(designs.get(i));
    }
  }

  @Test
  void aFineStepMovesTenMillimetres() {
    PlacedItem before = desk.work().loading().placed().get(FRIDGE);
    desk.choose(FRIDGE).type("m").press(KeyPress.shifted(KeyName.RIGHT));
    PlacedItem after = desk.work().loading().placed().get(FRIDGE);
    assertThat(after.box().minXMm() - before.box().minXMm()).isEqualTo(10);
    assertThat(after.box().minZMm()).isEqualTo(before.box().minZMm());
  }

  @Test
  void aPlaceThatBreaksARuleIsToldAtOnce() {
    String key = "recovery-bag";
    desk.choose(key).type("m");
    boolean told = false;
    for (int i = 0; i < 12 && !told; i++) {
      desk.press(KeyPress.shifted(i < 6 ? KeyName.RIGHT : KeyName.LEFT));
      desk.press(KeyPress.shifted(i < 6 ? KeyName.RIGHT : KeyName.LEFT)).judge();
      for (Finding finding : desk.work().report().orElseThrow().brokenFindings()) {
        told |= finding.subjectIds().contains(key);
      }
    }
    assertThat(told).as("pushed into its neighbours or over the edge").isTrue();
    assertThat(String.join("\n", View.draw(desk.state()).lines())).contains("may NOT stand here");
  }

  @Test
  void aPinHoldsPlaceAndTurnAndKeepsTheThingFromBeingCarried() {
    Placement at = desk.work().loading().placed().get(FRIDGE).placement();
    desk.choose(FRIDGE).type("p");
    Pin pin = Things.item(desk.work().loading(), FRIDGE).orElseThrow().pin().orElseThrow();
    assertThat(pin)
        .isEqualTo(new Pin(at.spaceId(), Optional.of(at.corner()), Optional.of(at.turn())));
    desk.type("m");
    assertThat(desk.work().carrying()).isEmpty();
    assertThat(desk.state().note()).contains("pinned");
    desk.type("pm");
    assertThat(desk.work().carrying()).isPresent();
  }

  @Test
  void severalOfAKindArePinnedToTheirSpaceTogether() {
    desk.choose("water-can#2").type("p");
    Pin pin = Things.item(desk.work().loading(), "water-can#1").orElseThrow().pin().orElseThrow();
    assertThat(pin.spaceId()).isEqualTo("water-rack");
    assertThat(pin.corner()).isEmpty();
  }

  @Test
  void whatWasSentHomeIsBroughtBackToASpotWhereItMayStand() {
    desk.choose(FRIDGE).type("h");
    assertThat(desk.work().loading().home()).contains(FRIDGE);
    desk.type("b").judge();
    assertThat(desk.work().loading().placed()).containsKey(FRIDGE);
    assertThat(desk.work().report().orElseThrow().brokenFindings())
        .extracting(Finding::subjectIds)
        .noneMatch(ids -> ids.contains(FRIDGE));
  }

  @Test
  void tabCarriesIntoAnotherSpaceThatTakesIt() {
    String key = "puncture-kit";
    String before = desk.work().loading().placed().get(key).space().id();
    desk.choose(key).type("m").press(KeyName.TAB).judge();
    assertThat(desk.work().loading().placed().get(key).space().id()).isNotEqualTo(before);
    assertThat(desk.work().report().orElseThrow().brokenFindings())
        .extracting(Finding::subjectIds)
        .noneMatch(ids -> ids.contains(key));
  }

  @Test
  void nothingIsLostUnasked() {
    desk.choose(FRIDGE).type("hq");
    assertThat(desk.effects()).noneMatch(Effect.End.class::isInstance);
    assertThat(desk.state().overlay()).isInstanceOf(Overlay.Ask.class);
    desk.press(KeyName.ESCAPE);
    assertThat(desk.work().unsaved()).isTrue();
    desk.type("q").press(KeyName.ENTER);
    assertThat(desk.effects()).anyMatch(Effect.Save.class::isInstance);
    assertThat(desk.effects()).noneMatch(Effect.End.class::isInstance);
    desk.take(new Msg.Saved(desk.work().source(), desk.work().design()));
    assertThat(desk.effects()).anyMatch(Effect.End.class::isInstance);
  }

  @Test
  void withNothingToSaveTheProgramEndsAtOnce() {
    desk.type("q");
    assertThat(desk.effects()).anyMatch(Effect.End.class::isInstance);
  }

  @Test
  void aFileThatCannotBeWrittenKeepsTheProgramOpen() {
    desk.choose(FRIDGE).type("hq").press(KeyName.ENTER);
    desk.take(new Msg.NotSaved("plan.json: could not be written"));
    desk.press(KeyName.ESCAPE);
    assertThat(desk.effects()).noneMatch(Effect.End.class::isInstance);
    assertThat(desk.work().unsaved()).isTrue();
  }
}
