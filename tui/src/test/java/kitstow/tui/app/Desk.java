package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.LoadPlanner;
import kitstow.tui.Shipped;
import kitstow.tui.edit.Design;
import kitstow.tui.keys.KeyName;
import kitstow.tui.keys.KeyPress;

/** A state to press keys on, with the judge at hand and all other effects noted. */
final class Desk {
  private AppState state;
  private final List<Effect> effects = new ArrayList<>();

  Desk(Shipped shipped) {
    this.state = shipped.opened(new Size(120, 40), /* ascii= */ false);
  }

  Desk type(String signs) {
    signs.chars().forEach(sign -> press(KeyPress.sign(sign)));
    return this;
  }

  Desk press(KeyName key) {
    return press(KeyPress.of(key));
  }

  Desk press(KeyPress key) {
    return take(new Msg.Pressed(key));
  }

  Desk take(Msg msg) {
    Step step = Update.apply(state, msg);
    state = step.state();
    effects.addAll(step.effects());
    return this;
  }

  /** Chooses a unit by its body key. */
  Desk choose(String key) {
    Work work = work();
    state = state.with(work.with(work.looking().at(key)));
    return this;
  }

  /**
   * Marks a row of a page of things to edit.
   *
   * @param page digit of the page
   * @param index its number among the rows of its part
   */
  Desk mark(String page, EditRow.Part part, int index) {
    type(page);
    List<EditRow.Part> parts = EditRows.of(work()).stream().map(EditRow::part).toList();
    int row = parts.indexOf(part) + index;
    assertThat(parts.get(row)).isEqualTo(part);
    int moves = row - work().looking().row();
    for (int i = 0; i < Math.abs(moves); i++) {
      press(moves > 0 ? KeyName.DOWN : KeyName.UP);
    }
    assertThat(work().looking().row()).isEqualTo(row);
    return this;
  }

  /** Lets the judge judge what is shown. */
  Desk judge() {
    Design design = work().design();
    return take(new Msg.Judged(design, LoadPlanner.check(design.scenario(), design.plan())));
  }

  AppState state() {
    return state;
  }

  Work work() {
    return state.work().orElseThrow();
  }

  List<Effect> effects() {
    return effects;
  }
}
