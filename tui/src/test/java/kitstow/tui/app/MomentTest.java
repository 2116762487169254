package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import kitstow.planner.report.StateFigures;
import kitstow.tui.Shipped;
import org.junit.jupiter.api.Test;

class MomentTest {
  private final Desk desk = new Desk(Shipped.REMOTE);

  /** With the can at home there is no moment any more at which it is emptied. */
  @Test
  void aMomentThatAnotherPlanLacksGivesWayToOneOfTheSameLeg() {
    StateFigures decanting =
        desk.work().states().stream()
            .filter(one -> one.state().id().contains("decanted"))
            .reduce((a, b) -> b)
            .orElseThrow();
    String can = can(decanting.state().id());
    desk.choose(can);
    Work work = desk.work();
    Looking looking = work.looking().in(decanting.state().id());
    Work at = work.with(looking);
    assertThat(at.state()).contains(decanting);

    desk.type("h").judge();
    Work after = desk.work().with(looking);
    List<String> ids = after.states().stream().map(one -> one.state().id()).toList();

    assertThat(ids).doesNotContain(decanting.state().id());
    Optional<String> leg = decanting.state().legId();
    assertThat(leg).isPresent();
    assertThat(after.state().orElseThrow().state().legId()).isEqualTo(leg);
  }

  /** Body key of the can in the id of a moment: after the leg and a number of two digits. */
  private String can(String id) {
    return desk.work().loading().placed().keySet().stream()
        .filter(key -> id.contains("-" + key.replace('#', '-') + "-decanted"))
        .findFirst()
        .orElseThrow();
  }
}
