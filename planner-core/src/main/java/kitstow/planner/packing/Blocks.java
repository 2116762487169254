package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kitstow.planner.geometry.SizeMm;

/**
 * Blocks of unlike units whose faces match, so that they stand together without any gap; worked out
 * once for all spaces of a rig.
 */
public final class Blocks {
  private static final int MOST_ROWS = 3_000;
  private static final int MOST = 2_000;

  /** Where there are more, which are left out is a matter of luck, always the same. */
  private static final long SEED = 20L;

  /**
   * Like units.
   *
   * @param kind their number
   * @param wanted one of them
   * @param count how many there are
   */
  public record Kind(int kind, Wanted wanted, int count) {}

  private final int[] counts;
  private final SizeMm limit;
  private final Map<Block.Side, Map<Long, List<Block>>> byFace = new EnumMap<>(Block.Side.class);
  private final Map<Long, Block> joined = new LinkedHashMap<>();
  private final List<Block> largestFirst;

  private Blocks(int[] counts, SizeMm limit, List<Block> rows) {
    this.counts = counts;
    this.limit = limit;
    Random random = new Random(SEED);
    List<Block> latest = new ArrayList<>(rows);
    while (!latest.isEmpty() && joined.size() < MOST) {
      Collections.shuffle(latest, random);
      latest.forEach(this::remember);
      latest = join(latest);
    }
    this.largestFirst = new ArrayList<>(joined.values());
    largestFirst.sort(
        Comparator.comparingLong((Block block) -> block.size().volumeMm3())
            .reversed()
            .thenComparingLong(Block::likeness));
  }

  /**
   * Works them out.
   *
   * @param numbers one more than the highest number of a kind
   * @param kinds all that is to be placed
   * @param limit no block is larger in any direction
   */
  public static Blocks of(int numbers, List<Kind> kinds, SizeMm limit) {
    int[] counts = new int[numbers];
    List<Block> rows = new ArrayList<>();
    for (Kind kind : kinds) {
      counts[kind.kind()] = kind.count();
      for (int pose = 0; pose < kind.wanted().poses().size(); pose++) {
        addRows(kind, pose, limit, rows);
      }
    }
    Collections.shuffle(rows, new Random(SEED));
    return new Blocks(counts, limit, rows.subList(0, Math.min(MOST_ROWS, rows.size())));
  }

  private static void addRows(Kind kind, int pose, SizeMm limit, List<Block> rows) {
    SizeMm unit = kind.wanted().poses().get(pose).size();
    long massG = kind.wanted().item().mass().massG();
    long bearsG = kind.wanted().item().bearsG();
    int most = kind.count();
    for (int x = 1; x <= most && x * unit.lengthMm() <= limit.lengthMm(); x++) {
      for (int y = 1; x * y <= most && y * unit.widthMm() <= limit.widthMm(); y++) {
        for (int z = 1; x * y * z <= most && z * unit.heightMm() <= limit.heightMm(); z++) {
          if ((z - 1) * massG <= bearsG) {
            rows.add(new Block(kind.kind(), pose, unit, new int[] {x, y, z}, massG, bearsG));
          }
        }
      }
    }
  }

  private void remember(Block block) {
    for (Block.Side side : Block.Side.values()) {
      byFace
          .computeIfAbsent(side, any -> new HashMap<>())
          .computeIfAbsent(face(block, side), face -> new ArrayList<>())
          .add(block);
    }
  }

  /** The two edges of the face by which blocks are joined so. */
  private static long face(Block block, Block.Side side) {
    SizeMm size = block.size();
    return switch (side) {
      case BEHIND -> ((long) size.widthMm() << 32) | size.heightMm();
      case BESIDE -> ((long) size.lengthMm() << 32) | size.heightMm();
      case ON_TOP -> ((long) size.lengthMm() << 32) | size.widthMm();
    };
  }

  /** Every pair of which one is among the latest; returns what is new. */
  private List<Block> join(List<Block> latest) {
    Map<Long, Block> fresh = new LinkedHashMap<>();
    for (Block one : latest) {
      for (Block.Side side : Block.Side.values()) {
        for (Block other : matching(one, side)) {
          offer(one, other, side, fresh);
          offer(other, one, side, fresh);
        }
      }
      if (joined.size() + fresh.size() >= MOST) {
        break;
      }
    }
    joined.putAll(fresh);
    return new ArrayList<>(fresh.values());
  }

  private List<Block> matching(Block one, Block.Side side) {
    return byFace
        .getOrDefault(side, Collections.emptyMap())
        .getOrDefault(face(one, side), Collections.emptyList());
  }

  /** Of blocks that are alike the one with its mass farthest forward is kept. */
  private void offer(Block first, Block second, Block.Side side, Map<Long, Block> fresh) {
    if (Block.mayJoin(first, second, side, limit, counts)) {
      Block both = new Block(first, second, side);
      if (!joined.containsKey(both.likeness())) {
        fresh.merge(both.likeness(), both, Blocks::moreForward);
      }
    }
  }

  private static Block moreForward(Block a, Block b) {
    return b.doubledMomentGMm() < a.doubledMomentGMm() ? b : a;
  }

  /** One more than the highest number of a kind. */
  public int kinds() {
    return counts.length;
  }

  /** All of them, the largest first. */
  List<Block> all() {
    return Collections.unmodifiableList(largestFirst);
  }
}
