package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.Rigs.FRONT_BAY;
import static org.assertj.core.api.Assertions.assertThat;

import kitstow.planner.model.Need;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class NeedAuditTest {
  @Test
  void everyUnitOfAMustComesAlong() {
    RigBuilder rig = aDualCab().items(anItem("water").need(Need.MUST).quantity(2));
    assertThat(broken(rig.put("water#1", BOX, 0, 0, 0))).containsExactly("MUST_TAKE water#2");
    assertThat(broken(rig.put("water#2", BOX, 400, 0, 0))).isEmpty();
  }

  @Test
  void whatIsOnlyWantedMayStayHome() {
    assertThat(broken(aDualCab().items(anItem("chair").need(Need.SHOULD)))).isEmpty();
  }

  @Test
  void aMustModuleIsFitted() {
    assertThat(broken(aDualCab().module(aSlide("slide"), Need.MUST, FRONT_BAY)))
        .containsExactly("MUST_TAKE slide");
    assertThat(broken(aDualCab().module(aSlide("slide"), Need.SHOULD, FRONT_BAY))).isEmpty();
    assertThat(broken(aDualCab().fitted(aSlide("slide"), FRONT_BAY))).isEmpty();
  }
}
