package kitstow.planner.advice;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RuleId;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.SpaceRoom;
import kitstow.planner.rules.Situation;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class RoomLeftTest {
  @Test
  void gapVolumeAndMassOfASpaceAreTold() {
    SpaceRoom room = room(rig(new Ratings(20_000L, 20_000L, 12_000L, true)));
    BoxMm gap = room.largestGap().orElseThrow();
    // 600 x 1200 x 400 with 600 x 500 x 400 in it.
    assertThat(new SizeMm(gap.lengthMm(), gap.widthMm(), gap.heightMm()))
        .isEqualTo(new SizeMm(600, 700, 400));
    assertThat(room.freeMl()).isEqualTo(168_000L);
    assertThat(room.left().orElseThrow().rule()).isEqualTo(RuleId.SPACE_RATING);
    assertThat(room.left().orElseThrow().kg()).isCloseTo(11.0, within(1.0e-6));
  }

  @Test
  void anAxleIsReachedByTheLeverOfTheGapAndTheTotalByTheMassAlone() {
    int told = 0;
    for (String name : ShippedFiles.plannedNames()) {
      CheckReport report = ShippedFiles.checked(name);
      double wheelbaseMm = report.situation().loading().scenario().ute().wheelbaseMm();
      for (SpaceRoom room : RoomLeft.of(report.situation())) {
        SpaceRoom.Left left = room.left().orElseThrow();
        BoxMm gap = room.largestGap().orElse(room.space().box());
        double marginKg = marginKg(report, left);
        if (left.rule() == RuleId.REAR_AXLE_LIMIT) {
          // A mass at x puts x / wheelbase of itself on the rear axle.
          double share = (gap.minXMm() + gap.maxXMm()) / 2.0 / wheelbaseMm;
          assertThat(left.kg()).isCloseTo(marginKg / share, within(0.01));
          told++;
        } else if (left.rule() == RuleId.GVM_LIMIT) {
          assertThat(left.kg()).isCloseTo(marginKg, within(1.0e-6));
          told++;
        }
      }
    }
    assertThat(told).isPositive();
  }

  private static double marginKg(CheckReport report, SpaceRoom.Left left) {
    return report.tightest().stream()
        .filter(reading -> reading.rule() == left.rule())
        .findFirst()
        .map(reading -> reading.margin().marginKg())
        .orElse(Double.NaN);
  }

  @Test
  void theMassToldReachesTheLimitAndNoMoreGoesIn() {
    RigBuilder rig = rig(new Ratings(900_000L, 900_000L, 900_000L, false));
    SpaceRoom room = room(rig);
    SpaceRoom.Left left = room.left().orElseThrow();
    long grams = (long) Math.floor(left.kg() * 1000.0);
    for (long more : List.of(-1L, 2L)) {
      BoxMm gap = room.largestGap().orElseThrow();
      RigBuilder filled =
          rig(new Ratings(900_000L, 900_000L, 900_000L, false))
              .items(
                  anItem("more")
                      .size(gap.lengthMm(), gap.widthMm(), gap.heightMm())
                      .turns(Turn.LWH)
                      .massG(grams + more))
              .put("more", "shelf", 0, 500, 0);
      boolean over =
          CheckReport.of(Situation.of(filled.load())).tightest().stream()
              .filter(reading -> reading.rule() == left.rule())
              .anyMatch(reading -> reading.margin().marginKg() < 0.0);
      assertThat(over).isEqualTo(more > 0L);
    }
  }

  private static RigBuilder rig(Ratings ratings) {
    return RigBuilder.aDualCab()
        .person("driver", Masses.kg(90), "driver")
        .canopySpace(aSpace("shelf", 0, -600, 0, new SizeMm(600, 1200, 400)).ratings(ratings))
        .items(anItem("box").size(600, 500, 400).turns(Turn.LWH).massG(9_000L))
        .put("box", "shelf", 0, 0, 0);
  }

  private static SpaceRoom room(RigBuilder rig) {
    return RoomLeft.of(Situation.of(rig.load())).stream()
        .filter(one -> one.space().id().equals("shelf"))
        .findFirst()
        .orElseThrow();
  }
}
