package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import kitstow.planner.model.PlacedItem;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/**
 * Ruin and recreate: takes some units out (a whole space, a band across the vehicle, or at random,
 * always with some that stay home) and puts each back where the whole load scores best. Made by the
 * solver.
 */
public final class RuinMoves implements MoveIteratorFactory<PlanningLoad, Reassign> {
  private static final int LEAST = 3;
  private static final int MOST = 9;

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
        return ruin(scoreDirector.getWorkingSolution(), workingRandom);
      }
    };
  }

  private static Reassign ruin(PlanningLoad load, Random random) {
    Packing scratch = new Packing(load.problem(), PackingScore.baysOf(load));
    for (PlanningItem item : load.items()) {
      scratch.assign(item.index(), item.space(), item.pose(), item.rank());
    }
    List<Integer> out = choose(load, scratch, random);
    for (int unit : out) {
      scratch.assign(unit, null, 0, scratch.rankOf(unit));
    }
    Collections.shuffle(out, random);
    if (random.nextBoolean()) {
      out.sort((a, b) -> Long.compare(massG(load, b), massG(load, a)));
    }
    new Construction(load.problem()).insert(scratch, out, /* keepRanks= */ random.nextInt(3) > 0);
    List<Reassign.Change> changes = new ArrayList<>();
    for (int unit : out) {
      PlanningItem item = load.items().get(unit);
      changes.add(new Reassign.Change(item, scratch.spaceOf(unit), 0, scratch.rankOf(unit)));
    }
    return new Reassign(changes);
  }

  private static long massG(PlanningLoad load, int unit) {
    return load.items().get(unit).wanted().item().mass().massG();
  }

  private static List<Integer> choose(PlanningLoad load, Packing packing, Random random) {
    int count = LEAST + random.nextInt(MOST - LEAST + 1);
    List<Integer> pool = new ArrayList<>();
    List<PlacedItem> placed = packing.placed();
    int kind = random.nextInt(3);
    if (!placed.isEmpty() && kind < 2) {
      PlacedItem centre = placed.get(random.nextInt(placed.size()));
      for (PlacedItem item : placed) {
        boolean near =
            kind == 0
                ? item.space().id().equals(centre.space().id())
                : item.box().minXMm() < centre.box().maxXMm()
                    && centre.box().minXMm() < item.box().maxXMm();
        if (near) {
          pool.add(load.problem().indexOf(item.key()));
        }
      }
    } else {
      for (PlanningItem item : load.items()) {
        pool.add(item.index());
      }
    }
    Collections.shuffle(pool, random);
    List<Integer> out = new ArrayList<>(pool.subList(0, Math.min(count, pool.size())));
    addSomeFromHome(load, placed, random, out);
    return out;
  }

  private static void addSomeFromHome(
      PlanningLoad load, List<PlacedItem> placed, Random random, List<Integer> out) {
    boolean[] there = new boolean[load.items().size()];
    for (PlacedItem item : placed) {
      there[load.problem().indexOf(item.key())] = true;
    }
    for (int unit = 0; unit < there.length; unit++) {
      if (!there[unit] && !out.contains(unit) && random.nextInt(3) == 0) {
        out.add(unit);
      }
    }
  }
}
