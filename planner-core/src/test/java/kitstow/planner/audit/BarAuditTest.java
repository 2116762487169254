package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.audit.Audited.finding;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.always;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.Masses.ratings;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.PLATFORM;
import static kitstow.planner.testkit.Rigs.RACK;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static kitstow.planner.testkit.StateBuilder.driving;
import static kitstow.planner.testkit.StateBuilder.parked;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Mark;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.StateBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarAuditTest {
  @Test
  void twoBarsShareByTheLeverRule() {
    // Bars at 100 and 800, centre at 450: half each.
    assertThat(broken(onRack(100, 700, 2 * kg(50)))).isEmpty();
    assertThat(broken(onRack(100, 700, 2 * (kg(50) + 1))))
        .containsExactly("BAR_LIMIT rack:front", "BAR_LIMIT rack:middle");
    // Centre at 275, a quarter of the way: three quarters on the front bar.
    assertThat(finding(onRack(-300, 1150, kg(68)), RuleId.BAR_LIMIT))
        .isEqualTo(
            new AuditFinding(
                RuleId.BAR_LIMIT, List.of("rack:front"), "driving", kg(51), kg(50), "g"));
  }

  @Test
  void halfAGramIsRounding() {
    assertThat(broken(onRack(100, 700, 2 * kg(50) + 1))).isEmpty();
  }

  @Test
  void aBarRightUnderTheCentreCarriesAll() {
    assertThat(broken(onRack(50, 1500, kg(50)))).isEmpty();
    assertThat(broken(onRack(50, 1500, kg(50) + 1))).containsExactly("BAR_LIMIT rack:middle");
  }

  @Test
  void aSingleBarCarriesAll() {
    assertThat(broken(onRack(0, 200, kg(50) + 1)))
        .containsExactly("BAR_LIMIT rack:front", "TWO_BARS long");
  }

  @Test
  void barsThatAreNotBeneathCarryNothing() {
    // From 850 to 1500: only the rear bar is beneath.
    assertThat(broken(onRack(850, 650, kg(50) + 1)))
        .containsExactly("BAR_LIMIT rack:rear", "TWO_BARS long");
  }

  @Test
  void underAFloorAllBarsCarry() {
    // Centre at 300, between the bars at 100 and 500, none of which is beneath.
    assertThat(broken(onPlatform(150, 300, 2 * kg(50)))).isEmpty();
    assertThat(broken(onPlatform(150, 300, 2 * (kg(50) + 1))))
        .containsExactly("BAR_LIMIT platform:front", "BAR_LIMIT platform:middle");
  }

  @Test
  void theLastBarCarriesWhatIsBeyondIt() {
    assertThat(broken(onPlatform(0, 150, kg(50) + 1)))
        .containsExactly("BAR_LIMIT platform:front", "TWO_BARS bag");
    assertThat(broken(onPlatform(850, 150, kg(50) + 1)))
        .containsExactly("BAR_LIMIT platform:rear", "TWO_BARS bag");
  }

  @Test
  void whatIsStackedOnAPlatformCountsByItsOwnCentre() {
    RigBuilder rig =
        aDualCab()
            .ute(ute -> ute.cabRoofG(kg(200), kg(200)))
            .items(
                anItem("lower").size(400, 300, 100).massG(kg(60)).marks(Mark.BULKY),
                anItem("upper").size(400, 300, 100).massG(kg(40) + 2).marks(Mark.BULKY))
            .put("lower", PLATFORM, 100, 0, 0)
            .put("upper", PLATFORM, 100, 0, 100);
    assertThat(broken(rig))
        .containsExactly("BAR_LIMIT platform:front", "BAR_LIMIT platform:middle");
  }

  @ParameterizedTest
  @CsvSource({"parked, 60", "road, 50", "offRoad, 40"})
  void theStateChoosesTheRating(String what, long limitKg) {
    RigBuilder rig =
        aDualCab()
            .canopySpace(
                aSpace(RACK, 100, -600, 900, new SizeMm(1600, 1200, 400))
                    .zone(Zone.CANOPY_ROOF)
                    .environment(Environment.OPEN_AIR)
                    .bar("front", 100, ratings(kg(60), kg(50), kg(40)))
                    .bar("rear", 1500, always(kg(500))))
            .items(anItem("long").size(1400, 300, 200))
            .put("long", RACK, 100, 0, 0);
    Loading loading = rig.load();
    StateBuilder state =
        switch (what) {
          case "parked" -> parked(loading);
          case "road" -> driving(loading);
          default -> driving(loading).offRoad();
        };
    assertThat(broken(loading, state.massG("long", 2 * kg(limitKg)).build())).isEmpty();
    assertThat(broken(loading, state.massG("long", 2 * (kg(limitKg) + 1)).build()))
        .contains("BAR_LIMIT rack:front");
  }

  private static RigBuilder onRack(int fromMm, int lengthMm, long massG) {
    return aDualCab()
        .items(anItem("long").size(lengthMm, 300, 200).massG(massG).marks(Mark.BULKY))
        .put("long", RACK, fromMm, 0, 0);
  }

  private static RigBuilder onPlatform(int fromMm, int lengthMm, long massG) {
    return aDualCab()
        .ute(ute -> ute.cabRoofG(kg(200), kg(200)))
        .items(anItem("bag").size(lengthMm, 300, 200).massG(massG).marks(Mark.BULKY))
        .put("bag", PLATFORM, fromMm, 0, 0);
  }
}
