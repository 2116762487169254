package kitstow.planner.generated;

import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.model.Stop;

/**
 * Two hundred scenarios, each the same for the same number. Those with an even number have a space
 * across the rear axle line, the others none, and every seventh has the same {@link Theme}. The
 * first {@link #SMALL} have few items and a short trip, so that they can be solved in every build.
 */
public final class GeneratedScenarios {
  /** How many there are. */
  public static final int ALL = 200;

  /** How many of them, from the first, are small. */
  public static final int SMALL = 40;

  private GeneratedScenarios() {}

  /** Scenario by its number, from 0. */
  public static Scenario of(int number) {
    Random random = new Random(7919L * number + 13L);
    RigMaker rig = new RigMaker(random, number);
    rig.furnish();
    GearMaker gear = new GearMaker(random, rig, number);
    int items = number < SMALL ? 5 + random.nextInt(9) : logUniform(random, 10, 150);
    double fill = Theme.of(number).fill(random.nextDouble());
    gear.make(items, fill * roomMm3(rig.builder().scenario()));
    TripMaker trip = new TripMaker(random, rig, gear, number);
    trip.make();
    return new LimitMaker(random, rig, gear.totalG(), number).tighten().withStops(stops(number));
  }

  /** In two of four it may stand in traffic, in another one be bogged. */
  private static List<Stop> stops(int number) {
    if (bogged(number)) {
      return List.of(new Stop("bogged", "bogged", Set.of(), 960, List.of("rear-door")));
    }
    return straddles(number)
        ? List.of()
        : List.of(new Stop("traffic", "in traffic", Set.of(Facing.RIGHT), 0, List.of()));
  }

  /** In five of eight it tows, with a rear bar on and little on the front axle. */
  static boolean tows(int number) {
    return onlyTold(number) || number % 8 < 4;
  }

  /** In one of four it may be bogged, with a rear door that then stays shut. */
  static boolean bogged(int number) {
    return number % 4 == 2;
  }

  /** In one of five any ute is too long for the trip, in another one too high. */
  static Leg.Room ferry(int number) {
    return switch (number % 5) {
      case 2 -> new Leg.Room(OptionalInt.of(3_500), OptionalInt.empty());
      case 3 -> new Leg.Room(OptionalInt.empty(), OptionalInt.of(1_200));
      default -> Leg.Room.UNLIMITED;
    };
  }

  /** Whether a space of the scenario lies across the rear axle line. */
  public static boolean straddles(int number) {
    return number % 2 == 0;
  }

  /** In one of four, or two with light gear, the roof of the cab is strong and its bars are not. */
  static boolean lightBars(int number) {
    return number % (Theme.of(number) == Theme.LIGHT ? 2 : 4) == 0;
  }

  /** In one of four limits are only told, and half of the gear must come whatever they are. */
  static boolean onlyTold(int number) {
    return number % 4 == 3;
  }

  /** Room of all spaces with a floor. */
  static double roomMm3(Scenario scenario) {
    double sum = 0.0;
    for (Space space : Rig.of(scenario, RigMaker.firstBays(scenario)).spaces().values()) {
      if (!space.bars().isPresent()) {
        BoxMm box = space.box();
        sum += (double) box.lengthMm() * box.widthMm() * box.heightMm();
      }
    }
    return sum;
  }

  private static int logUniform(Random random, int least, int most) {
    double exponent = random.nextDouble();
    return (int) Math.round(least * Math.pow((double) most / least, exponent));
  }
}
