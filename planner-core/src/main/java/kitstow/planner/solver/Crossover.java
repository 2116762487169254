package kitstow.planner.solver;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Fills some spaces of a packing as another has them, whole: what the other has there comes from
 * wherever it is, and what loses its place by that looks for a new one (crossover by groups; E.
 * Falkenauer, "A hybrid grouping genetic algorithm for bin packing", 1996, from memory). Single
 * moves seldom lead from one good filling of a space to another, since all between are worse.
 */
final class Crossover {
  /** How often one space is taken over; else it is two or three. */
  private static final double ONE_SPACE = 0.7;

  /** How often what is left is put back by its mass; else in any order. */
  private static final double BY_MASS = 0.75;

  private record Transfer(int unit, long stance, int site) {}

  private final Packing packing;
  private final List<Transfer> transfers;
  private final List<Integer> out;

  private Crossover(Packing packing, List<Transfer> transfers, List<Integer> out) {
    this.packing = packing;
    this.transfers = transfers;
    this.out = out;
  }

  /** Chooses spaces in which the two differ; null where they do not, or modules are elsewhere. */
  static @Nullable Crossover of(Packing packing, Elites.Elite other, Random random) {
    if (!other.bays().equals(packing.wantedBays())) {
      return null;
    }
    List<Integer> sites = other.differences(packing);
    if (sites.isEmpty()) {
      return null;
    }
    Collections.shuffle(sites, random);
    int most = random.nextDouble() < ONE_SPACE ? 1 : 2 + random.nextInt(2);
    List<Integer> chosen = sites.subList(0, Math.min(most, sites.size()));
    List<Transfer> transfers = transfers(packing, other, chosen, random);
    Set<Integer> out = new LinkedHashSet<>();
    transfers.forEach(transfer -> out.add(transfer.unit()));
    for (int unit = 0; unit < packing.problem().units().size(); unit++) {
      boolean loose = packing.placeOf(unit) == null || chosen.contains(packing.siteOf(unit));
      if (loose && !packing.problem().isPinned(unit)) {
        out.add(unit);
      }
    }
    return new Crossover(packing, transfers, new ArrayList<>(out));
  }

  /** Which unit of its kind goes where the other has one: rather one that is there already. */
  private static List<Transfer> transfers(
      Packing packing, Elites.Elite other, List<Integer> sites, Random random) {
    List<Integer> units = new ArrayList<>();
    for (int unit = 0; unit < packing.problem().units().size(); unit++) {
      if (!packing.problem().isPinned(unit)) {
        units.add(unit);
      }
    }
    Collections.shuffle(units, random);
    units.sort(Comparator.comparing(unit -> !sites.contains(packing.siteOf(unit))));
    Map<Integer, Deque<Integer>> byKind = new HashMap<>();
    for (int unit : units) {
      byKind.computeIfAbsent(packing.problem().kindOf(unit), k -> new ArrayDeque<>()).add(unit);
    }
    List<Transfer> transfers = new ArrayList<>();
    for (int site : sites) {
      for (Elites.Stand stand : other.spaces().get(site)) {
        Integer unit = byKind.getOrDefault(stand.kind(), new ArrayDeque<>()).poll();
        if (unit != null) {
          transfers.add(new Transfer(unit, stand.stance(), site));
        }
      }
    }
    return transfers;
  }

  /** Units that are taken out, all that are home among them. */
  List<Integer> out() {
    return out;
  }

  /**
   * Takes them out and fills the spaces.
   *
   * @return those that have no place yet, in the order in which they are to be put back
   */
  List<Integer> carryOut(Random random) {
    packing.takeOut(out);
    LoadSums sums = packing.sums(out);
    Set<Integer> left = new LinkedHashSet<>(out);
    for (Transfer transfer : transfers) {
      if (packing.putAt(transfer.unit(), transfer.stance(), transfer.site(), sums)) {
        left.remove(transfer.unit());
      }
    }
    List<Integer> order = new ArrayList<>(left);
    Collections.shuffle(order, random);
    if (random.nextDouble() < BY_MASS) {
      order.sort(Comparator.comparingLong(unit -> -massG(unit)));
    }
    return order;
  }

  private long massG(int unit) {
    return packing.problem().units().get(unit).item().mass().massG();
  }
}
