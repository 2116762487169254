package kitstow.planner.rules;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Regimes;
import kitstow.planner.model.Regimes.RearOverhang;
import kitstow.planner.model.RuleId;
import kitstow.planner.statics.AxleLoads;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.OtherSettings;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import kitstow.planner.testkit.StateBuilder;
import kitstow.planner.trip.Timeline;
import org.junit.jupiter.api.Test;

class RegimesTest {
  @Test
  void theShareOfTheTrailerOnTheBallIsHeldAgainstBothBounds() {
    // 1,000 kg: 6 % is 60 kg, 15 % is 150 kg.
    assertThat(ball(60)).isCloseTo(0.0, within(1.0e-9));
    assertThat(ball(59)).isNegative();
    assertThat(ball(150)).isCloseTo(0.0, within(1.0e-9));
    assertThat(ball(151)).isNegative();
    assertThat(ball(100)).isPositive();
  }

  private static double ball(long ballKg) {
    Loading loading =
        RigBuilder.aDualCab()
            .trailer("van", Masses.kg(1000), Masses.kg(ballKg), /* braked= */ true)
            .load();
    LoadState towing = StateBuilder.driving(loading).towing("van").build();
    return check(loading, towing, RuleId.BALL_SHARE).orElseThrow().margin();
  }

  @Test
  void withoutATrailerThereIsNoShare() {
    Loading loading = RigBuilder.aDualCab().load();
    LoadState alone = StateBuilder.driving(loading).build();
    assertThat(check(loading, alone, RuleId.BALL_SHARE)).isEmpty();
  }

  @Test
  void aFloorOfTheFrontAxleIsLookedAtOnlyWhereItIsAskedFor() {
    Loading plain = RigBuilder.aDualCab().load();
    LoadState state = StateBuilder.driving(plain).build();
    assertThat(check(plain, state, RuleId.FRONT_AXLE_FLOOR)).isEmpty();
    double share = AxleLoads.of(plain, state).frontShareRatio() * 1000.0;
    for (int above : List.of(0, 1)) {
      int floor = (int) Math.floor(share) + above;
      Loading asked = regimes(new Regimes(60, 150, floor, RearOverhang.NONE)).load();
      StateCheck check = check(asked, state, RuleId.FRONT_AXLE_FLOOR).orElseThrow();
      assertThat(check.margin() < 0.0).isEqualTo(above == 1);
      assertThat(check.limit()).isEqualTo(floor / 10.0);
    }
  }

  @Test
  void theReachBehindTheRearAxleIsHeldAgainstTheRegulationThatIsAskedFor() {
    Loading plain = RigBuilder.aDualCab().load();
    assertThat(check(plain, StateBuilder.driving(plain).build(), RuleId.REAR_OVERHANG)).isEmpty();
    int wheelbaseMm = plain.scenario().ute().wheelbaseMm();
    int sixtyMm = wheelbaseMm * 6 / 10;
    for (RearOverhang rule : List.of(RearOverhang.SIXTY_PERCENT, RearOverhang.AUSTRALIAN)) {
      RigBuilder rig = regimes(new Regimes(60, 150, 0, rule));
      Loading loading =
          rig.items(anItem("pole").size(200, 200, 200)).put("pole", Rigs.CARRIER, 50, 0, 0).load();
      StateCheck check =
          check(loading, StateBuilder.driving(loading).build(), RuleId.REAR_OVERHANG).orElseThrow();
      int poleMm = loading.placed().get("pole").box().maxXMm() - wheelbaseMm;
      int uteMm = loading.scenario().ute().rearmostXMm() - wheelbaseMm;
      assertThat(check.value()).isEqualTo(Math.max(poleMm, uteMm));
      assertThat(check.limit()).isEqualTo(Math.min(sixtyMm, 3700));
      assertThat(check.margin()).isEqualTo(check.limit() - check.value());
    }
  }

  private static RigBuilder regimes(Regimes regimes) {
    return RigBuilder.aDualCab().settings(OtherSettings.withRegimes(regimes));
  }

  private static Optional<StateCheck> check(Loading loading, LoadState state, RuleId rule) {
    Situation situation = Situation.of(loading, Timeline.of(loading));
    for (StateRule one : RuleBook.STATE_RULES) {
      if (one.card().id() == rule) {
        return one.checks(situation, state).stream().findFirst();
      }
    }
    return Optional.empty();
  }
}
