package kitstow.planner.packing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;

/**
 * Candidate places of a newcomer in a scene: where walls, things and bars meet. Kept are those that
 * pass the quick tests: inside, free, on enough support, on nothing that bears nothing.
 */
final class Corners {
  private final Scene scene;
  private final Space space;
  private final BoxMm box;
  private final BoxMm room;
  private final PlaceCost places;
  private final int supportPermille;
  private int count;
  private double[] cost = new double[32];
  private int[] poses = new int[32];
  private int[] xs = new int[32];
  private int[] ys = new int[32];
  private int[] zs = new int[32];
  private double barredCost = Double.MAX_VALUE;
  private RuleId barredBy = RuleId.NO_OVERLAP;
  private int pose;
  private int length;
  private int width;
  private int height;
  private boolean bearsItself;
  private final boolean onBars;

  Corners(Scene scene, PlaceCost places, int supportPermille) {
    this.scene = scene;
    this.space = scene.site().space();
    this.box = space.box();
    this.room = scene.site().room();
    this.places = places;
    this.supportPermille = supportPermille;
    this.onBars = space.bars().isPresent();
  }

  int count() {
    return count;
  }

  /** The rule that bars the cheapest free place that did not pass the quick tests. */
  RuleId barredBy() {
    return barredBy;
  }

  int pose(int i) {
    return poses[i];
  }

  PointMm corner(int i) {
    return new PointMm(xs[i], ys[i], zs[i]);
  }

  void forget() {
    count = 0;
  }

  /** Index of the cheapest candidate that is left, which is then taken; -1 where none is. */
  int takeCheapest() {
    int best = -1;
    for (int i = 0; i < count; i++) {
      if (cost[i] < Double.MAX_VALUE && (best < 0 || before(i, best))) {
        best = i;
      }
    }
    if (best >= 0) {
      for (int i = 0; i < count; i++) {
        boolean same =
            i != best
                && poses[i] == poses[best]
                && xs[i] == xs[best]
                && ys[i] == ys[best]
                && zs[i] == zs[best];
        if (same) {
          cost[i] = Double.MAX_VALUE;
        }
      }
      cost[best] = Double.MAX_VALUE;
    }
    return best;
  }

  private boolean before(int a, int b) {
    if (cost[a] != cost[b]) {
      return cost[a] < cost[b];
    }
    if (poses[a] != poses[b]) {
      return poses[a] < poses[b];
    }
    if (xs[a] != xs[b]) {
      return xs[a] < xs[b];
    }
    return ys[a] != ys[b] ? ys[a] < ys[b] : zs[a] < zs[b];
  }

  /** Adds one place in the first pose. */
  void addPlace(Wanted wanted, SpacePointMm at) {
    stand(wanted, wanted.firstPose());
    offerOnly(at);
  }

  private void offerOnly(SpacePointMm at) {
    PointMm point = space.pointAt(at);
    if (free(point.xMm(), point.yMm(), point.zMm())) {
      test(point.xMm(), point.yMm(), point.zMm());
    }
  }

  private void stand(Wanted wanted, int poseIndex) {
    SizeMm size = wanted.poses().get(poseIndex).size();
    pose = poseIndex;
    length = size.lengthMm();
    width = size.widthMm();
    height = size.heightMm();
    bearsItself = wanted.item().bearsG() > 0L;
  }

  /** Adds the candidate places of one pose. */
  void add(Wanted wanted, int poseIndex) {
    stand(wanted, poseIndex);
    Optional<SpacePointMm> pinned = wanted.pinned();
    if (pinned.isPresent()) {
      offerOnly(pinned.get());
      return;
    }
    if (space.bars().isPresent()) {
      addBarCorners(space.bars().get());
    }
    Anchors anchors = scene.anchors();
    for (int i = 0; i < anchors.count(); i++) {
      if (anchors.admits(i, length, width, height)) {
        offer(anchors.xMm(i, length), anchors.yMm(i, width), anchors.zMm(i));
      }
    }
  }

  /** Both side walls at one x and z; what is wider than the bars sticks out on either side. */
  private void row(int x, int z) {
    offer(x, inRoom(box.minYMm()), z);
    offer(x, inRoom(box.maxYMm() - width), z);
  }

  private int inRoom(int y) {
    return Math.max(room.minYMm(), Math.min(y, room.maxYMm() - width));
  }

  /**
   * Places that rest an item on two bars: from a bar on, back from a bar, centred between two, each
   * as near as the allowed projection lets it be, and as far forward as that is.
   */
  private void addBarCorners(RoofBars bars) {
    int lastX = Math.max(room.minXMm(), room.maxXMm() - length);
    List<RoofBars.Bar> all = bars.bars();
    row(room.minXMm(), box.minZMm());
    for (int i = 0; i + 1 < all.size(); i++) {
      int x = BarCarriage.lineXMm(space, all.get(i));
      int next = BarCarriage.lineXMm(space, all.get(i + 1));
      row(Math.min(lastX, Math.max(room.minXMm(), x)), box.minZMm());
      row(Math.min(lastX, Math.max(room.minXMm(), next - length)), box.minZMm());
      row(Math.min(lastX, Math.max(room.minXMm(), (x + next - length) / 2)), box.minZMm());
    }
  }

  /** A place, and the same pushed forward as far as it goes. */
  private void offer(int x, int y, int z) {
    if (!free(x, y, z)) {
      return;
    }
    test(x, y, z);
    int forward = scene.forwardFrom(x, y, z, y + width, z + height);
    if (forward < x) {
      test(forward, y, z);
    }
  }

  /** Whether a place is inside the room and nothing stands there. */
  private boolean free(int x, int y, int z) {
    return x >= room.minXMm()
        && x + length <= room.maxXMm()
        && y >= room.minYMm()
        && y + width <= room.maxYMm()
        && z >= room.minZMm()
        && z + height <= Math.min(room.maxZMm(), scene.site().topZMm())
        && !scene.taken(x, y, z, x + length, y + width, z + height);
  }

  private void test(int x, int y, int z) {
    int x1 = x + length;
    int y1 = y + width;
    for (Site.Obstacle obstacle : scene.site().obstacles()) {
      BoxMm o = obstacle.box();
      if (x < o.maxXMm()
          && o.minXMm() < x1
          && y < o.maxYMm()
          && o.minYMm() < y1
          && z < o.maxZMm()
          && o.minZMm() < z + height) {
        bar(x, y, z, obstacle.rule());
        return;
      }
    }
    boolean bare = scene.site().bareBars();
    if (scene.columnTaken(x, y, z, x1, y1, bearsItself, bare)) {
      bar(x, y, z, RuleId.CLEAR_COLUMN);
      return;
    }
    if (!bare
        && scene.contactMm2(x, y, z, x1, y1) * 1000L < (long) supportPermille * length * width) {
      bar(x, y, z, RuleId.SUPPORT);
      return;
    }
    if (onBars
        && !BarCarriage.carried(
            new BoxMm(x, y, z, x1, y1, z + height), space, space.bars().get())) {
      bar(x, y, z, RuleId.TWO_BARS);
      return;
    }
    keep(x, y, z);
  }

  private void bar(int x, int y, int z, RuleId rule) {
    double here = places.of(x, x + length, y, z, box);
    if (here < barredCost) {
      barredCost = here;
      barredBy = rule;
    }
  }

  private void keep(int x, int y, int z) {
    if (count == cost.length) {
      cost = Arrays.copyOf(cost, 2 * count);
      poses = Arrays.copyOf(poses, 2 * count);
      xs = Arrays.copyOf(xs, 2 * count);
      ys = Arrays.copyOf(ys, 2 * count);
      zs = Arrays.copyOf(zs, 2 * count);
    }
    cost[count] = places.of(x, x + length, y, z, box);
    poses[count] = pose;
    xs[count] = x;
    ys[count] = y;
    zs[count] = z;
    count++;
  }
}
