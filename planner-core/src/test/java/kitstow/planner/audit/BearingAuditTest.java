package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.audit.Audited.finding;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.StateBuilder.driving;
import static kitstow.planner.testkit.StateBuilder.parked;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class BearingAuditTest {
  @Test
  void anItemMayCarryWhatItBears() {
    assertThat(broken(stack(kg(10), kg(10)))).isEmpty();
    assertThat(finding(stack(kg(10), kg(10) + 1), RuleId.BEARING))
        .isEqualTo(
            new AuditFinding(RuleId.BEARING, List.of("lower"), "driving", kg(10) + 1, kg(10), "g"));
  }

  @Test
  void loadComesDownThroughWhatStandsBetween() {
    RigBuilder rig =
        stack(kg(30), kg(10)).items(anItem("top").massG(kg(20))).put("top", BOX, 0, 0, 400);
    assertThat(broken(rig)).isEmpty();
    Loading loading = rig.load();
    assertThat(broken(loading, driving(loading).massG("top", kg(20) + 1).build()))
        .containsExactly("BEARING lower");
  }

  @Test
  void loadIsSharedByAreaOfContact() {
    // The plank of 400 mm rests on 100 mm and on 300 mm: a quarter and three quarters of 40 kg.
    assertThat(broken(plank(kg(10), kg(30)))).isEmpty();
    assertThat(broken(plank(kg(10) - 1, kg(30)))).containsExactly("BEARING left");
    assertThat(broken(plank(kg(10), kg(30) - 1))).containsExactly("BEARING right");
  }

  @Test
  void theFloorTakesItsPart() {
    // The step is sunk into the floor: the plank rests on all of the floor and on the step, 2 to 1.
    RigBuilder rig =
        aDualCab()
            .items(
                anItem("step").size(200, 300, 100).bearsG(kg(10)),
                anItem("plank").size(400, 300, 100).massG(kg(30)))
            .put("step", BOX, 0, 0, -100)
            .put("plank", BOX, 0, 0, 0);
    assertThat(broken(rig)).containsExactly("INSIDE_SPACE step box", "SUPPORT step");
    Loading loading = rig.load();
    assertThat(broken(loading, driving(loading).massG("plank", kg(30) + 3).build()))
        .containsExactly("INSIDE_SPACE step box", "SUPPORT step", "BEARING step");
  }

  @Test
  void theWorstStateIsNamedAndCampCounts() {
    Loading loading = stack(kg(10), kg(5)).load();
    LoadState first = driving(loading).id("first").massG("upper", kg(11)).build();
    LoadState worst = parked(loading).id("worst").massG("upper", kg(12)).build();
    LoadState again = driving(loading).id("again").massG("upper", kg(12)).build();
    AuditFinding finding = finding(RuleId.BEARING, loading, first, worst, again);
    assertThat(finding.stateId()).isEqualTo("worst");
    assertThat(finding.value()).isEqualTo(12_000.0);
  }

  private static RigBuilder stack(long bearsG, long upperG) {
    return aDualCab()
        .items(anItem("lower").bearsG(bearsG), anItem("upper").massG(upperG))
        .put("lower", BOX, 0, 0, 0)
        .put("upper", BOX, 0, 0, 200);
  }

  private static RigBuilder plank(long leftBearsG, long rightBearsG) {
    return aDualCab()
        .items(
            anItem("left").size(100, 300, 200).bearsG(leftBearsG),
            anItem("right").size(300, 300, 200).bearsG(rightBearsG),
            anItem("plank").size(400, 300, 50).massG(kg(40)))
        .put("left", BOX, 0, 0, 0)
        .put("right", BOX, 100, 0, 0)
        .put("plank", BOX, 0, 0, 200);
  }
}
