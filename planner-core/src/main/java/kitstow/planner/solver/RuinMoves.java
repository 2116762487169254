package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/**
 * Ruin and recreate: takes some units out, chosen by {@link Ruin}, and puts each back where the
 * whole load scores best, or fills whole spaces anew; or fills some as another packing has them.
 * Made by the solver.
 */
public final class RuinMoves implements MoveIteratorFactory<PlanningLoad, Reassign> {
  private static final double BLINK = 0.03;

  /** How often what stays in the spaces of what is taken out is held where it stands. */
  private static final double HELD = 0.5;

  /** How often spaces are filled as another packing has them, where there are such. */
  private static final double CROSSED = 0.15;

  /** Ruins tried until one changes something; a small one often puts all back as it was. */
  private static final int TRIES = 4;

  /** Instead of a ruin that comes to nothing; the solver passes it over. */
  private static final Reassign NOTHING = new Reassign(List.of());

  /** For the solver. */
  public RuinMoves() {}

  @Override
  public long getSize(ScoreDirector<PlanningLoad> scoreDirector) {
    return scoreDirector.getWorkingSolution().items().size();
  }

  @Override
  public Iterator<Reassign> createOriginalMoveIterator(ScoreDirector<PlanningLoad> scoreDirector) {
    return createRandomMoveIterator(scoreDirector, new Random(0L));
  }

  @Override
  public Iterator<Reassign> createRandomMoveIterator(
      ScoreDirector<PlanningLoad> scoreDirector, Random workingRandom) {
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return true;
      }

      @Override
      public Reassign next() {
        return move(scoreDirector.getWorkingSolution(), workingRandom);
      }
    };
  }

  private static Reassign move(PlanningLoad load, Random random) {
    Elites elites = load.problem().elites();
    Elites.Elite other =
        elites != null && random.nextDouble() < CROSSED ? elites.any(random) : null;
    if (other != null) {
      Packing scratch = load.problem().packingOf(load);
      Crossover crossover = Crossover.of(scratch, other, random);
      if (crossover != null) {
        return cross(load, scratch, crossover, random);
      }
    }
    return ruin(load, random);
  }

  /** Spaces filled as another packing has them. */
  private static Reassign cross(
      PlanningLoad load, Packing scratch, Crossover crossover, Random random) {
    List<Integer> changed = new ArrayList<>(crossover.out());
    if (random.nextDouble() < HELD) {
      changed.addAll(Held.beside(scratch, crossover.out()));
    }
    Prospect prospect = Prospect.of(scratch, crossover.out());
    List<Integer> left = crossover.carryOut(random);
    boolean hopeful =
        new Construction(load.problem())
            .insert(scratch, left, random, BLINK, wild(random), prospect);
    return hopeful ? reassigned(load, scratch, changed) : NOTHING;
  }

  /** A ruin after which something stands elsewhere than before, if one is soon found. */
  private static Reassign ruin(PlanningLoad load, Random random) {
    for (int tries = 1; ; tries++) {
      Packing scratch = load.problem().packingOf(load);
      Ruin ruin = Ruin.of(scratch, random);
      List<Integer> out = ruin.inOrder();
      Map<Integer, Optional<Placement>> before = placesOf(scratch, out);
      List<Integer> changed = new ArrayList<>(out);
      if (random.nextDouble() < HELD) {
        changed.addAll(Held.beside(scratch, out));
      }
      if (!recreate(scratch, ruin, out, random, Prospect.of(scratch, out))) {
        return NOTHING;
      }
      if (tries == TRIES || !placesOf(scratch, out).equals(before)) {
        return reassigned(load, scratch, changed);
      }
    }
  }

  private static Map<Integer, Optional<Placement>> placesOf(Packing packing, List<Integer> units) {
    Map<Integer, Optional<Placement>> places = new HashMap<>();
    for (int unit : units) {
      PlacedItem item = packing.placeOf(unit);
      places.put(unit, item == null ? Optional.empty() : Optional.of(item.placement()));
    }
    return places;
  }

  /** Whether the units that are out have each been given a place, if there is one. */
  static boolean recreate(
      Packing scratch, Ruin ruin, List<Integer> out, Random random, @Nullable Prospect prospect) {
    PackingProblem problem = scratch.problem();
    scratch.takeOut(out);
    List<Integer> left = out;
    if (!ruin.refilled().isEmpty()) {
      boolean roomy = problem.aim().fills() || (ruin.leavesHome() && random.nextBoolean());
      left = new Refill(scratch, random, roomy).fill(ruin.refilled(), out, /* mayLook= */ true);
    }
    return new Construction(problem).insert(scratch, left, random, BLINK, wild(random), prospect);
  }

  private static Reassign reassigned(PlanningLoad load, Packing scratch, List<Integer> units) {
    List<Reassign.Change> changes = new ArrayList<>();
    for (int unit : units) {
      PlanningItem item = load.items().get(unit);
      changes.add(
          new Reassign.Change(
              item, scratch.spaceOf(unit), scratch.stanceOf(unit), scratch.rankOf(unit)));
    }
    return new Reassign(changes);
  }

  /** Half of the time each unit takes its best place, else now and then one that is worse. */
  private static double wild(Random random) {
    return switch (random.nextInt(10)) {
      case 0 -> 1.0;
      case 1 -> 4.0;
      default -> 0.0;
    };
  }
}
