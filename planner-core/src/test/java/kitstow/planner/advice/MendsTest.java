package kitstow.planner.advice;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Need;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trip;
import kitstow.planner.model.Zone;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Mend;
import kitstow.planner.report.Mend.Outcome;
import kitstow.planner.report.Mend.What;
import kitstow.planner.rules.Situation;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

/** Every mend told here is carried out and judged again by both judges. */
class MendsTest {
  private static final SizeMm SMALL = new SizeMm(600, 400, 400);

  @Test
  void aUnitIsMovedOutOfASpaceThatHoldsTooMuch() {
    RigBuilder rig =
        rig(20, 50).items(must("pump", 15), must("jack", 12)).put("pump", "low", 0, 0, 0);
    Mend mend = only(rig.put("jack", "low", 300, 0, 0), RuleId.SPACE_RATING);
    assertThat(mend.outcome()).isEqualTo(Outcome.MENDED);
    assertThat(whats(mend)).containsExactly(What.MOVE);
    // 27 kg in a space for 20: the lighter of the two is enough.
    assertThat(mend.before()).isCloseTo(7.0, within(1.0e-9));
    assertThat(mend.steps().get(0).key()).isEqualTo("jack");
    assertThat(mend.steps().get(0).to()).isEqualTo("high");
    assertThat(mend.steps().get(0).kg()).isEqualTo(12.0);
  }

  @Test
  void aUnitThatStandsAsItMayNotIsTurned() {
    RigBuilder rig =
        rig(50, 50)
            .items(anItem("can").size(200, 200, 300).turns(Turn.LWH).massG(9_000L))
            .put("can", "low", Turn.HWL, 0, 0, 0);
    Mend mend = only(rig, RuleId.TURN_ALLOWED);
    assertThat(mend.outcome()).isEqualTo(Outcome.MENDED);
    assertThat(whats(mend)).containsExactly(What.TURN);
  }

  @Test
  void twoUnitsChangePlacesWhereNeitherSpaceHasRoom() {
    RigBuilder rig =
        rig(20, 50)
            .items(full("heavy", 30).need(Need.NICE), full("light", 5))
            .put("heavy", "low", 0, 0, 0)
            .put("light", "high", 0, 0, 0);
    Mend mend = only(rig, RuleId.SPACE_RATING);
    assertThat(mend.outcome()).isEqualTo(Outcome.MENDED);
    assertThat(whats(mend)).containsExactly(What.SWAP);
    assertThat(mend.steps().get(0).withKey()).isEqualTo("light");
  }

  @Test
  void somethingStaysHomeOnlyWhereNoSuchChangeMends() {
    RigBuilder rig =
        rig(20, 20)
            .items(must("pump", 15), full("light", 19), should("chair", 6), should("table", 9))
            .put("pump", "low", 0, 0, 0)
            .put("chair", "low", 300, 0, 0)
            .put("table", "low", 300, 200, 0)
            .put("light", "high", 0, 0, 0);
    // 30 kg in a space for 20; the other is full. Neither chair nor table alone is enough.
    Mend two = only(rig, RuleId.SPACE_RATING);
    assertThat(two.outcome()).isEqualTo(Outcome.MENDED);
    assertThat(whats(two)).containsExactly(What.LEAVE_HOME, What.LEAVE_HOME);

    RigBuilder nearer =
        rig(22, 20)
            .items(must("pump", 15), full("light", 19), should("chair", 6), should("table", 9))
            .put("pump", "low", 0, 0, 0)
            .put("chair", "low", 300, 0, 0)
            .put("table", "low", 300, 200, 0)
            .put("light", "high", 0, 0, 0);
    Mend one = only(nearer, RuleId.SPACE_RATING);
    assertThat(whats(one)).containsExactly(What.LEAVE_HOME);
    assertThat(one.steps().get(0).key()).isEqualTo("table");
    assertThat(one.steps().get(0).to()).isEmpty();
  }

  @Test
  void asMuchStaysHomeAsItTakesWhereThreeChangesDoNot() {
    RigBuilder rig = rig(10, 20).items(full("light", 19)).put("light", "high", 0, 0, 0);
    for (int i = 0; i < 6; i++) {
      rig.items(anItem("tin-" + i).size(100, 100, 100).massG(5_000L).need(Need.SHOULD));
      rig.put("tin-" + i, "low", 100 * i, 0, 0);
    }
    // 30 kg in a space for 10: four of six have to stay home.
    Mend mend = only(rig, RuleId.SPACE_RATING);
    assertThat(mend.outcome()).isEqualTo(Outcome.BY_LEAVING_MORE);
    assertThat(whats(mend)).hasSize(4).containsOnly(What.LEAVE_HOME);
  }

  @Test
  void whereNothingHelpsItIsSaidWithWhatTakesOffMost() {
    RigBuilder rig =
        rig(20, 20)
            .items(full("heavy", 50), should("tin", 4))
            .put("heavy", "low", 0, 0, 0)
            .put("tin", "high", 0, 0, 0);
    CheckReport report = report(rig);
    Mend mend = Mends.of(report).get(0);
    assertThat(mend.outcome()).isEqualTo(Outcome.NOT_MENDED);
    assertThat(mend.after()).isEqualTo(mend.before()).isCloseTo(30.0, within(1.0e-9));
    assertThat(mend.steps()).isEmpty();
    MendCheck.carriedOut(report, mend);
  }

  @Test
  void whatMustComeAlongIsTakenAndWhatStandsInItsPlaceIsLeft() {
    RigBuilder free = rig(50, 50).items(must("kit", 5));
    Mend taken = only(free, RuleId.MUST_TAKE);
    assertThat(whats(taken)).containsExactly(What.TAKE);

    RigBuilder crowded =
        rig(50, 50)
            .items(full("kit", 5), full("chair", 6).need(Need.NICE), full("crate", 6))
            .put("chair", "low", 0, 0, 0)
            .put("crate", "high", 0, 0, 0);
    Mend mend = only(crowded, RuleId.MUST_TAKE);
    assertThat(mend.outcome()).isEqualTo(Outcome.MENDED);
    assertThat(whats(mend)).containsExactly(What.LEAVE_HOME, What.TAKE);
    assertThat(mend.steps().get(0).key()).isEqualTo("chair");
  }

  @Test
  void buriedEmergencyGearIsFreed() {
    RigBuilder rig =
        rig(50, 50)
            .items(
                anItem("straps")
                    .size(200, 200, 100)
                    .massG(4_000L)
                    .bearsG(20_000L)
                    .reach(Reach.EMERGENCY),
                anItem("bag").size(200, 200, 100).massG(4_000L))
            .put("straps", "low", 0, 0, 0)
            .put("bag", "low", 0, 0, 100);
    Mend mend = only(rig, RuleId.EMERGENCY_REACH);
    assertThat(mend.outcome()).isEqualTo(Outcome.MENDED);
    assertThat(mend.steps()).hasSize(1);
  }

  @Test
  void theRearAxleIsRelievedByTheLeastMassThatGoesForward() {
    RigBuilder base =
        rig(500, 500)
            .canopySpace(aSpace("fore", 0, -850, 0, SMALL))
            .canopySpace(aSpace("aft", 1100, -850, 0, SMALL))
            .items(must("crate", 60), must("tools", 25))
            .put("crate", "aft", 0, 0, 0)
            .put("tools", "aft", 300, 0, 0);
    double loadKg = loadKg(base, RuleId.REAR_AXLE_LIMIT);
    base.ute(ute -> ute.rearAxleG(Math.round(loadKg * 1000.0) - 3_000L));
    Mend mend = only(base, RuleId.REAR_AXLE_LIMIT);
    assertThat(whats(mend)).containsExactly(What.MOVE);
    assertThat(mend.steps().get(0).key()).isEqualTo("tools");
  }

  @Test
  void theFrontAxleIsRelievedByMoreThanItCarriesWhereThingsGoBehindTheRearOne() {
    RigBuilder base =
        rig(500, 500)
            .uteSpace(aSpace("cabin", 1400, -200, 950, SMALL).zone(Zone.CAB))
            .canopySpace(aSpace("aft", 1100, -850, 0, SMALL))
            .items(must("crate", 30), must("tools", 30), must("chain", 30))
            .put("crate", "cabin", 0, 0, 0)
            .put("tools", "cabin", 200, 0, 0)
            .put("chain", "cabin", 400, 0, 0);
    // Ahead they put 15, 13 and 11 kg on the front axle; behind they take some off it.
    double loadKg = loadKg(base, RuleId.FRONT_AXLE_LIMIT);
    base.ute(ute -> ute.frontAxleG(Math.round(loadKg * 1000.0) - 42_000L));
    Mend mend = only(base, RuleId.FRONT_AXLE_LIMIT);
    assertThat(mend.outcome()).isEqualTo(Outcome.MENDED);
    assertThat(whats(mend)).containsExactly(What.MOVE, What.MOVE, What.MOVE);
  }

  private static double loadKg(RigBuilder rig, RuleId limit) {
    return report(rig).tightest().stream()
        .filter(reading -> reading.rule() == limit)
        .findFirst()
        .orElseThrow()
        .margin()
        .loadKg();
  }

  @Test
  void aPlanThatBreaksNothingHasNoMends() {
    assertThat(Mends.of(report(rig(50, 50)))).isEmpty();
  }

  private static RigBuilder rig(int lowKg, int highKg) {
    return RigBuilder.aBareDualCab()
        .person("driver", Masses.kg(90), "driver")
        .canopySpace(aSpace("low", 0, 200, 0, SMALL).ratings(rating(lowKg)))
        .canopySpace(aSpace("high", 700, 200, 0, SMALL).ratings(rating(highKg)));
  }

  private static Ratings rating(int kg) {
    return new Ratings(kg * 1000L, kg * 1000L, kg * 1000L, /* derived= */ false);
  }

  private static ItemBuilder must(String id, int kg) {
    return anItem(id).size(200, 200, 200).massG(kg * 1000L).need(Need.MUST);
  }

  private static ItemBuilder should(String id, int kg) {
    return must(id, kg).need(Need.SHOULD);
  }

  /** Takes up a whole space. */
  private static ItemBuilder full(String id, int kg) {
    return must(id, kg).size(600, 400, 400).turns(Turn.LWH);
  }

  private static CheckReport report(RigBuilder rig) {
    Leg leg =
        new Leg(
            "leg",
            "leg",
            /* distanceKm= */ 10.0,
            /* days= */ 0.1,
            Surface.ROAD,
            Optional.empty(),
            /* wet= */ false,
            List.of(),
            /* emptyRubbish= */ false);
    Trip trip = rig.scenario().trip();
    Scenario driven =
        rig.scenario()
            .withTrip(
                List.of(), new Trip(trip.people(), List.of(leg), trip.consumption(), List.of()));
    return CheckReport.of(Situation.of(Loading.of(driven, rig.plan())));
  }

  private static Mend only(RigBuilder rig, RuleId rule) {
    CheckReport report = report(rig);
    assertThat(report.brokenFindings()).extracting(finding -> finding.rule()).containsExactly(rule);
    Mend mend = Mends.of(report).get(0);
    MendCheck.carriedOut(report, mend);
    return mend;
  }

  private static List<What> whats(Mend mend) {
    return mend.steps().stream().map(Mend.Step::what).toList();
  }
}
