package kitstow.planner.exact;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;

/**
 * Invented cases of boxes in few spaces with their proved optima, by number. In every other one the
 * room lies across the rear axle line. Cases that cannot be packed whole, or whose optimum has so
 * little moment that a tenth of a newton metre matters, are passed over.
 */
public final class BoxCases {
  /** 100 N.m in gram half-millimetres. */
  private static final long LEAST_MOMENT = 20_400_000L;

  private static final List<Turn> AS_LISTED = List.of(Turn.LWH);
  private static final List<Turn> UPRIGHT = List.of(Turn.LWH, Turn.WLH);
  private static final List<Turn> ALL = List.copyOf(EnumSet.allOf(Turn.class));

  /** A case and its optimum. */
  public record Proved(int number, BoxCase boxes, BoxCase.Optimum optimum) {}

  private BoxCases() {}

  /**
   * Six or seven boxes, each of which rests on the floor or wholly on one other in every plan that
   * supports whole bases: no two boxes can have tops at one height with room for a third on both.
   */
  public static Proved oneBody(int number) {
    Random random = new Random(6151L * number + 11L);
    return first(
        number,
        () -> fine(number, random),
        boxes -> boxes.fill() > 0.4 && boxes.fill() < 0.7 && !LevelTops.canBearTogether(boxes),
        OneBodyPacking::solve);
  }

  /** Six to eight boxes in three spaces beside each other; otherwise as {@link #oneBody}. */
  public static Proved threeSpaces(int number) {
    ThreeSpaces spaces = new ThreeSpaces(number, new Random(5417L * number + 3L));
    return first(number, spaces::draw, ThreeSpaces::fits, OneBodyPacking::solve);
  }

  /**
   * Three or four boxes on a coarse grid. A base rests on 80 % or more, and then its middle always
   * lies over that; so in every fourth case it is 40 %, where the middle may miss it.
   */
  public static Proved coarse(int number) {
    Random random = new Random(7919L * number + 5L);
    return first(
        number,
        () -> coarse(number, random),
        boxes -> boxes.fill() > 0.3 && boxes.fill() < 0.9,
        CoarsePacking::solve);
  }

  private static Proved first(
      int number,
      Supplier<BoxCase> draw,
      Predicate<BoxCase> fits,
      Function<BoxCase, Optional<BoxCase.Optimum>> solve) {
    while (true) {
      BoxCase boxes = draw.get();
      if (fits.test(boxes)) {
        Optional<BoxCase.Optimum> optimum = solve.apply(boxes);
        if (optimum.isPresent() && optimum.get().momentHalfGMm() >= LEAST_MOMENT) {
          return new Proved(number, boxes, optimum.get());
        }
      }
    }
  }

  private static BoxCase fine(int number, Random random) {
    Sizes sizes = new Sizes(random, OneBodyPacking.GRID_MM);
    SizeMm room = sizes.between(new SizeMm(800, 500, 380), new SizeMm(1200, 700, 600));
    SizeMm least = new SizeMm(160, 150, 140);
    SizeMm most = new SizeMm(520, 450, 360);
    List<BoxCase.Box> boxes = boxes(6 + number / 2 % 2, random, () -> sizes.between(least, most));
    return new BoxCase(
        room, axleMm(number, room.lengthMm(), random), /* supportPermille= */ 1000, boxes);
  }

  static BoxCase coarse(int number, Random random) {
    Sizes sizes = new Sizes(random, CoarsePacking.GRID_MM);
    SizeMm room = sizes.between(new SizeMm(500, 300, 300), new SizeMm(800, 500, 500));
    SizeMm least = new SizeMm(200, 100, 100);
    SizeMm most = new SizeMm(500, 400, 300);
    List<BoxCase.Box> boxes = boxes(3 + number / 2 % 2, random, () -> sizes.between(least, most));
    int permille = number % 4 == 3 ? 400 : 800;
    return new BoxCase(room, axleMm(number, room.lengthMm(), random), permille, boxes);
  }

  static List<BoxCase.Box> boxes(int count, Random random, Supplier<SizeMm> size) {
    List<BoxCase.Box> boxes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boxes.add(new BoxCase.Box(size.get(), massG(random), turns(random)));
    }
    return boxes;
  }

  static int axleMm(int number, int lengthMm, Random random) {
    return number % 2 == 0
        ? (int) (lengthMm * (0.15 + 0.3 * random.nextDouble()))
        : -50 - random.nextInt(400);
  }

  private static long massG(Random random) {
    return 5_000L + random.nextInt(30_000);
  }

  private static List<Turn> turns(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> AS_LISTED;
      case 1 -> ALL;
      default -> UPRIGHT;
    };
  }

  /** Draws sizes that differ from the least by whole steps of a grid. */
  record Sizes(Random random, int gridMm) {
    SizeMm between(SizeMm least, SizeMm most) {
      return new SizeMm(
          whole(least.lengthMm(), most.lengthMm()),
          whole(least.widthMm(), most.widthMm()),
          whole(least.heightMm(), most.heightMm()));
    }

    int whole(int fromMm, int toMm) {
      return fromMm + gridMm * random.nextInt((toMm - fromMm) / gridMm + 1);
    }
  }
}
