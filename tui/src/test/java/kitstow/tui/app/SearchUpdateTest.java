package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;

import kitstow.planner.LoadPlanner;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.report.CheckReport;
import kitstow.tui.Shipped;
import kitstow.tui.edit.Design;
import org.junit.jupiter.api.Test;

class SearchUpdateTest {
  private final Desk desk = new Desk(Shipped.REMOTE);

  @Test
  void theViewsFollowTheBestPlanAndAWorseOneAtTheEndChangesNothing() {
    Design before = desk.work().design();
    LoadPlan less = Placements.without(before, "fridge", 1).plan();
    desk.type("s");
    int number = desk.work().searching().orElseThrow().number();
    assertThat(desk.effects()).anyMatch(Effect.Search.class::isInstance);

    desk.take(new Msg.Better(number, less, 5000.0, 2));
    assertThat(desk.work().loading().home()).contains("fridge");
    assertThat(desk.work().unsaved()).isFalse();

    desk.take(new Msg.SearchEnded(number, Shipped.REMOTE.report(), judged(less)));
    assertThat(desk.work().design()).isEqualTo(before);
    assertThat(desk.work().past()).isEqualTo(Past.NONE);
    assertThat(desk.state().note()).contains("Nothing better");
  }

  @Test
  void aBetterPlanIsTakenAndCanBeUndone() {
    desk.choose("fridge").type("h").judge();
    Design without = desk.work().design();
    desk.type("s");
    int number = desk.work().searching().orElseThrow().number();
    LoadPlan whole = Shipped.REMOTE.design().plan();
    desk.take(new Msg.SearchEnded(number, judged(without.plan()), judged(whole)));
    assertThat(desk.work().design().plan()).isEqualTo(whole);
    desk.type("u");
    assertThat(desk.work().design()).isEqualTo(without);
  }

  @Test
  void whatComesFromAnOlderSearchIsLeftOut() {
    Design before = desk.work().design();
    desk.type("s").take(new Msg.Better(99, Design.unpacked(before.scenario()).plan(), 1.0, 81));
    assertThat(desk.work().design()).isEqualTo(before);
  }

  @Test
  void handsAreOffWhileItRuns() {
    desk.choose("fridge").type("sm");
    assertThat(desk.work().carrying()).isEmpty();
    assertThat(desk.state().note()).contains("a search is running");
    desk.type("s");
    assertThat(desk.effects()).anyMatch(Effect.StopSearch.class::isInstance);
  }

  private static CheckReport judged(LoadPlan plan) {
    return LoadPlanner.check(Shipped.REMOTE.design().scenario(), plan);
  }
}
