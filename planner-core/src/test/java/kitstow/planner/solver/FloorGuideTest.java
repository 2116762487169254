package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.packing.SiteMap;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

/** What places cost at the prices of a floor; the rig is invented. */
class FloorGuideTest {
  private static final String HEAVY = "heavy";
  private static final String LIGHT = "light";

  /** Two bins of which each holds one of two blocks, 300 and 700 mm behind the axle. */
  private static Loading loading(String inFront, String behind) {
    return RigBuilder.aBareDualCab()
        .person("driver", Masses.kg(90), "driver")
        .roadDay(10.0)
        .canopySpace(aSpace("front", 1300, -200, 0, new SizeMm(200, 400, 300)))
        .canopySpace(aSpace("rear", 1700, -200, 0, new SizeMm(200, 400, 300)))
        .items(block("heavy", 40), block("light", 10))
        .put(inFront, "front", 0, 0, 0)
        .put(behind, "rear", 0, 0, 0)
        .load();
  }

  private static ItemBuilder block(String id, long kg) {
    return anItem(id).size(200, 400, 300).turns(Turn.LWH).massG(Masses.kg(kg)).bearsG(0L);
  }

  private static double cost(FloorGuide guide, Loading loading, String key) {
    PlacedItem item = loading.placed().get(key);
    SiteMap sites = SiteMap.of(loading.rig());
    return guide.costKgMm(item, sites.indexOf(item.space().id()));
  }

  @Test
  void roomInFrontIsDearerThanItIsWorthToTheLightThingAndNotToTheHeavyOne() {
    Loading good = loading("heavy", "light");
    Loading bad = loading("light", "heavy");

    FloorGuide guide = Floor.guide(bad, 400).orElseThrow();

    assertThat(cost(guide, good, HEAVY)).isLessThan(cost(guide, bad, HEAVY));
    assertThat(cost(guide, good, LIGHT)).isLessThan(cost(guide, bad, LIGHT));
  }

  @Test
  void withoutPricesAPlaceCostsItsMassTimesItsReach() {
    Loading loading = loading("heavy", "light");

    FloorGuide guide = Floor.guide(loading, 0).orElseThrow();

    // The middles are 300 + 100 and 700 + 100 mm behind the axle.
    assertThat(cost(guide, loading, HEAVY)).isCloseTo(40.0 * 400.0, within(1.0e-6));
    assertThat(cost(guide, loading, LIGHT)).isCloseTo(10.0 * 800.0, within(1.0e-6));
  }
}
