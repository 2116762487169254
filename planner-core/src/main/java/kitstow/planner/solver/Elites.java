package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.packing.Ground;
import kitstow.planner.packing.Wanted;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/**
 * Packings in which rounds of a search have ended: the best few of those that are not alike, so
 * that one can take over what another does well (an elite set; F. Glover, "A template for scatter
 * search and path relinking", 1998, from memory).
 */
final class Elites {
  private static final int MOST = 8;

  /** Packings are alike that differ in at most such a share of the spaces that hold anything. */
  private static final double ALIKE = 0.3;

  /** How a unit of a kind stands in a space. */
  record Stand(int kind, long stance) {}

  /**
   * One of them. Units that are pinned to a place are no part of it.
   *
   * @param spaces what stands in each space, in the order in which it goes down
   * @param contents a number for each space that tells what is in it, wherever it stands there
   */
  record Elite(
      Map<String, String> bays,
      BendableLongScore score,
      List<List<Stand>> spaces,
      List<Long> contents) {
    /** As a packing is now. */
    static Elite of(Packing packing) {
      List<List<Stand>> spaces = new ArrayList<>();
      for (int site = 0; site < packing.view().siteCount(); site++) {
        spaces.add(new ArrayList<>());
      }
      for (int unit : packing.inOrder()) {
        Wanted wanted = packing.problem().units().get(unit);
        PlacedItem item = packing.placeOf(unit);
        if (item != null && !packing.problem().isPinned(unit)) {
          long stance = Stance.asIn(wanted, item.placement());
          spaces.get(packing.siteOf(unit)).add(new Stand(packing.problem().kindOf(unit), stance));
        }
      }
      return new Elite(packing.wantedBays(), packing.score(Aim.ALL), spaces, contentsOf(packing));
    }

    private static List<Long> contentsOf(Packing packing) {
      long[] sums = new long[packing.view().siteCount()];
      for (int unit = 0; unit < packing.problem().units().size(); unit++) {
        if (packing.placeOf(unit) != null && !packing.problem().isPinned(unit)) {
          sums[packing.siteOf(unit)] += Ground.mix(packing.problem().kindOf(unit) + 1L);
        }
      }
      List<Long> contents = new ArrayList<>(sums.length);
      for (long sum : sums) {
        contents.add(sum);
      }
      return contents;
    }

    /** Spaces in which a packing with the same bays holds other kinds, or other numbers of them. */
    List<Integer> differences(Packing packing) {
      return differences(contentsOf(packing));
    }

    private List<Integer> differences(List<Long> others) {
      List<Integer> sites = new ArrayList<>();
      for (int site = 0; site < others.size(); site++) {
        if (!contents.get(site).equals(others.get(site))) {
          sites.add(site);
        }
      }
      return sites;
    }

    private boolean isLike(Elite other) {
      if (!bays.equals(other.bays)) {
        return false;
      }
      long held = spaces.stream().filter(space -> !space.isEmpty()).count();
      return differences(other.contents).size() <= ALIKE * held;
    }

    private boolean isBetterThan(Elite other) {
      return score.compareTo(other.score) > 0;
    }
  }

  private final List<Elite> all = new ArrayList<>();

  /** Takes in a packing if it is better than one that is like it, or one of the best few. */
  void add(Packing packing) {
    Elite one = Elite.of(packing);
    for (int i = 0; i < all.size(); i++) {
      if (one.isLike(all.get(i))) {
        if (one.isBetterThan(all.get(i))) {
          all.set(i, one);
        }
        return;
      }
    }
    all.add(one);
    if (all.size() > MOST) {
      all.sort(Comparator.comparing(Elite::score));
      all.remove(0);
    }
  }

  /** One of them at random; null while there are not two yet, since one alone offers no choice. */
  @Nullable Elite any(Random random) {
    return all.size() < 2 ? null : all.get(random.nextInt(all.size()));
  }

  /** All of them. */
  List<Elite> all() {
    return all;
  }
}
