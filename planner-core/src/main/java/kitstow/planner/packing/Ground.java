package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.PlacedItem;
import org.jspecify.annotations.Nullable;

/**
 * What stands where while gear is being packed. Keeps a fingerprint of what is around each space:
 * the same things in the same places give the same one, in whatever order they came.
 */
public final class Ground {
  private final SiteMap sites;
  private final List<List<PlacedItem>> in = new ArrayList<>();
  private final List<List<PlacedItem>> reaching = new ArrayList<>();
  private final @Nullable Scene[] scenes;
  private final int[] demanding;
  private final long[] print;
  private final long[] filledMm3;
  private final List<BitSet> linked = new ArrayList<>();

  /** Empty ground. */
  public Ground(SiteMap sites) {
    this.sites = sites;
    for (int i = 0; i < sites.size(); i++) {
      in.add(new ArrayList<>());
      reaching.add(new ArrayList<>());
      linked.add(new BitSet());
    }
    this.scenes = new Scene[sites.size()];
    this.demanding = new int[sites.size()];
    this.print = new long[sites.size()];
    this.filledMm3 = new long[sites.size()];
  }

  /**
   * These spaces and all others in which anything reaches into them or is reached from them, from
   * one to the next: what stands elsewhere is of no matter to what stands in these.
   */
  public BitSet withLinked(BitSet those) {
    BitSet all = new BitSet();
    BitSet next = (BitSet) those.clone();
    while (!next.isEmpty()) {
      int site = next.nextSetBit(0);
      next.clear(site);
      if (!all.get(site)) {
        all.set(site);
        next.or(linked.get(site));
      }
    }
    return all;
  }

  /** Whether anything in a space reaches into a space that is not one of these, or from there. */
  public boolean isLinkedBeyond(int site, BitSet those) {
    BitSet others = linked.get(site);
    for (int i = others.nextSetBit(0); i >= 0; i = others.nextSetBit(i + 1)) {
      if (!those.get(i)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Takes everything out of some spaces.
   *
   * @param those spaces, by index, of which none is linked to any other
   */
  public void clear(BitSet those) {
    for (int i = those.nextSetBit(0); i >= 0; i = those.nextSetBit(i + 1)) {
      in.get(i).clear();
      reaching.get(i).clear();
      scenes[i] = null;
      demanding[i] = 0;
      print[i] = 0L;
      filledMm3[i] = 0L;
      linked.get(i).clear();
    }
  }

  /**
   * Puts something down.
   *
   * @param site index of its space
   * @param kind number that tells its item from all others
   */
  public void add(PlacedItem item, int site, int kind) {
    in.get(site).add(item);
    Scene scene = scenes[site];
    if (scene != null) {
      scene.add(item);
    }
    filledMm3[site] += item.box().volumeMm3();
    demanding[site] += item.item().keepClear().isEmpty() ? 0 : 1;
    long its = printOf(item, site, kind);
    print[site] ^= its;
    Site at = sites.site(site);
    for (int i = 0; i < at.nearCount(); i++) {
      int near = at.near(i);
      if (near != site && sites.site(near).isReachedBy(item, at)) {
        reaching.get(near).add(item);
        scenes[near] = null;
        print[near] ^= its;
        linked.get(near).set(site);
        linked.get(site).set(near);
      }
    }
  }

  /** What stands in a space, in the order in which it came. */
  public List<PlacedItem> in(int site) {
    return in.get(site);
  }

  /** What a newcomer to a space finds there now. */
  Scene scene(int site) {
    Scene known = scenes[site];
    if (known == null) {
      known = new Scene(sites.site(site), this);
      scenes[site] = known;
    }
    return known;
  }

  /** What stands in other spaces and can matter to what stands in one. */
  List<PlacedItem> reaching(int site) {
    return reaching.get(site);
  }

  /**
   * Fingerprint of everything that can matter to what may stand in a space: what is in it or
   * reaches into it, and where that wants room kept clear, all that matters there.
   */
  public long fingerprint(int site) {
    long all = print[site];
    Site at = sites.site(site);
    for (int i = 0; i < at.nearCount(); i++) {
      int near = at.near(i);
      if (near != site && demanding[near] > 0) {
        all = mix(all + near + 1L) ^ print[near];
      }
    }
    return all;
  }

  long filledMm3(int site) {
    return filledMm3[site];
  }

  private static long printOf(PlacedItem item, int site, int kind) {
    BoxMm box = item.box();
    long h = mix(((long) site << 32) + kind + 1L);
    h = mix(h ^ (((long) box.minXMm() << 40) ^ ((long) box.minYMm() << 20) ^ box.minZMm()));
    return mix(
        h
            ^ (((long) box.lengthMm() << 40) ^ ((long) box.widthMm() << 20) ^ box.heightMm())
            ^ ((long) item.placement().turn().name().hashCode() << 8));
  }

  /**
   * Spreads every bit over all others. The constants are those of SplitMix64 (G. L. Steele, D. Lea,
   * C. H. Flood, 2014), from memory; any good mixer would do.
   */
  public static long mix(long value) {
    long h = value;
    h = (h ^ (h >>> 30)) * 0xBF58476D1CE4E5B9L;
    h = (h ^ (h >>> 27)) * 0x94D049BB133111EBL;
    return h ^ (h >>> 31);
  }
}
