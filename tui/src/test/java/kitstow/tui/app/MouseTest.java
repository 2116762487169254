package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.PlacedItem;
import kitstow.tui.Shipped;
import kitstow.tui.edit.Design;
import kitstow.tui.keys.KeyName;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.keys.Target;
import kitstow.tui.screen.View;
import kitstow.tui.view.Eye;
import kitstow.tui.widget.Frame;
import org.junit.jupiter.api.Test;

class MouseTest {
  private static final String BAG = "clothes-bag#1";

  private final Desk desk = new Desk(Shipped.REMOTE);
  private final Design before = desk.work().design();

  @Test
  void theFirstClickChoosesTheSecondTakesUpAndTheThirdPutsDown() {
    Target.Spot bag = drawn(BAG);
    desk.take(new Msg.Pointed(bag));
    assertThat(desk.work().looking().chosen()).isEqualTo(BAG);
    assertThat(desk.work().carrying()).isEmpty();
    desk.take(new Msg.Pointed(bag));
    assertThat(desk.work().carrying()).isPresent();
    desk.take(new Msg.Pointed(bag));
    assertThat(desk.work().carrying()).isEmpty();
    assertThat(desk.work().design()).isEqualTo(before);
  }

  @Test
  void aClickElsewhereCarriesAThingThereAndEscapePutsItBack() {
    Target.Spot bag = drawn(BAG);
    desk.take(new Msg.Pointed(bag)).take(new Msg.Pointed(bag));
    PlacedItem held = placed();
    Target.Spot front = at(held.space().box().minXMm() + 10, bag);
    desk.take(new Msg.Pointed(front)).judge();
    assertThat(placed().space()).isEqualTo(held.space());
    assertThat(placed().box().minXMm()).isEqualTo(held.space().box().minXMm());
    assertThat(shown()).contains("carried; it may");
    desk.press(KeyPress.of(KeyName.ESCAPE));
    assertThat(desk.work().design()).isEqualTo(before);
  }

  @Test
  void aThingIsDraggedAndPutDownAndThatIsUndone() {
    Target.Spot bag = drawn(BAG);
    BoxMm space = placed().space().box();
    desk.take(new Msg.Pointed(bag));
    desk.take(new Msg.Dragged(bag, at(space.minXMm() + 10, bag)));
    assertThat(desk.work().carrying()).isEmpty();
    assertThat(placed().box().minXMm()).isEqualTo(space.minXMm());
    assertThat(desk.work().past().done()).hasSize(1);
    desk.type("u");
    assertThat(desk.work().design()).isEqualTo(before);
  }

  @Test
  void whatIsChosenAlreadyCanBeDraggedToo() {
    Target.Spot bag = drawn(BAG);
    BoxMm space = placed().space().box();
    desk.choose(BAG).take(new Msg.Pointed(bag));
    desk.take(new Msg.Dragged(bag, at(space.minXMm() + 10, bag)));
    assertThat(desk.work().carrying()).isEmpty();
    assertThat(placed().box().minXMm()).isEqualTo(space.minXMm());
  }

  @Test
  void whereThereIsNoSpaceNothingIsPut() {
    Target.Spot bag = drawn(BAG);
    desk.take(new Msg.Pointed(bag)).take(new Msg.Dragged(bag, at(-3_000, bag)));
    assertThat(desk.state().note()).contains("There is no space there");
    assertThat(desk.work().design()).isEqualTo(before);
    assertThat(desk.work().carrying()).isEmpty();
  }

  @Test
  void aPinnedThingIsNotDragged() {
    desk.choose(BAG);
    Target.Spot tent = drawn("roof-tent");
    desk.choose("roof-tent").type("p").judge();
    Design pinned = desk.work().design();
    desk.take(new Msg.Dragged(tent, at(tent.acrossMm() - 300, tent)));
    assertThat(desk.state().note()).contains("it is pinned");
    assertThat(desk.work().design()).isEqualTo(pinned);
  }

  @Test
  void aRowThatIsClickedTwiceIsChanged() {
    desk.type("8").take(new Msg.Pointed(new Target.Row(3)));
    assertThat(desk.state().overlay()).isEqualTo(Overlay.NONE);
    desk.take(new Msg.Pointed(new Target.Row(3)));
    assertThat(desk.state().overlay()).isInstanceOf(Overlay.Editing.class);
    desk.take(new Msg.Pointed(new Target.Row(2)));
    assertThat(shown()).contains("> Known by");
  }

  /** The first cell in which a thing is drawn, in the first view in which it is. */
  private Target.Spot drawn(String key) {
    for (int views = 0; views < Eye.values().length; views++) {
      Frame frame = View.draw(desk.state());
      for (int row = 0; row < 40; row++) {
        for (int column = 0; column < 120; column++) {
          Optional<Target.Spot> spot =
              frame
                  .targetAt(column, row)
                  .flatMap(
                      target ->
                          target.match(
                              Optional::of, other -> Optional.empty(), press -> Optional.empty()));
          if (spot.filter(one -> one.key().equals(key)).isPresent()) {
            return spot.get();
          }
        }
      }
      desk.type("v");
    }
    throw new AssertionError("not drawn: " + key);
  }

  private static Target.Spot at(int acrossMm, Target.Spot like) {
    return new Target.Spot("", like.eye(), acrossMm, like.upMm());
  }

  private PlacedItem placed() {
    return Optional.ofNullable(desk.work().loading().placed().get(BAG)).orElseThrow();
  }

  private String shown() {
    return String.join("\n", View.draw(desk.state()).lines());
  }
}
