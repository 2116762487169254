package kitstow.planner.packing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitstow.planner.model.Item;
import kitstow.planner.model.Mark;
import kitstow.planner.model.PlacedItem;

/**
 * The separation matrix: which marks may not ride together. Pairs with fuel or gas are judged by
 * shared air, all others by space. Common practice; the gas and petrol rows follow state guidance
 * [S97, S98, S100], ignition near petrol vapour [S100].
 */
public final class Company {
  /** Two marks that do not go together. */
  public record Pair(Mark one, Mark other) {
    /** Whether the pair is judged by shared air instead of by space. */
    public boolean byAir() {
      return one == Mark.FUEL || one == Mark.GAS || other == Mark.FUEL || other == Mark.GAS;
    }

    /** The pair in words. */
    public String text() {
      return word(one) + " with " + word(other) + (byAir() ? " in the same air" : " in one space");
    }

    /** Where one of the two had better go. */
    public String apart() {
      return byAir() ? "that shares no air with the other" : "of its own";
    }

    private static String word(Mark mark) {
      return mark.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  private static final List<Pair> HARD =
      List.of(
          new Pair(Mark.FOOD, Mark.FUEL),
          new Pair(Mark.FOOD, Mark.OIL),
          new Pair(Mark.FOOD, Mark.WET),
          new Pair(Mark.FUEL, Mark.GAS),
          new Pair(Mark.FUEL, Mark.ELECTRIC),
          new Pair(Mark.FUEL, Mark.FRAGILE),
          new Pair(Mark.GAS, Mark.ELECTRIC),
          new Pair(Mark.GAS, Mark.FRAGILE),
          new Pair(Mark.ELECTRIC, Mark.WET),
          new Pair(Mark.HEAVY_TOOL, Mark.FOOD),
          new Pair(Mark.HEAVY_TOOL, Mark.GAS),
          new Pair(Mark.HEAVY_TOOL, Mark.ELECTRIC),
          new Pair(Mark.HEAVY_TOOL, Mark.FRAGILE),
          new Pair(Mark.BEDDING, Mark.FUEL),
          new Pair(Mark.BEDDING, Mark.OIL),
          new Pair(Mark.BEDDING, Mark.WET));

  private static final List<Pair> SOFT =
      List.of(
          new Pair(Mark.FOOD, Mark.GAS),
          new Pair(Mark.FOOD, Mark.ELECTRIC),
          new Pair(Mark.FUEL, Mark.OIL),
          new Pair(Mark.FUEL, Mark.WET),
          new Pair(Mark.GAS, Mark.OIL),
          new Pair(Mark.GAS, Mark.WET),
          new Pair(Mark.ELECTRIC, Mark.OIL),
          new Pair(Mark.ELECTRIC, Mark.FRAGILE),
          new Pair(Mark.HEAVY_TOOL, Mark.FUEL),
          new Pair(Mark.HEAVY_TOOL, Mark.OIL),
          new Pair(Mark.BEDDING, Mark.GAS));

  private Company() {}

  /** The first pair of marks for which two items may never be where they are. */
  public static Optional<Pair> hardPair(PlacedItem a, PlacedItem b) {
    return firstIn(HARD, a, b);
  }

  /** The first pair of marks for which two items had better not be where they are. */
  public static Optional<Pair> softPair(PlacedItem a, PlacedItem b) {
    return firstIn(SOFT, a, b);
  }

  /** Whether two items may never be in one space. */
  static boolean hardPair(Item a, Item b) {
    return HARD.stream().anyMatch(pair -> marked(pair, a, b) || marked(pair, b, a));
  }

  /** Whether two items may never be in the same air, though in spaces of their own. */
  static boolean hardPairByAir(Item a, Item b) {
    if (a.marks().isEmpty() || b.marks().isEmpty()) {
      return false;
    }
    for (Pair pair : HARD) {
      if (pair.byAir() && (marked(pair, a, b) || marked(pair, b, a))) {
        return true;
      }
    }
    return false;
  }

  private static Optional<Pair> firstIn(List<Pair> pairs, PlacedItem a, PlacedItem b) {
    boolean sameAir = a.space().airId().equals(b.space().airId());
    boolean sameSpace = a.space().id().equals(b.space().id());
    if (!sameAir && !sameSpace) {
      return Optional.empty();
    }
    for (Pair pair : pairs) {
      boolean together = pair.byAir() ? sameAir : sameSpace;
      if (together && (marked(pair, a.item(), b.item()) || marked(pair, b.item(), a.item()))) {
        return Optional.of(pair);
      }
    }
    return Optional.empty();
  }

  private static boolean marked(Pair pair, Item a, Item b) {
    return a.marks().contains(pair.one()) && b.marks().contains(pair.other());
  }
}
