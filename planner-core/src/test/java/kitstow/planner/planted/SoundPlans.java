package kitstow.planner.planted;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.ModuleBuilder.aDrawer;
import static kitstow.planner.testkit.ModuleBuilder.aSlide;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Consumption;
import kitstow.planner.model.Content;
import kitstow.planner.model.Item;
import kitstow.planner.model.Leg;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Mark;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Reach;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Trip;
import kitstow.planner.rules.PlanRule;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.Situation;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.OtherSettings;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.testkit.Rigs;

/**
 * Random sound plans on three rigs with slides, roof bars and bodies across the rear axle line. All
 * invented. A plan grows item by item; a place is taken only if no binding rule is broken there.
 */
public final class SoundPlans {
  private static final int LEAST_ITEMS = 20;
  private static final int MOST_CORNERS = 150;

  private SoundPlans() {}

  /** A plan with at least twenty items, the same for the same seed. */
  public static SoundPlan of(long seed) {
    for (int attempt = 0; attempt < 20; attempt++) {
      Random random = new Random(seed * 31 + attempt);
      SoundPlan plan = pack(scenario(random, (int) (seed % 3)), modules((int) (seed % 3)), random);
      if (plan.plan().placements().size() >= LEAST_ITEMS && plan.brokenByRules().isEmpty()) {
        return plan;
      }
    }
    throw new IllegalStateException("no plan of " + LEAST_ITEMS + " items for seed " + seed);
  }

  private static java.util.Map<String, String> modules(int rig) {
    return switch (rig) {
      case 0 -> java.util.Map.of("slide", Rigs.FRONT_BAY);
      case 1 -> java.util.Map.of("drawer", Rigs.REAR_BAY, "slide", "drawer/deck");
      default -> java.util.Map.of("drawer", Rigs.FRONT_BAY, "slide", Rigs.REAR_BAY);
    };
  }

  /** The scenario alone, its modules each with one bay. */
  public static Scenario scenario(long seed) {
    return scenario(new Random(seed), (int) (seed % 3));
  }

  private static Scenario scenario(Random random, int rig) {
    RigBuilder builder =
        RigBuilder.aDualCab()
            .settings(OtherSettings.withRoofGearG(Masses.kg(20)))
            .ute(
                ute ->
                    ute.gvmG(Masses.kg(5000))
                        .frontAxleG(Masses.kg(3000))
                        .rearAxleG(Masses.kg(4000))
                        .cabRoofG(Masses.kg(300), Masses.kg(600))
                        .frontTyres(130, 4)
                        .rearTyres(130, 4))
            .canopyRoofG(Masses.kg(400), Masses.kg(800))
            .person("driver", Masses.kg(90), "driver")
            .canopySpace(
                aSpace(Rigs.BOX, 900, -850, 0, new SizeMm(800, 800, 800))
                    .ratings(Masses.always(Masses.kg(400))))
            .module(aSlide("slide"), Rigs.FRONT_BAY)
            .canopySpace(
                aSpace(Rigs.SHELF, 100, -850, 50, new SizeMm(800, 800, 700))
                    .access(kitstow.planner.model.AccessAxis.LEFT, "left-door")
                    .ratings(Masses.always(Masses.kg(400))));
    if (rig > 0) {
      builder.module(aDrawer("drawer"), Rigs.REAR_BAY);
    }
    addItems(builder, random);
    Scenario scenario = Edit.trip(builder.scenario(), trip());
    return rig == 2 ? Edit.wheelbase(scenario, 3150) : scenario;
  }

  private static void addItems(RigBuilder builder, Random random) {
    int count = 30 + random.nextInt(8);
    for (int i = 0; i < count; i++) {
      int length = 120 + 10 * random.nextInt(30);
      int width = 100 + 10 * random.nextInt(25);
      int height = 80 + 10 * random.nextInt(20);
      long mass = Math.round(length * width * height * (0.2 + 0.7 * random.nextDouble()) / 1000.0);
      long[] bears = {0L, 20_000L, 60_000L, 60_000L};
      kitstow.planner.testkit.ItemBuilder item =
          anItem("box-" + i)
              .size(length, width, height)
              .massG(mass)
              .bearsG(bears[random.nextInt(bears.length)]);
      if (random.nextBoolean()) {
        item.turns(Turn.LWH, Turn.WLH, Turn.LHW, Turn.HLW, Turn.WHL, Turn.HWL);
      }
      builder.items(item);
    }
    builder.items(
        anItem("fridge")
            .size(600, 380, 400)
            .massG(40_000L)
            .bearsG(0L)
            .lid(100)
            .air(kitstow.planner.model.KeepClear.Face.LENGTH_END, 40),
        anItem("recovery-bag").size(500, 300, 250).massG(15_000L).reach(Reach.EMERGENCY),
        anItem("gas").size(260, 260, 340).massG(9_000L).bearsG(0L).marks(Mark.GAS),
        anItem("ladder").size(1500, 400, 120).massG(18_000L),
        anItem("tent").size(1250, 260, 260).massG(26_000L).marks(Mark.BULKY),
        anItem("water-a")
            .size(350, 170, 400)
            .massG(21_000L)
            .bearsG(0L)
            .content(new Content(SupplyKind.WATER, 20_000L)),
        anItem("water-b")
            .size(350, 170, 400)
            .massG(21_000L)
            .bearsG(0L)
            .content(new Content(SupplyKind.WATER, 20_000L)));
  }

  private static Trip trip() {
    return new Trip(
        List.of(
            new kitstow.planner.model.Person(
                "driver", "driver", Masses.weighed(Masses.kg(90)), "driver", Optional.empty())),
        List.of(
            leg("out", Surface.ROAD), leg("track", Surface.OFF_ROAD), leg("back", Surface.ROAD)),
        new Consumption(12_000L, 1300, 1300, 6_000L, 0L, 0L),
        List.of(
            new SupplyOrder(
                SupplyKind.WATER,
                List.of(List.of("water-a"), List.of("water-b")),
                SupplyOrder.Decant.EARLY)));
  }

  private static Leg leg(String id, Surface surface) {
    return new Leg(
        id,
        id,
        300.0,
        1.5,
        surface,
        Optional.empty(),
        /* wet= */ false,
        List.of(new Leg.Resupply(SupplyKind.FUEL, OptionalLong.empty())),
        /* emptyRubbish= */ false);
  }

  private static SoundPlan pack(
      Scenario scenario, java.util.Map<String, String> moduleBays, Random random) {
    List<Placement> placements = new ArrayList<>();
    List<Item> order = new ArrayList<>(scenario.items());
    Collections.shuffle(order, random);
    order.sort((a, b) -> Integer.compare(rank(a), rank(b)));
    LoadPlan plan = new LoadPlan(scenario.id(), moduleBays, placements, LoadPlan.Origin.HAND);
    for (Item item : order) {
      Optional<Placement> place = placeFor(item, new SoundPlan(scenario, plan), random);
      if (place.isPresent()) {
        placements.add(place.get());
        plan = new LoadPlan(scenario.id(), moduleBays, placements, LoadPlan.Origin.HAND);
      }
    }
    return new SoundPlan(scenario, plan);
  }

  /** Awkward things first. */
  private static int rank(Item item) {
    return item.id().startsWith("box-") ? 1 : 0;
  }

  private static Optional<Placement> placeFor(Item item, SoundPlan soFar, Random random) {
    Loading loading = soFar.loading();
    List<Space> spaces = new ArrayList<>(loading.rig().spaces().values());
    Collections.shuffle(spaces, random);
    int looks = 0;
    for (Space space : spaces) {
      List<Turn> turns = new ArrayList<>(item.turns());
      Collections.sort(turns);
      Collections.shuffle(turns, random);
      for (Turn turn : turns) {
        SizeMm size = turn.applyTo(item.shapes().get(0));
        for (SpacePointMm corner : corners(loading, space, size, random)) {
          BoxMm box =
              new BoxMm(
                  space.box().minXMm() + corner.xMm(),
                  space.box().minYMm() + corner.yMm(),
                  space.box().minZMm() + corner.zMm(),
                  space.box().minXMm() + corner.xMm() + size.lengthMm(),
                  space.box().minYMm() + corner.yMm() + size.widthMm(),
                  space.box().minZMm() + corner.zMm() + size.heightMm());
          if (!free(loading, space, box)) {
            continue;
          }
          Placement placement = new Placement(item.id(), 1, space.id(), 0, turn, corner);
          List<Placement> placements = new ArrayList<>(soFar.plan().placements());
          placements.add(placement);
          SoundPlan grown =
              new SoundPlan(
                  soFar.scenario(),
                  new LoadPlan(
                      soFar.plan().scenarioId(),
                      soFar.plan().moduleBays(),
                      placements,
                      LoadPlan.Origin.HAND));
          if (++looks > 25) {
            return Optional.empty();
          }
          if (sound(grown, space)) {
            return Optional.of(placement);
          }
        }
      }
    }
    return Optional.empty();
  }

  private static boolean free(Loading loading, Space space, BoxMm box) {
    BoxMm room = space.box();
    if (box.minXMm() < room.minXMm()
        || box.maxXMm() > room.maxXMm()
        || box.minYMm() < room.minYMm()
        || box.maxYMm() > room.maxYMm()
        || box.maxZMm() > room.maxZMm()) {
      return false;
    }
    boolean rests = box.minZMm() == room.minZMm();
    for (PlacedItem other : loading.placed().values()) {
      if (Edit.share(box, other.box())) {
        return false;
      }
      rests |= other.box().maxZMm() == box.minZMm() && Edit.over(box, other.box());
    }
    return rests;
  }

  private static List<SpacePointMm> corners(
      Loading loading, Space space, SizeMm size, Random random) {
    Set<Integer> xs = new java.util.TreeSet<>(List.of(0, space.box().lengthMm() - size.lengthMm()));
    Set<Integer> ys = new java.util.TreeSet<>(List.of(0, space.box().widthMm() - size.widthMm()));
    Set<Integer> zs = new java.util.TreeSet<>(Set.of(0));
    for (PlacedItem item : loading.in(space.id())) {
      xs.add(item.box().maxXMm() - space.box().minXMm());
      xs.add(item.box().minXMm() - space.box().minXMm());
      ys.add(item.box().maxYMm() - space.box().minYMm());
      ys.add(item.box().minYMm() - space.box().minYMm());
      zs.add(item.box().maxZMm() - space.box().minZMm());
    }
    List<SpacePointMm> corners = new ArrayList<>();
    for (int x : xs) {
      for (int y : ys) {
        for (int z : zs) {
          corners.add(new SpacePointMm(x, y, z));
        }
      }
    }
    Collections.shuffle(corners, random);
    return corners.subList(0, Math.min(MOST_CORNERS, corners.size()));
  }

  /** Whether no rule of place is broken; where ratings are tight, no limit either. */
  private static boolean sound(SoundPlan plan, Space space) {
    Situation situation = Situation.of(plan.loading());
    for (PlanRule rule : RuleBook.PLAN_RULES) {
      if (rule.card().id().binding() && !rule.breaches(situation).isEmpty()) {
        return false;
      }
    }
    boolean tight = space.bars().isPresent() || !space.movesWith().isEmpty();
    return !tight || plan.brokenByRules().isEmpty();
  }
}
