package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import kitstow.planner.LoadPlanner;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Need;
import kitstow.planner.model.Pin;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.report.CheckReport;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A wish that changes moves the plan. Two spaces stand one behind the other, the rear axle line
 * between them at x 2900: of two cases and two water tanks only two go into the front one, and the
 * heavy ones do.
 */
class OppositeWishesTest {
  private static final long STEPS = 300;

  private long waterG;
  private long caseG;
  private long shelfG;
  private int doorToMm;
  private Optional<Pin> pin;

  @BeforeEach
  void wishes() {
    waterG = Masses.kg(12);
    caseG = Masses.kg(30);
    shelfG = Masses.kg(400);
    doorToMm = 1700;
    pin = Optional.empty();
  }

  /** Every case or tank fills half of the floor of a space, and nothing is stacked. */
  private CheckReport planned() {
    ItemBuilder steel = anItem("steel-case").size(790, 390, 500).massG(caseG).bearsG(0L);
    pin.ifPresent(steel::pin);
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .ute(ute -> ute.wheelbaseMm(2900).gvmG(Masses.kg(4000)).rearAxleG(Masses.kg(3000)))
            .door("left-door", Facing.LEFT, 100, doorToMm)
            .canopySpace(
                aSpace(Rigs.SHELF, 100, -850, 50, new SizeMm(800, 800, 700))
                    .access(AccessAxis.LEFT, "left-door")
                    .ratings(Masses.always(shelfG)))
            .canopySpace(aSpace(Rigs.BOX, 900, -850, 50, new SizeMm(800, 800, 700)))
            .person("driver", Masses.kg(90), "driver")
            .roadDay(100.0)
            .items(
                steel.need(Need.MUST),
                anItem("wood-case").size(790, 390, 500).massG(caseG).bearsG(0L).need(Need.MUST),
                anItem("water-a").size(790, 390, 500).massG(waterG).bearsG(0L).need(Need.SHOULD),
                anItem("water-b").size(790, 390, 500).massG(waterG).bearsG(0L).need(Need.SHOULD));
    CheckReport report =
        LoadPlanner.plan(
            new PlanSearch.Request(rig.scenario(), 1L, STEPS, 0.0, 1), best -> {}, () -> false);
    assertThat(report.brokenFindings()).isEmpty();
    return report;
  }

  private static String spaceOf(CheckReport report, String key) {
    Loading loading = report.situation().loading();
    return Optional.ofNullable(loading.placed().get(key))
        .map(PlacedItem::space)
        .map(space -> space.id())
        .orElse("home");
  }

  @Test
  void whatIsHeavierRidesForward() {
    CheckReport before = planned();
    assertThat(spaceOf(before, "steel-case")).isEqualTo(Rigs.SHELF);
    assertThat(spaceOf(before, "wood-case")).isEqualTo(Rigs.SHELF);

    waterG = Masses.kg(45);
    CheckReport after = planned();
    assertThat(spaceOf(after, "water-a")).isEqualTo(Rigs.SHELF);
    assertThat(spaceOf(after, "water-b")).isEqualTo(Rigs.SHELF);
    assertThat(spaceOf(after, "steel-case")).isEqualTo(Rigs.BOX);
  }

  @Test
  void aRatingThatIsCutSendsTheHeavyBack() {
    shelfG = Masses.kg(45);
    CheckReport after = planned();
    // 12 + 30 kg is the most that two of them may weigh in front.
    assertThat(frontG(after)).isEqualTo(Masses.kg(42));

    shelfG = Masses.kg(25);
    assertThat(frontG(planned())).isEqualTo(Masses.kg(24));
  }

  private static long frontG(CheckReport report) {
    return report.situation().loading().in(Rigs.SHELF).stream()
        .mapToLong(item -> item.item().mass().massG())
        .sum();
  }

  @Test
  void aDoorTooNarrowForTheirEndsEmptiesTheSpaceBehindIt() {
    assertThat(planned().situation().loading().in(Rigs.SHELF)).hasSize(2);

    // Turned end on they need 390 mm and 10 mm of clearance.
    doorToMm = 100 + 399;
    CheckReport after = planned();
    assertThat(after.situation().loading().in(Rigs.SHELF)).isEmpty();
    assertThat(spaceOf(after, "steel-case")).isEqualTo(Rigs.BOX);
    assertThat(spaceOf(after, "wood-case")).isEqualTo(Rigs.BOX);
    assertThat(after.situation().loading().home()).containsExactlyInAnyOrder("water-a", "water-b");

    doorToMm = 100 + 400;
    assertThat(planned().situation().loading().in(Rigs.SHELF)).hasSize(2);
  }

  @Test
  void aPinHoldsWhatWouldRideForward() {
    pin = Optional.of(new Pin(Rigs.BOX, Optional.empty(), Optional.empty()));
    CheckReport after = planned();

    assertThat(spaceOf(after, "steel-case")).isEqualTo(Rigs.BOX);
    assertThat(spaceOf(after, "wood-case")).isEqualTo(Rigs.SHELF);
    assertThat(frontG(after)).isEqualTo(Masses.kg(42));
  }
}
