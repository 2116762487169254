package kitstow.planner.statics;

import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.ModuleBuilder.aDrawer;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Zone;
import kitstow.planner.report.MassTrust;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.ModuleBuilder;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import kitstow.planner.testkit.StateBuilder;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** How wide the band of a margin is: what is off together adds up, what is known adds nothing. */
class MarginTest {
  private static final Offset<Double> EXACT = within(1e-9);

  private static Margin margin(Loading loading, LoadState state, RuleId rule) {
    return RuleBook.LIMITS.stream()
        .filter(limit -> limit.card().id() == rule)
        .flatMap(limit -> limit.lines(loading, state).stream())
        .map(line -> Margin.of(loading, state, line))
        .findFirst()
        .orElseThrow();
  }

  private static Margin driving(RigBuilder rig, RuleId rule) {
    Loading loading = rig.load();
    return margin(loading, StateBuilder.driving(loading).build(), rule);
  }

  private static RigBuilder rig(String... weighedWith) {
    return RigBuilder.aBareDualCab()
        .ute(ute -> ute.weighed(3_000L, weighedWith))
        .bodyToleranceG(4_000L, 12_000L);
  }

  @Test
  void axlesWeighedWithTrayAndCanopyOnAreOffByTheWeighingAlone() {
    RigBuilder weighed = rig("tray", "canopy");
    assertThat(driving(weighed, RuleId.REAR_AXLE_LIMIT).rssKg()).isEqualTo(3.0, EXACT);
    assertThat(driving(weighed, RuleId.FRONT_AXLE_LIMIT).rssKg()).isEqualTo(3.0, EXACT);
    assertThat(driving(weighed, RuleId.GVM_LIMIT).rssKg()).isEqualTo(Math.sqrt(18.0), EXACT);
    assertThat(driving(weighed, RuleId.GVM_LIMIT).worstKg()).isEqualTo(6.0, EXACT);
  }

  @Test
  void whatWasPutOnAfterTheWeighingAddsItsOwnTolerance() {
    assertThat(driving(rig(), RuleId.GVM_LIMIT).rssKg())
        .isEqualTo(Math.sqrt(9.0 + 9.0 + 16.0 + 144.0), EXACT);
    assertThat(driving(rig("tray"), RuleId.GVM_LIMIT).rssKg())
        .isEqualTo(Math.sqrt(9.0 + 9.0 + 144.0), EXACT);
  }

  @Test
  void aCanopyThatWasOnTheScaleIsAsUncertainAsEverOnTheTrayAlone() {
    RigBuilder weighed = rig("tray", "canopy").trayRating(Masses.always(kg(900)));
    assertThat(driving(weighed, RuleId.TRAY_RATING).rssKg()).isEqualTo(12.0, EXACT);
  }

  @Test
  void aRackThatWasOnTheScaleIsAsUncertainAsEverOnItsRoof() {
    RigBuilder weighed =
        rig("rack")
            .accessory(
                new Accessory(
                    "rack",
                    "Rack",
                    "rack",
                    "test",
                    Masses.weighed(kg(30), 2_000L),
                    BoxMm.point(900, 0, 1900),
                    Optional.of(Zone.CAB_ROOF)));
    assertThat(driving(weighed, RuleId.CAB_ROOF_LIMIT).rssKg()).isEqualTo(2.0, EXACT);
  }

  @Test
  void whatWasOnTheScaleIsNotWorthWeighing() {
    Loading loading = rig("tray", "canopy").load();
    MassTrust trust = MassTrust.of(loading, StateBuilder.driving(loading).build());
    assertThat(trust.doubts())
        .filteredOn(doubt -> doubt.kg() > 0.0)
        .extracting(MassTrust.Doubt::title)
        .containsExactly("empty ute, front axle", "empty ute, rear axle");
  }

  private static RigBuilder twoDrawers(String oneEntry, String otherEntry) {
    ModuleBuilder one = aDrawer("one").entry(oneEntry).toleranceG(1_500L);
    ModuleBuilder other = aDrawer("other").entry(otherEntry).toleranceG(1_500L);
    return RigBuilder.aDualCab().fitted(one, Rigs.FRONT_BAY).fitted(other, Rigs.REAR_BAY);
  }

  /** Each drawer has a fixed and a moving part that may be off by 1.5 kg. */
  @Test
  void modulesOfOneEntryAreOffTogether() {
    assertThat(driving(twoDrawers("drawer", "drawer"), RuleId.GVM_LIMIT).rssKg())
        .isEqualTo(6.0, EXACT);
    assertThat(driving(twoDrawers("drawer", "deep-drawer"), RuleId.GVM_LIMIT).rssKg())
        .isEqualTo(Math.sqrt(9.0 + 9.0), EXACT);
  }

  private static Accessory bar(String id, String entryId) {
    return new Accessory(
        id,
        id,
        entryId,
        "test",
        Masses.weighed(kg(20), 1_000L),
        BoxMm.point(1000, 0, 1000),
        Optional.empty());
  }

  @Test
  void accessoriesOfOneEntryAreOffTogetherAndApartFromModulesOfThatName() {
    RigBuilder rig =
        RigBuilder.aDualCab()
            .accessory(bar("left", "drawer"))
            .accessory(bar("right", "drawer"))
            .fitted(aDrawer("one").entry("drawer").toleranceG(1_500L), Rigs.FRONT_BAY);
    assertThat(driving(rig, RuleId.GVM_LIMIT).rssKg()).isEqualTo(Math.sqrt(4.0 + 9.0), EXACT);
  }

  private static Trailer trailer(String id, long ballKg, long ballToleranceG) {
    return new Trailer(
        id,
        id,
        Masses.weighed(kg(1000), 20_000L),
        Masses.weighed(kg(ballKg), ballToleranceG),
        /* braked= */ true);
  }

  private static Margin towing(String id, RuleId rule) {
    Loading loading =
        RigBuilder.aDualCab()
            .trailer(trailer("light", 80, 7_000L))
            .trailer(trailer("heavy", 160, 1_000L))
            .load();
    return margin(loading, StateBuilder.driving(loading).towing(id).build(), rule);
  }

  @Test
  void theBallIsAsUncertainAsTheTrailerThatIsOn() {
    assertThat(towing("light", RuleId.BALL_LIMIT).rssKg()).isEqualTo(7.0, EXACT);
    assertThat(towing("heavy", RuleId.BALL_LIMIT).rssKg()).isEqualTo(1.0, EXACT);
  }

  @Test
  void theCombinationHoldsTheTrailerOnceWithItsOwnTolerance() {
    Margin combination = towing("light", RuleId.GCM_LIMIT);
    assertThat(combination.loadKg()).isEqualTo(1000.0 + 700.0 + 100.0 + 150.0 + 1000.0, EXACT);
    assertThat(combination.rssKg()).isEqualTo(20.0, EXACT);
    assertThat(combination.worstKg()).isEqualTo(20.0, EXACT);
  }
}
