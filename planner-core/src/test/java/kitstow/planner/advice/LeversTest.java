package kitstow.planner.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kitstow.planner.LoadPlanner;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Need;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.report.Lever;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.Mend;
import kitstow.planner.report.SpaceRoom;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What levers promise is held against both judges on the shipped plans; figures invented. */
class LeversTest {
  @ParameterizedTest
  @ValueSource(strings = {"remote-fortnight", "dual-cab-fortnight", "work-day", "counter-1500"})
  void aLeverDoesWhatItSays(String name) {
    Scenario scenario = ShippedFiles.scenario(name);
    CheckReport before = ShippedFiles.checked(name);
    LimitReading tightest = before.tightest().get(0);
    List<Lever> levers = LoadPlanner.levers(before);
    assertThat(levers).isNotEmpty();
    assertThat(levers).isSortedAccordingTo(Comparator.comparingDouble(Lever::gainKg).reversed());
    for (Lever lever : levers) {
      if (lever.change() instanceof Lever.Repacked repacked) {
        CheckReport after = LoadPlanner.check(scenario, repacked.plan());
        assertThat(marginKg(after, tightest)).isCloseTo(lever.marginKg(), within(1.0e-6));
        assertThat(marginKg(after, tightest) - marginKg(before, tightest))
            .isCloseTo(lever.gainKg(), within(1.0e-6));
        assertThat(momentNm(after) - momentNm(before))
            .isCloseTo(lever.momentChangeNm(), within(1.0e-6));
        assertThat(brokenKeys(before)).containsAll(brokenKeys(after));
      }
    }
  }

  @Test
  void aDrainedTankTakesItsWaterOffTheTotal() {
    CheckReport report = ShippedFiles.checked("remote-fortnight");
    assertThat(report.tightest().get(0).rule().name()).isEqualTo("GVM_LIMIT");
    List<Lever> drains =
        LoadPlanner.levers(report).stream()
            .filter(lever -> lever.change() instanceof Lever.Drained)
            .toList();
    assertThat(drains).isNotEmpty();
    for (Lever lever : drains) {
      Lever.Drained drained = (Lever.Drained) lever.change();
      // Water: a kilogram a litre. The total is tightest at the start, so all of it counts.
      assertThat(drained.kg()).isCloseTo(drained.ml() / 1000.0, within(1.0e-9));
      assertThat(lever.gainKg()).isCloseTo(drained.kg(), within(1.0e-6));
    }
  }

  @Test
  void whatMustComeIsNeverLeft() {
    CheckReport report = ShippedFiles.checked("dual-cab-fortnight");
    List<Need> left = new ArrayList<>();
    for (Lever lever : LoadPlanner.levers(report)) {
      if (lever.change() instanceof Lever.Repacked repacked
          && repacked.step().what() == Mend.What.LEAVE_HOME) {
        String key = repacked.step().key();
        left.add(report.situation().loading().placed().get(key).item().need());
      }
    }
    assertThat(left).isNotEmpty().doesNotContain(Need.MUST);
  }

  /** Ten kilograms on the tightest limit, here the total: all of it, whatever the space. */
  @Test
  void tenKilogramsMoreAreTenOnTheTotalAndActWhereTheyStand() {
    CheckReport report = ShippedFiles.checked("remote-fortnight");
    double rearAxleMm = report.situation().loading().scenario().ute().wheelbaseMm();
    int behind = 0;
    for (SpaceRoom room : LoadPlanner.roomLeft(report)) {
      assertThat(room.tenMore().tightestKg()).isCloseTo(10.0, within(1.0e-6));
      BoxMm gap = room.largestGap().orElse(room.space().box());
      double from = gap.minXMm() - rearAxleMm;
      double to = gap.maxXMm() - rearAxleMm;
      // A load spread from a to b behind a support: W (a + b) / 2; across it: W b^2 / (2 l).
      double armMm =
          from >= 0.0 ? (from + to) / 2.0 : Math.pow(Math.max(0.0, to), 2) / (2.0 * (to - from));
      assertThat(room.tenMore().momentNm())
          .as(room.space().id())
          .isCloseTo(10.0 * 9.80665 * armMm / 1000.0, within(0.05));
      behind += armMm > 0.0 ? 1 : 0;
    }
    assertThat(behind).isGreaterThan(3);
  }

  private static double marginKg(CheckReport report, LimitReading limit) {
    return report.tightest().stream()
        .filter(reading -> reading.key().equals(limit.key()))
        .findFirst()
        .orElseThrow()
        .margin()
        .marginKg();
  }

  private static double momentNm(CheckReport report) {
    return report.worstMoment().orElseThrow().moment().newtonMetres();
  }

  private static Set<String> brokenKeys(CheckReport report) {
    Set<String> keys = new HashSet<>();
    for (Finding finding : report.brokenFindings()) {
      keys.add(finding.key());
    }
    return keys;
  }
}
