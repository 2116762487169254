package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Fills spaces from the front, always the foremost gap of all: into it goes the block of units that
 * is liked best there. Every base lies wholly on the floor or on one flat top.
 */
public final class Filling {
  private final List<Filler> spaces;
  private final int[] counts;
  private final ToDoubleFunction<Filler.Stand> cost;
  private final SplittableRandom random;

  /**
   * Spaces to fill.
   *
   * @param counts how many units there are of each kind
   * @param cost what it costs that a unit is somewhere; the less in all the better
   */
  public Filling(
      List<Filler> spaces,
      int[] counts,
      ToDoubleFunction<Filler.Stand> cost,
      SplittableRandom random) {
    this.spaces = List.copyOf(spaces);
    this.counts = counts.clone();
    this.cost = cost;
    this.random = random;
  }

  /** A filling as it stands. */
  private final class State {
    private final EmptyRooms[] rooms = new EmptyRooms[spaces.size()];
    private final int[] left;
    private final List<Filler.Stand> stands;
    private int unitsLeft;
    private double costs;
    private EmptyRooms.@Nullable EmptyRoom next;
    private int nextSpace;

    State() {
      this.left = counts.clone();
      this.stands = new ArrayList<>();
      this.unitsLeft = IntStream.of(counts).sum();
      for (int i = 0; i < rooms.length; i++) {
        rooms[i] = spaces.get(i).empty();
      }
      findNext();
    }

    State(State like) {
      this.left = like.left.clone();
      this.stands = new ArrayList<>(like.stands);
      this.unitsLeft = like.unitsLeft;
      this.costs = like.costs;
      for (int i = 0; i < rooms.length; i++) {
        rooms[i] = new EmptyRooms(like.rooms[i]);
      }
      this.next = like.next;
      this.nextSpace = like.nextSpace;
    }

    private void findNext() {
      next = null;
      if (unitsLeft == 0) {
        return;
      }
      for (int i = 0; i < rooms.length; i++) {
        EmptyRooms.EmptyRoom foremost = rooms[i].foremost();
        EmptyRooms.EmptyRoom best = next;
        if (foremost != null && (best == null || foremost.box().minXMm() < best.box().minXMm())) {
          next = foremost;
          nextSpace = i;
        }
      }
    }

    private void put(EmptyRooms.EmptyRoom into, Block block) {
      int before = stands.size();
      spaces.get(nextSpace).put(block, into, rooms[nextSpace], stands);
      block.takeFrom(left);
      unitsLeft -= stands.size() - before;
      for (int i = before; i < stands.size(); i++) {
        costs += cost.applyAsDouble(stands.get(i));
      }
      findNext();
    }

    private void giveUp(EmptyRooms.EmptyRoom gap) {
      rooms[nextSpace].giveUp(gap);
      findNext();
    }
  }

  /** A taste with its luck. */
  private final class Liking {
    private final Taste taste;
    private final double[][][] luck = new double[spaces.size()][][];
    private final Filler.Choice one = new Filler.Choice(1, random);

    Liking(Taste taste) {
      this.taste = taste;
      for (int i = 0; i < luck.length; i++) {
        luck[i] = spaces.get(i).luck(taste, random);
      }
    }

    /** Offers what goes into the foremost gap; gives up gaps into which nothing goes. */
    private EmptyRooms.@Nullable EmptyRoom offer(State state, Filler.Choice choice) {
      while (state.next != null) {
        EmptyRooms.EmptyRoom gap = state.next;
        choice.clear();
        spaces.get(state.nextSpace).offer(gap, state.left, luck[state.nextSpace], taste, choice);
        if (choice.count() > 0) {
          return gap;
        }
        state.giveUp(gap);
      }
      return null;
    }

    private void complete(State state) {
      EmptyRooms.EmptyRoom gap = offer(state, one);
      while (gap != null) {
        state.put(gap, one.get(0));
        gap = offer(state, one);
      }
    }
  }

  /** Fills once as is liked; the places in the order in which they are filled. */
  public Result once(Taste taste) {
    State state = new State();
    new Liking(taste).complete(state);
    return new Result(state.stands, state.costs);
  }

  /**
   * Fills with foresight: of what is liked in a gap, that is taken with which the whole turns out
   * best, several fillings side by side (beam search with greedy completion, after I. Araya, M.-C.
   * Riff, 2014; from memory).
   *
   * @param width fillings side by side
   * @param choices blocks tried in a gap
   */
  public Result wide(Taste taste, int width, int choices) {
    Liking liking = new Liking(taste);
    Filler.Choice choice = new Filler.Choice(choices, random);
    List<State> beam = new ArrayList<>();
    beam.add(new State());
    State best = null;
    while (!beam.isEmpty()) {
      List<State> next = new ArrayList<>();
      List<Double> ends = new ArrayList<>();
      for (State state : beam) {
        EmptyRooms.EmptyRoom gap = liking.offer(state, choice);
        if (gap == null) {
          best = best == null || state.costs < best.costs ? state : best;
          continue;
        }
        for (int i = 0; i < choice.count(); i++) {
          State child = new State(state);
          child.put(gap, choice.get(i));
          State end = new State(child);
          liking.complete(end);
          best = best == null || end.costs < best.costs ? end : best;
          if (ends.contains(end.costs)) {
            continue;
          }
          int at = 0;
          while (at < ends.size() && ends.get(at) <= end.costs) {
            at++;
          }
          ends.add(at, end.costs);
          next.add(at, child);
          if (next.size() > width) {
            next.remove(width);
            ends.remove(width);
          }
        }
      }
      beam = next;
    }
    return best == null ? new Result(List.of(), 0.0) : new Result(best.stands, best.costs);
  }

  /**
   * A filling.
   *
   * @param stands where what goes
   * @param costs what it costs in all
   */
  public record Result(List<Filler.Stand> stands, double costs) {}
}
