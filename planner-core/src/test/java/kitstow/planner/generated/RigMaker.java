package kitstow.planner.generated;

import static kitstow.planner.testkit.BayBuilder.aBay;
import static kitstow.planner.testkit.ModuleBuilder.aDrawer;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Facing;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.BayBuilder;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.ModuleBuilder;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;
import kitstow.planner.testkit.SpaceBuilder;

/**
 * Spaces, bays and modules of one scenario. Canopy spaces reach from x 2100 to 2900 and from 2900
 * to 3700; with the rear axle at 3000 the latter lie across it, at 2900 none does.
 */
final class RigMaker {
  /** A bay at the front of the right side in which no module of the test kit fits. */
  static final String SMALL_BAY = "small-bay";

  /** A bay that overlaps both bays of the right side. */
  static final String MIDDLE_BAY = "middle-bay";

  private static final SizeMm CUBE = new SizeMm(800, 800, 800);

  private final Random random;
  private final int number;
  private final Theme theme;
  private final boolean straddles;
  private final boolean small;
  private final RigBuilder builder = RigBuilder.aBareDualCab();
  private final List<String> floorSpaces = new ArrayList<>();
  private boolean rack;

  RigMaker(Random random, int number) {
    this.random = random;
    this.number = number;
    this.theme = Theme.of(number);
    this.straddles = GeneratedScenarios.straddles(number);
    this.small = number < GeneratedScenarios.SMALL;
  }

  RigBuilder builder() {
    return builder;
  }

  /** Spaces with a floor that every plan has. */
  List<String> floorSpaces() {
    return floorSpaces;
  }

  /** Whether the scenario is to be a small one. */
  boolean small() {
    return small;
  }

  boolean rack() {
    return rack;
  }

  void furnish() {
    builder.ute(ute -> ute.wheelbaseMm(straddles ? 3000 : 2900));
    if (straddles || random.nextInt(3) > 0) {
      SpaceBuilder box = aSpace(Rigs.BOX, 900, -850, 0, CUBE);
      if (GeneratedScenarios.bogged(number) || random.nextInt(3) == 0) {
        box.access(AccessAxis.REAR, "rear-door");
      }
      add(box, Rigs.BOX);
    }
    if (floorSpaces.isEmpty() || random.nextInt(3) > 0) {
      add(
          aSpace(Rigs.SHELF, 100, -850, 50, new SizeMm(800, 800, 700))
              .access(AccessAxis.LEFT, "left-door"),
          Rigs.SHELF);
    }
    if (random.nextBoolean()) {
      builder.door("left-door", Facing.LEFT, 100, 270 + random.nextInt(200));
    }
    addOpenAir();
    addCab();
    if (!small || random.nextInt(3) > 0) {
      addModules();
    }
  }

  private void add(SpaceBuilder space, String id) {
    builder.canopySpace(random.nextBoolean() ? space.ratings(rating(20, 90)) : space);
    floorSpaces.add(id);
  }

  private void addOpenAir() {
    if (theme.fumes() || random.nextInt(2) == 0) {
      // Starting ahead of the canopy's rear wall it has a strip that the canopy bars.
      int fromFront = random.nextBoolean() ? 1700 : 1800;
      builder.traySpace(
          aSpace(Rigs.CARRIER, fromFront, -500, 0, new SizeMm(400, 1000, 600))
              .zone(Zone.REAR_CARRIER)
              .environment(Environment.OPEN_AIR));
    }
    if (random.nextInt(4) > 0) {
      int length = straddles ? 1600 : 800;
      builder.canopySpace(
          aSpace(Rigs.RACK, 100, -600, 900, new SizeMm(length, 1200, 400))
              .zone(Zone.CANOPY_ROOF)
              .environment(Environment.OPEN_AIR)
              .bar("front", 100, rating(6, 24))
              .bar("middle", length / 2, rating(6, 24))
              .bar("rear", length - 100, rating(6, 24))
              .projection(/* endsMm= */ straddles ? 300 : 0, /* sideMm= */ 100));
      rack = true;
    }
    if (theme.onRoofs() || random.nextInt(4) > 0) {
      builder.uteSpace(
          aSpace(Rigs.PLATFORM, 900, -600, 1850, new SizeMm(1000, 1200, 400))
              .zone(Zone.CAB_ROOF)
              .environment(Environment.OPEN_AIR)
              .bar("front", 100, bar())
              .bar("middle", 500, bar())
              .bar("rear", 900, bar())
              .platformFloor());
    }
  }

  private void addCab() {
    if (random.nextInt(3) == 0) {
      builder.uteSpace(
          aSpace("rear-seat", 1500, -500, 700, new SizeMm(400, 1000, 450))
              .zone(Zone.CAB)
              .ratings(rating(15, 60)));
      floorSpaces.add("rear-seat");
    }
  }

  /** Modules whose better bay is too small, taken, shut off by its door, or free for them. */
  private void addModules() {
    builder
        .canopyBay(bay(Rigs.FRONT_BAY, 100))
        .canopyBay(bay(Rigs.REAR_BAY, 900))
        .canopyBay(bay(MIDDLE_BAY, 350))
        .canopyBay(
            aBay(SMALL_BAY, 100, 50, 50, new SizeMm(500, 500, 800))
                .facing(Facing.RIGHT, "right-door"));
    int sort = number % 20;
    if (sort < 7) {
      builder.module(one(), Need.MUST, Rigs.REAR_BAY, SMALL_BAY);
    } else if (sort < 13) {
      builder.module(rated(drawer("drawer")), Need.MUST, Rigs.FRONT_BAY);
      builder.module(rated(slide("slide")), Need.MUST, Rigs.REAR_BAY, MIDDLE_BAY);
    } else if (sort < 19) {
      builder.door("right-door", Facing.RIGHT, 880, 1700);
      builder.module(one(), Need.MUST, Rigs.REAR_BAY, Rigs.FRONT_BAY);
    } else if (random.nextBoolean()) {
      builder.module(rated(drawer("drawer")), Need.MUST, Rigs.FRONT_BAY, Rigs.REAR_BAY);
      builder.module(rated(slide("slide")), Need.NICE, Rigs.REAR_BAY, "drawer/deck");
    } else {
      builder
          .module(one(), random.nextBoolean() ? Need.MUST : Need.NICE, Rigs.FRONT_BAY)
          .module(rated(slide("second")), Need.SHOULD, Rigs.REAR_BAY, MIDDLE_BAY);
    }
  }

  private ModuleBuilder one() {
    return rated(random.nextBoolean() ? drawer("drawer") : slide("slide"));
  }

  private ModuleBuilder slide(String id) {
    return aSlide(id).slide(700, rating(20, 60));
  }

  private ModuleBuilder drawer(String id) {
    return aDrawer(id).slide(600, rating(30, 60));
  }

  private ModuleBuilder rated(ModuleBuilder module) {
    return random.nextInt(8) > 0 ? module.rating(rating(2, 15)) : module;
  }

  private BayBuilder bay(String id, int fromFrontMm) {
    BayBuilder bay = aBay(id, fromFrontMm, 50, 50, CUBE).facing(Facing.RIGHT, "right-door");
    return random.nextBoolean() ? bay.ratings(rating(45, 90)) : bay;
  }

  private Ratings bar() {
    if (theme.roofIsStrong()) {
      return rating(24, 40);
    }
    return GeneratedScenarios.lightBars(number) ? rating(2, 8) : rating(6, 24);
  }

  private Ratings rating(int leastKg, int mostKg) {
    long staticG = Masses.kg(leastKg + random.nextInt(mostKg - leastKg + 1));
    return random.nextBoolean()
        ? Masses.always(staticG)
        : Masses.ratings(staticG, staticG * 3L / 4L, staticG * 3L / 5L);
  }

  /** Every module in the first bay that nobody took before it. */
  static Map<String, String> firstBays(Scenario scenario) {
    Map<String, String> bays = new LinkedHashMap<>();
    for (ModuleChoice choice : scenario.modules()) {
      String bay = choice.bayIds().get(0);
      if (!bays.containsValue(bay)) {
        bays.put(choice.module().id(), bay);
      }
    }
    return bays;
  }
}
