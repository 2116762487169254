package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.PlacedItem;
import org.jspecify.annotations.Nullable;

/**
 * Fills a space from its front, room by room: into the foremost empty room goes the block of like
 * units that is liked best there. Every base lies wholly on the floor or on one block. Only size
 * and what may be put on top are looked at; the decoder judges everything else afterwards.
 */
public final class Filler {
  /**
   * What is liked in a block: weights of large, of dense, of filling the cross-section, of luck.
   */
  public record Taste(double large, double dense, double fitting, double luck) {
    /** Large ones first, with a little luck, so that much goes in. */
    public static Taste roomy(Random random) {
      return new Taste(1.0, 0.0, 0.5 * random.nextDouble(), 0.8 * random.nextDouble());
    }

    /** Any taste. */
    public static Taste any(Random random) {
      return new Taste(
          0.5 + random.nextDouble(),
          1.5 * random.nextDouble(),
          4.0 * random.nextDouble(),
          random.nextDouble());
    }
  }

  /**
   * Like units.
   *
   * @param wanted one of them
   * @param poses poses in which they may stand here
   * @param count how many there are
   */
  public record Goods(Wanted wanted, List<Integer> poses, int count) {}

  /** A place for one unit of some goods. */
  public record Stand(int goods, int pose, PointMm corner) {}

  /** A block: so many units along each axis. */
  private record Block(int goods, int pose, SizeMm unit, int alongX, int alongY, int alongZ) {
    SizeMm size() {
      return new SizeMm(
          alongX * unit.lengthMm(), alongY * unit.widthMm(), alongZ * unit.heightMm());
    }
  }

  /** Orders in which a block grows along the axes. */
  private static final int[][] GROWTH = {
    {0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}
  };

  private final BoxMm room;
  private final EmptyRooms empty;
  private final List<Goods> goods;
  private final SizeMm[][] sizes;
  private final double[] logVolume;
  private final double[] logDensity;

  /**
   * A space with what stands there already.
   *
   * @param goods what there is to fill it with
   */
  public Filler(SiteMap sites, int site, Ground ground, List<Goods> goods) {
    Site at = sites.site(site);
    this.room = at.room();
    this.goods = List.copyOf(goods);
    this.empty = new EmptyRooms(room, Math.min(room.maxZMm(), at.topZMm()));
    for (Site.Obstacle obstacle : at.obstacles()) {
      empty.take(obstacle.box(), 0L);
    }
    for (PlacedItem other : ground.reaching(site)) {
      empty.take(other.box(), 0L);
    }
    for (PlacedItem other : ground.in(site)) {
      empty.take(other.box(), other.item().bearsG());
    }
    this.sizes = new SizeMm[goods.size()][];
    this.logVolume = new double[goods.size()];
    this.logDensity = new double[goods.size()];
    for (int i = 0; i < goods.size(); i++) {
      Goods one = goods.get(i);
      sizes[i] = new SizeMm[one.poses().size()];
      for (int k = 0; k < sizes[i].length; k++) {
        sizes[i][k] = one.wanted().poses().get(one.poses().get(k)).size();
      }
      logVolume[i] = Math.log((double) sizes[i][0].volumeMm3());
      logDensity[i] = Math.log((double) one.wanted().item().mass().massG()) - logVolume[i];
    }
  }

  /** Fills the space once; the places in the order in which they are filled. */
  public List<Stand> fill(Taste taste, Random random) {
    EmptyRooms rooms = new EmptyRooms(empty);
    int[] left = new int[goods.size()];
    int units = 0;
    double[][] luck = new double[left.length][];
    for (int i = 0; i < left.length; i++) {
      left[i] = goods.get(i).count();
      units += left[i];
      luck[i] = new double[sizes[i].length];
      for (int k = 0; k < luck[i].length; k++) {
        luck[i][k] = taste.luck() * random.nextDouble();
      }
    }
    List<Stand> stands = new ArrayList<>();
    EmptyRooms.EmptyRoom next = rooms.foremost();
    while (next != null && stands.size() < units) {
      Block block = best(next, left, taste, luck, random);
      if (block == null) {
        rooms.giveUp(next);
      } else {
        put(block, next, rooms, stands);
        left[block.goods()] -= block.alongX() * block.alongY() * block.alongZ();
      }
      next = rooms.foremost();
    }
    return stands;
  }

  private @Nullable Block best(
      EmptyRooms.EmptyRoom into, int[] left, Taste taste, double[][] luck, Random random) {
    Choice choice = new Choice(into, taste, random);
    for (int i = 0; i < left.length; i++) {
      if (left[i] > 0 && goods.get(i).wanted().item().mass().massG() <= into.bearsG()) {
        for (int k = 0; k < sizes[i].length; k++) {
          choice.offer(i, k, left[i], luck[i][k]);
        }
      }
    }
    return choice.best;
  }

  /** What goes into one room. */
  private final class Choice {
    private final EmptyRooms.EmptyRoom into;
    private final Taste taste;
    private final Random random;
    private @Nullable Block best;
    private double bestLiked = Double.NEGATIVE_INFINITY;

    Choice(EmptyRooms.EmptyRoom into, Taste taste, Random random) {
      this.into = into;
      this.taste = taste;
      this.random = random;
    }

    /** Every block of some goods in one pose that grows along one axis after the other. */
    void offer(int index, int poseIndex, int left, double luck) {
      SizeMm size = sizes[index][poseIndex];
      int x = into.box().lengthMm() / size.lengthMm();
      int y = into.box().widthMm() / size.widthMm();
      int z = into.box().heightMm() / size.heightMm();
      if (x == 0 || y == 0 || z == 0) {
        return;
      }
      Goods one = goods.get(index);
      double base = taste.large() * logVolume[index] + taste.dense() * logDensity[index] + luck;
      int high = high(one, z, into.bearsG());
      int orders = left == 1 ? 1 : GROWTH.length;
      for (int order = 0; order < orders; order++) {
        int[] along = grown(GROWTH[order], x, y, high, left);
        double liked = base + liked(size, along) + taste.luck() * random.nextDouble();
        if (liked > bestLiked) {
          bestLiked = liked;
          int pose = one.poses().get(poseIndex);
          best = new Block(index, pose, size, along[0], along[1], along[2]);
        }
      }
    }

    private double liked(SizeMm size, int[] along) {
      double across = (double) along[1] * size.widthMm() / into.box().widthMm();
      double up = (double) along[2] * size.heightMm() / into.box().heightMm();
      int units = along[0] * along[1] * along[2];
      double flush = (across == 1.0 ? 0.5 : 0.0) + (up == 1.0 ? 0.5 : 0.0);
      return taste.fitting() * (across + up + flush)
          + (units > 1 ? taste.large() * Math.log(units) : 0.0);
    }
  }

  /** How many may be stacked: the lowest carries all others, the base all. */
  private static int high(Goods one, int fits, long bearsG) {
    long massG = Math.max(1L, one.wanted().item().mass().massG());
    long byItself = 1L + one.wanted().item().bearsG() / massG;
    return (int) Math.min(fits, Math.min(byItself, bearsG / massG));
  }

  private static int[] grown(int[] order, int x, int y, int z, int left) {
    int[] fits = {x, y, z};
    int[] along = {1, 1, 1};
    int rest = left;
    for (int axis : order) {
      along[axis] = Math.max(1, Math.min(fits[axis], rest));
      rest /= along[axis];
    }
    return along;
  }

  /** Against the nearer side wall. */
  private void put(Block block, EmptyRooms.EmptyRoom into, EmptyRooms rooms, List<Stand> stands) {
    BoxMm free = into.box();
    SizeMm size = block.size();
    boolean right = room.maxYMm() - free.maxYMm() < free.minYMm() - room.minYMm();
    int y0 = right ? free.maxYMm() - size.widthMm() : free.minYMm();
    PointMm first = new PointMm(free.minXMm(), y0, free.minZMm());
    SizeMm unit = block.unit();
    for (int z = 0; z < block.alongZ(); z++) {
      for (int x = 0; x < block.alongX(); x++) {
        for (int y = 0; y < block.alongY(); y++) {
          PointMm corner =
              new PointMm(
                  first.xMm() + x * unit.lengthMm(),
                  first.yMm() + y * unit.widthMm(),
                  first.zMm() + z * unit.heightMm());
          stands.add(new Stand(block.goods(), block.pose(), corner));
        }
      }
    }
    Item item = goods.get(block.goods()).wanted().item();
    long massG = item.mass().massG();
    long itself = item.bearsG() - (block.alongZ() - 1) * massG;
    long below =
        into.bearsG() == Long.MAX_VALUE ? Long.MAX_VALUE : into.bearsG() - block.alongZ() * massG;
    rooms.take(BoxMm.at(first, size), Math.min(itself, below));
  }
}
