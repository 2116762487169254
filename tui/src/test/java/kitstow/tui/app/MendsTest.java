package kitstow.tui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import kitstow.planner.LoadPlanner;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;
import kitstow.tui.Shipped;
import kitstow.tui.edit.Design;
import org.junit.jupiter.api.Test;

class MendsTest {
  private final Desk desk = new Desk(Shipped.REMOTE);

  @Test
  void whereNothingIsBrokenThereIsNothingToMend() {
    Design before = desk.work().design();
    desk.type("6a");
    assertThat(desk.work().design()).isEqualTo(before);
    assertThat(desk.state().note()).contains("nothing is broken");
  }

  @Test
  void whereNoMendWasFoundAnotherSearchIsOffered() {
    desk.choose("recovery-bag").type("h").judge();
    desk.take(new Msg.Advised(advice().withMends(List.of())));
    desk.type("6a");
    assertThat(desk.state().note()).contains("s searches for another plan");
  }

  @Test
  void oneKeyCarriesOutTheFirstMendAndAnotherTakesItBack() {
    desk.choose("recovery-bag").type("h").judge();
    Design broken = desk.work().design();
    assertThat(desk.work().report().orElseThrow().broken()).isTrue();
    desk.take(new Msg.Advised(advice()));
    desk.type("6a").judge();
    assertThat(desk.work().loading().placed()).containsKey("recovery-bag");
    assertThat(desk.work().report().orElseThrow().broken()).isFalse();
    desk.type("u");
    assertThat(desk.work().design()).isEqualTo(broken);
  }

  @Test
  void oneKeyPullsTheFirstLeverOnTheTightestLimitAndAnotherTakesItBack() {
    Design before = desk.work().design();
    double leftKg = tightestKg();
    desk.type("6l").judge();
    assertThat(desk.work().design()).isNotEqualTo(before);
    assertThat(desk.work().report().orElseThrow().broken()).isFalse();
    assertThat(tightestKg()).isGreaterThan(leftKg);
    desk.type("u");
    assertThat(desk.work().design()).isEqualTo(before);
  }

  /** What is left of the limit that is the tightest in the shipped plan. */
  private double tightestKg() {
    LimitReading shipped = Shipped.REMOTE.report().tightest().get(0);
    return desk.work().report().orElseThrow().tightest().stream()
        .filter(one -> one.rule() == shipped.rule())
        .filter(one -> one.subjectId().equals(shipped.subjectId()))
        .findFirst()
        .orElseThrow()
        .margin()
        .marginKg();
  }

  private Advice advice() {
    CheckReport report = desk.work().report().orElseThrow();
    return new Advice(
            report,
            LoadPlanner.packList(report),
            LoadPlanner.homeReasons(report),
            LoadPlanner.roomLeft(report),
            LoadPlanner.figures(report),
            Optional.empty(),
            Optional.empty())
        .withMends(LoadPlanner.mends(report));
  }
}
