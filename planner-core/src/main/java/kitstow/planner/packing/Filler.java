package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;

/**
 * A space that is to be filled from its front, gap by gap, and what may go into it. Only size and
 * what may be put on top are looked at; the decoder judges everything else afterwards.
 */
public final class Filler {
  /**
   * Like units.
   *
   * @param kind their number, by which {@link Blocks} knows them
   * @param wanted one of them
   * @param poses poses in which they may stand here
   * @param count how many there are
   */
  public record Goods(int kind, Wanted wanted, List<Integer> poses, int count) {}

  /**
   * A place for one unit.
   *
   * @param kind its number
   * @param pose index of its pose
   * @param site the space
   * @param corner its front, left, lower corner, in the frame of the ute
   */
  public record Stand(int kind, int pose, int site, PointMm corner) {}

  /** A block of unlike units with what does not change about it. */
  private record Composite(Block block, double logVolume, double logDensity, double needed) {}

  /** Orders in which a block grows along the axes. */
  private static final int[][] GROWTH = {
    {0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}
  };

  private final int site;
  private final BoxMm room;
  private final EmptyRooms empty;
  private final List<Goods> goods;
  private final SizeMm[][] sizes;
  private final double[] logVolume;
  private final double[] logDensity;
  private final List<Composite> composites = new ArrayList<>();
  private final int[] along = new int[3];

  /**
   * A space with what stands there already.
   *
   * @param goods what there is to fill it with
   * @param blocks how unlike ones of them fit together
   */
  public Filler(SiteMap sites, int site, Ground ground, List<Goods> goods, Blocks blocks) {
    this.site = site;
    Site at = sites.site(site);
    this.room = at.room();
    this.goods = List.copyOf(goods);
    this.empty = emptyRooms(at, ground);
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
    addComposites(blocks);
  }

  private static EmptyRooms emptyRooms(Site at, Ground ground) {
    EmptyRooms empty = new EmptyRooms(at.room(), Math.min(at.room().maxZMm(), at.topZMm()));
    for (Site.Obstacle obstacle : at.obstacles()) {
      empty.take(obstacle.box(), 0L);
    }
    for (PlacedItem other : ground.reaching(at.index())) {
      empty.take(other.box(), 0L);
    }
    for (PlacedItem other : ground.in(at.index())) {
      empty.take(other.box(), other.item().bearsG());
    }
    return empty;
  }

  /** Blocks that fit in here and whose units are there and may all stand here as they do. */
  private void addComposites(Blocks blocks) {
    Goods[] ofKind = new Goods[blocks.kinds()];
    int[] counts = new int[ofKind.length];
    for (Goods one : goods) {
      ofKind[one.kind()] = one;
      counts[one.kind()] = one.count();
    }
    for (Block block : blocks.all()) {
      SizeMm size = block.size();
      if (size.lengthMm() <= room.lengthMm()
          && size.widthMm() <= room.widthMm()
          && size.heightMm() <= room.heightMm()
          && block.isWithin(counts)
          && block.isAllowed((kind, pose) -> ofKind[kind].poses().contains(pose))) {
        double log = Math.log((double) block.size().volumeMm3());
        double needed = block.anyOf(kind -> isNeeded(ofKind[kind].wanted())) ? 1.0 : 0.0;
        composites.add(new Composite(block, log, Math.log((double) block.massG()) - log, needed));
      }
    }
  }

  private static boolean isNeeded(Wanted wanted) {
    return wanted.item().need() == Need.MUST;
  }

  /** The empty room to begin with. */
  EmptyRooms empty() {
    return new EmptyRooms(empty);
  }

  /** Luck of each of the goods in each pose, for one filling. */
  double[][] luck(Taste taste, SplittableRandom random) {
    double[][] luck = new double[goods.size()][];
    for (int i = 0; i < luck.length; i++) {
      luck[i] = new double[sizes[i].length];
      for (int k = 0; k < luck[i].length; k++) {
        luck[i][k] =
            taste.luck() * random.nextDouble()
                + (isNeeded(goods.get(i).wanted()) ? taste.needed() : 0.0);
      }
    }
    return luck;
  }

  /** Offers everything that goes into a gap. */
  void offer(EmptyRooms.EmptyRoom into, int[] left, double[][] luck, Taste taste, Choice choice) {
    for (int i = 0; i < goods.size(); i++) {
      int count = left[goods.get(i).kind()];
      if (count > 0 && goods.get(i).wanted().item().mass().massG() <= into.bearsG()) {
        for (int k = 0; k < sizes[i].length; k++) {
          offerRows(i, k, count, luck[i][k], into, taste, choice);
        }
      }
    }
    for (Composite composite : composites) {
      Block block = composite.block();
      SizeMm size = block.size();
      if (size.lengthMm() <= into.box().lengthMm()
          && size.widthMm() <= into.box().widthMm()
          && size.heightMm() <= into.box().heightMm()
          && block.massG() <= into.bearsG()
          && block.isWithin(left)) {
        double liked =
            taste.large() * composite.logVolume()
                + taste.dense() * composite.logDensity()
                + taste.needed() * composite.needed()
                + fitting(size.widthMm(), size.heightMm(), into, taste);
        choice.offer(block, liked + taste.luck() * choice.random().nextDouble());
      }
    }
  }

  /** Every block of some goods in one pose that grows along one axis after the other. */
  private void offerRows(
      int index,
      int poseIndex,
      int left,
      double luck,
      EmptyRooms.EmptyRoom into,
      Taste taste,
      Choice choice) {
    SizeMm size = sizes[index][poseIndex];
    BoxMm gap = into.box();
    if (size.lengthMm() > gap.lengthMm()
        || size.widthMm() > gap.widthMm()
        || size.heightMm() > gap.heightMm()) {
      return;
    }
    Goods one = goods.get(index);
    int x = gap.lengthMm() / size.lengthMm();
    int y = gap.widthMm() / size.widthMm();
    int z = gap.heightMm() / size.heightMm();
    double base = taste.large() * logVolume[index] + taste.dense() * logDensity[index] + luck;
    int high = high(one, z, into.bearsG());
    int orders = left == 1 ? 1 : GROWTH.length;
    for (int order = 0; order < orders; order++) {
      grow(GROWTH[order], x, y, high, left);
      int units = along[0] * along[1] * along[2];
      double liked =
          base
              + fitting(along[1] * size.widthMm(), along[2] * size.heightMm(), into, taste)
              + (units > 1 ? taste.large() * Math.log(units) : 0.0)
              + taste.luck() * choice.random().nextDouble();
      if (choice.wants(liked)) {
        Item item = one.wanted().item();
        int pose = one.poses().get(poseIndex);
        choice.offer(
            new Block(one.kind(), pose, size, along, item.mass().massG(), item.bearsG()), liked);
      }
    }
  }

  private static double fitting(int widthMm, int heightMm, EmptyRooms.EmptyRoom into, Taste taste) {
    double across = (double) widthMm / into.box().widthMm();
    double up = (double) heightMm / into.box().heightMm();
    double flush = (across == 1.0 ? 0.5 : 0.0) + (up == 1.0 ? 0.5 : 0.0);
    return taste.fitting() * (across + up + flush);
  }

  /** How many may be stacked: the lowest carries all others, the base all. */
  private static int high(Goods one, int fits, long bearsG) {
    long massG = Math.max(1L, one.wanted().item().mass().massG());
    long byItself = 1L + one.wanted().item().bearsG() / massG;
    return (int) Math.min(fits, Math.min(byItself, bearsG / massG));
  }

  /** Works out how many go along each axis, taken in some order, where so many fit. */
  private void grow(int[] order, int x, int y, int z, int left) {
    along[0] = x;
    along[1] = y;
    along[2] = z;
    int rest = left;
    for (int axis : order) {
      along[axis] = Math.max(1, Math.min(along[axis], rest));
      rest = along[axis] == 1 ? rest : rest / along[axis];
    }
  }

  /** Puts a block into a gap, against the nearer side wall. */
  void put(Block block, EmptyRooms.EmptyRoom into, EmptyRooms rooms, List<Stand> stands) {
    BoxMm free = into.box();
    SizeMm size = block.size();
    boolean right = room.maxYMm() - free.maxYMm() < free.minYMm() - room.minYMm();
    int y0 = right ? free.maxYMm() - size.widthMm() : free.minYMm();
    PointMm first = new PointMm(free.minXMm(), y0, free.minZMm());
    block.stand(first, (kind, pose, corner) -> stands.add(new Stand(kind, pose, site, corner)));
    long below = into.bearsG() == Long.MAX_VALUE ? Long.MAX_VALUE : into.bearsG() - block.massG();
    rooms.take(BoxMm.at(first, size), Math.min(block.bearsG(), below));
  }

  /** The blocks that are liked best so far. */
  static final class Choice {
    private final Block[] blocks;
    private final double[] liked;
    private final SplittableRandom random;
    private int count;

    /**
     * None so far.
     *
     * @param most how many are kept
     */
    Choice(int most, SplittableRandom random) {
      this.blocks = new Block[most];
      this.liked = new double[most];
      this.random = random;
    }

    SplittableRandom random() {
      return random;
    }

    void clear() {
      Arrays.fill(blocks, 0, count, null);
      count = 0;
    }

    int count() {
      return count;
    }

    /** The one that is liked best but for so many. */
    Block get(int index) {
      return blocks[index];
    }

    /** Whether one that is liked so much would be kept. */
    boolean wants(double much) {
      return count < blocks.length || much > liked[count - 1];
    }

    void offer(Block block, double much) {
      if (!wants(much)) {
        return;
      }
      int at = count < blocks.length ? count++ : count - 1;
      while (at > 0 && liked[at - 1] < much) {
        blocks[at] = blocks[at - 1];
        liked[at] = liked[at - 1];
        at--;
      }
      blocks[at] = block;
      liked[at] = much;
    }
  }
}
