package kitstow.planner.audit;

import static kitstow.planner.audit.Audited.broken;
import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.PLATFORM;
import static kitstow.planner.testkit.Rigs.RACK;
import static kitstow.planner.testkit.StateBuilder.driving;
import static kitstow.planner.testkit.StateBuilder.parked;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

class RoofAuditTest {
  @Test
  void cabRoofMayReachItsMovingLimitOnTheRoad() {
    assertThat(broken(onPlatform(kg(80)))).isEmpty();
    assertThat(broken(onPlatform(kg(80) + 1))).containsExactly("CAB_ROOF_LIMIT cab-roof");
  }

  @Test
  void offTheRoadTheMovingLimitIsLowerAndRoundedDown() {
    // 80 kg * 667 / 1000 = 53360 g.
    assertThat(offRoad(onPlatform(53_360))).isEmpty();
    assertThat(offRoad(onPlatform(53_361))).containsExactly("CAB_ROOF_LIMIT cab-roof");
    // 80001 g * 667 / 1000 = 53360.667 g.
    RigBuilder odd = onPlatform(53_361).ute(ute -> ute.cabRoofG(kg(80) + 1, kg(200)));
    assertThat(offRoad(odd)).containsExactly("CAB_ROOF_LIMIT cab-roof");
  }

  @Test
  void sleepersCountAtCampOnly() {
    RigBuilder rig = onPlatform(kg(80)).sleeper("ann", kg(120), "driver", Zone.CAB_ROOF);
    Loading full = rig.load();
    assertThat(broken(full, parked(full).build(), driving(full).build())).isEmpty();
    assertThat(broken(full, parked(full).massG("ann", kg(120) + 1).build()))
        .containsExactly("CAB_ROOF_LIMIT cab-roof");
  }

  @Test
  void aRoofWithoutLimitsMayCarryNothing() {
    assertThat(broken(onPlatform(1).ute(ute -> ute.withoutCabRoofLimits())))
        .containsExactly("CAB_ROOF_LIMIT cab-roof");
    assertThat(broken(aDualCab().ute(ute -> ute.withoutCabRoofLimits()))).isEmpty();
  }

  @Test
  void anAccessoryCountsOnItsRoof() {
    RigBuilder rig =
        onPlatform(kg(80))
            .accessory(
                new Accessory(
                    "lights",
                    "Lights",
                    "lights",
                    "test",
                    Masses.weighed(1),
                    BoxMm.point(900, 0, 1900),
                    Optional.of(Zone.CAB_ROOF)));
    assertThat(broken(rig)).containsExactly("CAB_ROOF_LIMIT cab-roof");
  }

  @Test
  void theCanopyRoofHasALedgerOfItsOwn() {
    assertThat(broken(onRack(kg(40)))).isEmpty();
    assertThat(broken(onRack(kg(40) + 1))).containsExactly("CANOPY_ROOF_LIMIT canopy-roof");
    Loading camp = onRack(kg(40)).sleeper("ann", kg(60), "driver", Zone.CANOPY_ROOF).load();
    assertThat(broken(camp, parked(camp).build())).isEmpty();
    assertThat(broken(camp, parked(camp).massG("ann", kg(60) + 1).build()))
        .containsExactly("CANOPY_ROOF_LIMIT canopy-roof");
  }

  /** Halfway between two bars. */
  private static RigBuilder onPlatform(long massG) {
    return aDualCab()
        .items(anItem("bag").massG(massG).marks(Mark.BULKY))
        .put("bag", PLATFORM, 100, 0, 0);
  }

  private static RigBuilder onRack(long massG) {
    return aDualCab()
        .canopyRoofG(kg(40), kg(100))
        .items(anItem("kayak").size(700, 300, 200).massG(massG).marks(Mark.BULKY))
        .put("kayak", RACK, 100, 0, 0);
  }

  private static List<String> offRoad(RigBuilder rig) {
    Loading loading = rig.load();
    return broken(loading, driving(loading).offRoad().build());
  }
}
