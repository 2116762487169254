package kitstow.planner.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;

/**
 * Draws six to eight boxes for three spaces beside each other. By turns nothing but room binds, or
 * the ratings of the spaces, or one box grows lighter on the way and another heavier, or, where the
 * room lies across the axle line, the front axle may carry less than it would.
 */
final class ThreeSpaces {
  private static final int SPACES = 3;
  private static final int GAP_MM = 20;
  private static final double LEAST_FILL = 0.5;
  private static final double MOST_FILL = 0.7;

  /** How much of what it would carry the front axle may carry where it binds. */
  private static final double FRONT_SHARE = 0.9;

  private final int number;
  private final Random random;
  private final BoxCases.Sizes sizes;

  /** What binds beside the room. */
  private enum Binding {
    NOTHING,
    RATINGS,
    STATES,
    FRONT_AXLE
  }

  ThreeSpaces(int number, Random random) {
    this.number = number;
    this.random = random;
    this.sizes = new BoxCases.Sizes(random, OneBodyPacking.GRID_MM);
  }

  /** Whether a case is neither too full nor too empty, and no two boxes can bear a third. */
  static boolean fits(BoxCase boxes) {
    return boxes.fill() > LEAST_FILL
        && boxes.fill() < MOST_FILL
        && !LevelTops.canBearTogether(boxes);
  }

  /** The next case, which need not fit nor have a solution. */
  BoxCase draw() {
    return switch (Binding.values()[number / 2 % Binding.values().length]) {
      case NOTHING -> plain(boxes(), /* rated= */ false);
      case RATINGS -> plain(boxes(), /* rated= */ true);
      case STATES -> plain(changing(boxes()), /* rated= */ false);
      case FRONT_AXLE -> withFrontAxle(plain(boxes(), /* rated= */ false));
    };
  }

  private List<BoxCase.Box> boxes() {
    SizeMm least = new SizeMm(160, 150, 140);
    SizeMm most = new SizeMm(420, 350, 300);
    return BoxCases.boxes(6 + random.nextInt(3), random, () -> sizes.between(least, most));
  }

  /** The first box loses up to all but a fifth of its mass, the second gains as much. */
  private List<BoxCase.Box> changing(List<BoxCase.Box> of) {
    List<BoxCase.Box> boxes = new ArrayList<>(of);
    BoxCase.Box first = boxes.get(0);
    long lostG = Math.round(first.massG() * (0.4 + 0.4 * random.nextDouble()));
    boxes.set(0, first.withEnd(first.massG() - lostG));
    boxes.set(1, boxes.get(1).withEnd(boxes.get(1).massG() + lostG));
    return boxes;
  }

  private BoxCase plain(List<BoxCase.Box> boxes, boolean rated) {
    long totalG = boxes.stream().mapToLong(BoxCase.Box::massG).sum();
    List<BoxCase.Space> spaces = new ArrayList<>();
    int leftMm = 0;
    for (int i = 0; i < SPACES; i++) {
      SizeMm size = sizes.between(new SizeMm(400, 300, 250), new SizeMm(800, 450, 400));
      PointMm corner = new PointMm(i == 0 ? 0 : sizes.whole(0, 400), leftMm, 0);
      double share = 0.3 + 0.2 * random.nextDouble();
      spaces.add(
          new BoxCase.Space(corner, size, rated ? Math.round(totalG * share) : Long.MAX_VALUE));
      leftMm += size.widthMm() + GAP_MM;
    }
    int lengthMm = spaces.stream().mapToInt(space -> space.box().maxXMm()).max().orElseThrow();
    int axleMm = BoxCases.axleMm(number, lengthMm, random);
    return new BoxCase(spaces, axleMm, /* supportPermille= */ 1000, Long.MAX_VALUE, boxes);
  }

  private static BoxCase withFrontAxle(BoxCase boxes) {
    if (boxes.axleMm() <= 0 || !fits(boxes)) {
      return boxes;
    }
    Optional<BoxCase.Optimum> free = OneBodyPacking.solve(boxes);
    if (!free.isPresent()) {
      return boxes;
    }
    long frontHalfGMm = boxes.frontHalfGMm(free.get().places());
    return frontHalfGMm > 0L ? boxes.withMostFront(Math.round(frontHalfGMm * FRONT_SHARE)) : boxes;
  }
}
