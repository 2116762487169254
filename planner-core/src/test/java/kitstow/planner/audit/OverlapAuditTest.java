package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.finding;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.SHELF;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OverlapAuditTest {
  @ParameterizedTest
  @CsvSource({"400, 0, 0", "0, 300, 0", "0, 0, 200"})
  void itemsMayTouch(int xMm, int yMm, int zMm) {
    assertThat(overlaps(two(xMm, yMm, zMm))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"399, 0, 0", "0, 299, 0", "0, 0, 199", "399, 299, 199"})
  void oneMillimetreIsSeen(int xMm, int yMm, int zMm) {
    assertThat(overlaps(two(xMm, yMm, zMm)))
        .containsExactly(
            new AuditFinding(RuleId.NO_OVERLAP, List.of("bag#1", "bag#2"), "", 1.0, 0.0, "mm"));
  }

  @Test
  void itemsOfDifferentSpacesMayNotShareRoomEither() {
    // The box starts where the shelf ends; the first bag reaches 1 mm into the shelf.
    RigBuilder rig =
        aDualCab()
            .items(anItem("in-box"), anItem("on-shelf"))
            .put("in-box", BOX, -1, 0, 50)
            .put("on-shelf", SHELF, 400, 0, 0);
    assertThat(overlaps(rig))
        .extracting(AuditFinding::subjectIds)
        .containsExactly(List.of("in-box", "on-shelf"));
  }

  @Test
  void walkingFromTheFrontFindsWhatTryingAllPairsFinds() {
    for (long seed = 1; seed <= 100; seed++) {
      Random random = new Random(seed);
      RigBuilder rig = aDualCab();
      for (int i = 0; i < 12; i++) {
        rig.items(
                anItem("item" + i)
                    .size(
                        1 + random.nextInt(300), 1 + random.nextInt(300), 1 + random.nextInt(300)))
            .put("item" + i, BOX, random.nextInt(500), random.nextInt(500), random.nextInt(500));
      }
      List<List<String>> expected = new ArrayList<>();
      for (PlacedItem one : rig.load().placed().values()) {
        for (PlacedItem other : rig.load().placed().values()) {
          if (one.key().compareTo(other.key()) < 0 && meet(one.box(), other.box())) {
            expected.add(List.of(one.key(), other.key()));
          }
        }
      }
      assertThat(overlaps(rig))
          .as("seed %s", seed)
          .extracting(AuditFinding::subjectIds)
          .containsExactlyInAnyOrderElementsOf(expected);
    }
  }

  private static boolean meet(BoxMm one, BoxMm other) {
    return one.minXMm() < other.maxXMm()
        && other.minXMm() < one.maxXMm()
        && one.minYMm() < other.maxYMm()
        && other.minYMm() < one.maxYMm()
        && one.minZMm() < other.maxZMm()
        && other.minZMm() < one.maxZMm();
  }

  private static RigBuilder two(int xMm, int yMm, int zMm) {
    return aDualCab()
        .items(anItem("bag").quantity(2))
        .put("bag#1", BOX, 0, 0, 0)
        .put("bag#2", BOX, xMm, yMm, zMm);
  }

  private static List<AuditFinding> overlaps(RigBuilder rig) {
    List<AuditFinding> findings = new ArrayList<>(Audit.of(rig.load(), List.of()));
    findings.removeIf(finding -> finding.rule() != RuleId.NO_OVERLAP);
    return findings;
  }
}
