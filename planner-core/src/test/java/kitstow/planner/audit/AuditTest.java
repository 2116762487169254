package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.audit.Audited.finding;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.SHELF;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static kitstow.planner.testkit.StateBuilder.driving;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Need;
import kitstow.planner.model.Reach;
import kitstow.planner.model.RuleId;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class AuditTest {
  @Test
  void anEmptyRigBreaksNothing() {
    assertThat(broken(aDualCab())).isEmpty();
  }

  @Test
  void theWorstStateIsNamedAndOfEqualsTheFirst() {
    Loading loading = overloaded();
    LoadState less = bag(loading, "less", 11);
    LoadState most = bag(loading, "most", 13);
    LoadState mostAgain = bag(loading, "most-again", 13);
    assertThat(finding(RuleId.SPACE_RATING, loading, less, most, mostAgain).stateId())
        .isEqualTo("most");
    assertThat(finding(RuleId.SPACE_RATING, loading, mostAgain, most, less).stateId())
        .isEqualTo("most-again");
  }

  @Test
  void theWorstIsTheLargestOverloadNotTheLargestLoad() {
    Loading loading = overloaded();
    LoadState road = bag(loading, "road", 20);
    LoadState track = driving(loading).id("track").offRoad().massG("bag", kg(19)).build();
    AuditFinding finding = finding(RuleId.SPACE_RATING, loading, road, track);
    // 20 - 10 kg on the road, 19 - 5 kg off it.
    assertThat(finding)
        .isEqualTo(
            new AuditFinding(RuleId.SPACE_RATING, List.of(BOX), "track", kg(19), kg(5), "g"));
  }

  @Test
  void aNoteIsNotJudged() {
    Loading loading = overloaded();
    LoadState note = driving(loading).massG("bag", kg(99)).noteOnly().build();
    assertThat(broken(loading, note)).isEmpty();
  }

  @Test
  void findingsComeByRuleAndThenBySubject() {
    RigBuilder rig =
        aDualCab()
            .items(anItem("b"), anItem("a"), anItem("c").need(Need.MUST))
            .put("b", BOX, 0, 0, 1)
            .put("a", BOX, 400, 0, 1);
    assertThat(broken(rig)).containsExactly("SUPPORT a", "SUPPORT b", "MUST_TAKE c");
  }

  @Test
  void onlyBindingRulesAreJudged() {
    // All on one side, in poor company, with something before what is used many times a day.
    RigBuilder rig =
        aDualCab()
            .items(
                anItem("pot").marks(Mark.FOOD).reach(Reach.MANY_A_DAY),
                anItem("lamp").marks(Mark.ELECTRIC).massG(kg(200)))
            .put("pot", SHELF, 0, 300, 0)
            .put("lamp", SHELF, 0, 0, 0);
    assertThat(broken(rig)).isEmpty();
  }

  @Test
  void aStateOfAnotherLoadingIsRefused() {
    Loading one = aDualCab().load();
    Loading other = overloaded();
    LoadState state = driving(one).build();
    assertThatThrownBy(() -> Audit.of(other, List.of(state)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("driving");
  }

  private static Loading overloaded() {
    return aDualCab()
        .canopySpace(
            aSpace(BOX, 900, -850, 0, new SizeMm(800, 800, 800))
                .ratings(Masses.ratings(kg(10), kg(10), kg(5))))
        .items(anItem("bag"))
        .put("bag", BOX, 0, 0, 0)
        .load();
  }

  private static LoadState bag(Loading loading, String id, long bagKg) {
    return driving(loading).id(id).massG("bag", kg(bagKg)).build();
  }
}
