package kitstow.planner.generated;

import static kitstow.planner.testkit.ItemBuilder.anItem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Content;
import kitstow.planner.model.Growth;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Mark;
import kitstow.planner.model.Need;
import kitstow.planner.model.Pin;
import kitstow.planner.model.Reach;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.testkit.ItemBuilder;

/** Gear of one scenario: boxes of all shapes, and among them all that rules are about. */
final class GearMaker {
  private static final int LEAST_MM = 60;
  private static final int MOST_MM = 780;

  private final Random random;
  private final RigMaker rig;
  private final Theme theme;
  private final boolean mustTake;
  private final List<String> water = new ArrayList<>();
  private final List<String> food = new ArrayList<>();
  private long totalG;

  GearMaker(Random random, RigMaker rig, int number) {
    this.random = random;
    this.rig = rig;
    this.theme = Theme.of(number);
    this.mustTake = GeneratedScenarios.onlyTold(number);
  }

  /** Ids of items that hold water. */
  List<String> water() {
    return water;
  }

  /** Ids of items that hold food. */
  List<String> food() {
    return food;
  }

  /** What all gear weighs together. */
  long totalG() {
    return totalG;
  }

  /** Adds so many units that together fill so much room. */
  void make(int units, double volumeMm3) {
    double[] share = new double[units];
    double sum = 0.0;
    for (int i = 0; i < units; i++) {
      share[i] = Math.exp(0.6 * random.nextGaussian());
      sum += share[i];
    }
    int made = 0;
    while (made < units) {
      int quantity = Math.min(units - made, random.nextInt(5) == 0 ? 2 + random.nextInt(2) : 1);
      rig.builder().items(item(made, quantity, volumeMm3 * share[made] / sum));
      made += quantity;
    }
  }

  private ItemBuilder item(int index, int quantity, double volumeMm3) {
    String id = "item-" + index;
    double side = Math.cbrt(volumeMm3);
    double longer = 1.0 + random.nextDouble();
    double wider = 0.7 + 0.6 * random.nextDouble();
    int length = clamp(side * longer);
    int width = clamp(side * wider);
    int height = clamp(volumeMm3 / ((double) length * width));
    boolean longLoad = index > 0 && rig.rack() && random.nextInt(8) == 0;
    if (longLoad) {
      length = 800 + 10 * random.nextInt(80);
      width = 100 + 10 * random.nextInt(17);
      height = 100 + 10 * random.nextInt(15);
    }
    long massG = massG((double) length * width * height);
    totalG += massG * quantity;
    ItemBuilder item = anItem(id).size(length, width, height).massG(massG).quantity(quantity);
    turns(item);
    need(item, index);
    if (longLoad) {
      item.marks(Mark.BULKY);
    } else {
      company(item, index, massG);
    }
    top(item, height);
    if (!longLoad && quantity == 1 && random.nextInt(10) == 0) {
      item.pin(pin());
    }
    if (random.nextInt(25) == 0) {
      item.growth(new Growth(300L, 6_000L, 1_000L));
    }
    return item;
  }

  private static int clamp(double mm) {
    return (int) Math.max(LEAST_MM, Math.min(MOST_MM, 5.0 * Math.round(mm / 5.0)));
  }

  private long massG(double volumeMm3) {
    double densityKgPerL = 0.1 + (theme.light() ? 0.1 : 0.6) * random.nextDouble();
    long massG = Math.round(volumeMm3 * densityKgPerL / 1000.0);
    return Math.max(theme.leastG(), Math.min(theme.mostG(), massG));
  }

  private void turns(ItemBuilder item) {
    switch (random.nextInt(4)) {
      case 0 -> item.turns(Turn.LWH);
      case 1 -> item.turns(Turn.LWH, Turn.WLH);
      default -> item.turns(Turn.LWH, Turn.WLH, Turn.LHW, Turn.HLW, Turn.WHL, Turn.HWL);
    }
  }

  private void need(ItemBuilder item, int index) {
    if (mustTake && index % 2 == 0) {
      item.need(Need.MUST);
      return;
    }
    switch (random.nextInt(10)) {
      case 0, 1, 2 -> item.need(Need.MUST);
      case 3, 4, 5, 6 -> item.need(Need.SHOULD).value(30);
      default -> item.need(Need.NICE).value(10);
    }
    switch (random.nextInt(10)) {
      case 0, 4 -> item.reach(Reach.EMERGENCY);
      case 1, 2 -> item.reach(Reach.DAILY);
      case 3 -> item.reach(Reach.MANY_A_DAY);
      default -> item.reach(Reach.RARE);
    }
  }

  private void company(ItemBuilder item, int index, long massG) {
    switch (theme) {
      case GAS -> fumes(item, index, Mark.GAS, Mark.FUEL);
      case FUEL -> fumes(item, index, Mark.FUEL, Mark.GAS);
      case STRANGERS -> item.marks(index % 2 == 0 ? Mark.OIL : Mark.BEDDING);
      case DRY -> item.marks(index % 2 == 0 ? Mark.DRY : Mark.CAB);
      case HEAVY -> item.marks(index % 2 == 0 ? Mark.OIL : Mark.HEAVY_TOOL);
      case LIGHT, DELICATE -> mixed(item, "item-" + index, massG);
    }
  }

  /** They have to come, so that one rides at the back if need be; the other may not ride there. */
  private static void fumes(ItemBuilder item, int index, Mark one, Mark other) {
    switch (index % 5) {
      case 0 -> item.marks(one).need(Need.MUST);
      case 3 -> item.marks(other).need(Need.MUST);
      case 1 -> item.marks(Mark.DRY);
      case 2 -> item.marks(Mark.CAB);
      default -> item.marks();
    }
  }

  private void mixed(ItemBuilder item, String id, long massG) {
    switch (random.nextInt(18)) {
      case 0 -> {
        item.marks(Mark.WET).content(new Content(SupplyKind.WATER, massG * 9L / 10L));
        water.add(id);
      }
      case 1 -> {
        item.marks(Mark.FOOD).content(new Content(SupplyKind.FOOD, massG * 8L / 10L));
        food.add(id);
      }
      case 2 -> item.marks(Mark.GAS);
      case 3 -> item.marks(Mark.FUEL);
      case 4 -> item.marks(Mark.ELECTRIC);
      case 5 -> item.marks(Mark.FRAGILE);
      case 6 -> item.marks(Mark.HEAVY_TOOL);
      case 7 -> item.marks(Mark.BEDDING);
      case 8 -> item.marks(Mark.OIL);
      case 9 -> item.marks(Mark.FOOD, Mark.FRAGILE);
      case 10 -> item.marks(Mark.GAS);
      case 11, 12 -> item.marks(Mark.FUEL);
      case 13, 15 -> item.marks(Mark.DRY);
      case 14, 16, 17 -> item.marks(Mark.CAB);
      default -> item.marks();
    }
  }

  /** What may stand on it and beside it. */
  private void top(ItemBuilder item, int heightMm) {
    int lidMm = Math.max(40, heightMm / 3);
    if (theme == Theme.DELICATE) {
      switch (random.nextInt(3)) {
        case 0 -> item.bearsG(0L);
        case 1 -> item.bearsG(1_000L);
        default -> item.bearsG(40_000L).lid(lidMm);
      }
      return;
    }
    long[] bearsG = {0L, 3_000L, 6_000L, 10_000L, 40_000L};
    item.bearsG(bearsG[random.nextInt(bearsG.length)]);
    switch (random.nextInt(14)) {
      case 0, 4 -> item.lid(lidMm);
      case 1 -> item.air(KeepClear.Face.LENGTH_END, 40);
      case 2 -> item.air(KeepClear.Face.WIDTH_END, 30);
      case 3 -> item.air(KeepClear.Face.TOP, 50);
      default -> {}
    }
  }

  private Pin pin() {
    String space = rig.floorSpaces().get(random.nextInt(rig.floorSpaces().size()));
    return switch (random.nextInt(4)) {
      case 0 -> new Pin(space, Optional.empty(), Optional.of(Turn.LWH));
      case 3 -> new Pin(space, Optional.of(new SpacePointMm(20, 0, 0)), Optional.of(Turn.LWH));
      default -> new Pin(space, Optional.empty(), Optional.empty());
    };
  }
}
