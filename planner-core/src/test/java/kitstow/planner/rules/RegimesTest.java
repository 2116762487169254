package kitstow.planner.rules;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Regimes;
import kitstow.planner.model.Regimes.RearOverhang;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trailer;
import kitstow.planner.statics.AxleLoads;
import kitstow.planner.statics.OverallSize;
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

  @Test
  void aLegMayTakeNoMoreThanSoMuchLengthAndHeight() {
    // The ute reaches from 900 mm before the front axle to the carrier's pole, which ends at x
    // 4,150;
    // the highest is the pipe on the cab roof, from 1,850 mm up by 310 mm.
    for (int over : List.of(0, 1)) {
      Loading loading = ferry(5050 - over, 2160 - over, Optional.empty());
      LoadState on = StateBuilder.driving(loading).leg("crossing").build();
      StateCheck length = check(loading, on, RuleId.OVERALL_LENGTH).orElseThrow();
      StateCheck height = check(loading, on, RuleId.OVERALL_HEIGHT).orElseThrow();
      assertThat(length.value()).isEqualTo(5050.0);
      assertThat(length.margin()).isEqualTo(-over);
      assertThat(height.value()).isEqualTo(2160.0);
      assertThat(height.margin()).isEqualTo(-over);
      LoadState elsewhere = StateBuilder.driving(loading).build();
      assertThat(check(loading, elsewhere, RuleId.OVERALL_LENGTH)).isEmpty();
      assertThat(check(loading, elsewhere, RuleId.OVERALL_HEIGHT)).isEmpty();
    }
  }

  @Test
  void aTrailerCountsOnLegsOnWhichItIsOn() {
    Loading loading = ferry(9000, 2500, Optional.of("van"));
    LoadState towing = StateBuilder.driving(loading).leg("crossing").towing("van").build();
    int ballMm = loading.scenario().ute().ball().orElseThrow().xMm();
    assertThat(check(loading, towing, RuleId.OVERALL_LENGTH).orElseThrow().value())
        .isEqualTo(900.0 + ballMm + 5000.0);
    assertThat(check(loading, towing, RuleId.OVERALL_HEIGHT).orElseThrow().margin())
        .isEqualTo(2500.0 - 2700.0);
  }

  @Test
  void overallSizeSaysWhatReachesFarthestAndWhatIsNotKnown() {
    Loading loading = ferry(9000, 2500, Optional.empty());
    assertThat(OverallSize.alone(loading).rearmost().key()).isEqualTo("pole");
    assertThat(OverallSize.alone(loading).highest().key()).isEqualTo("pipe");
    OverallSize towing = OverallSize.with(loading, loading.scenario().trailers().get(0));
    assertThat(towing.rearmost().title()).isEqualTo("van");
    assertThat(towing.highest().key()).isEqualTo("van");
    Loading unknown =
        RigBuilder.aDualCab().trailer("van", Masses.kg(1000), Masses.kg(90), true).load();
    assertThat(OverallSize.alone(unknown).lengthMm()).isEmpty();
    assertThat(OverallSize.alone(unknown).heightMm()).isPresent();
    assertThat(OverallSize.with(unknown, unknown.scenario().trailers().get(0)).heightMm())
        .isEmpty();
  }

  private static Loading ferry(int mostLengthMm, int mostHeightMm, Optional<String> towed) {
    return RigBuilder.aDualCab()
        .ute(ute -> ute.foremostXMm(-900))
        .trailer(
            new Trailer(
                "van",
                "van",
                Masses.weighed(Masses.kg(1000)),
                Masses.weighed(Masses.kg(90)),
                /* braked= */ true,
                OptionalInt.of(5000),
                OptionalInt.of(2700)))
        .items(anItem("pole").size(300, 200, 200), anItem("pipe").size(300, 300, 310))
        .put("pole", Rigs.CARRIER, 50, 0, 0)
        .put("pipe", Rigs.PLATFORM, 300, 300, 0)
        .legs(
            new Leg(
                "crossing",
                "crossing",
                10.0,
                1.0,
                Surface.ROAD,
                towed,
                /* wet= */ false,
                List.of(),
                /* emptyRubbish= */ false,
                new Leg.Room(OptionalInt.of(mostLengthMm), OptionalInt.of(mostHeightMm))))
        .load();
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
