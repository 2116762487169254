package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;
import org.jspecify.annotations.Nullable;
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

  private @Nullable Packing scratchpad;

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

  private Reassign ruin(PlanningLoad load, Random random) {
    Packing known = scratchpad;
    Packing scratch =
        known != null && known.problem() == load.problem()
            ? known
            : new Packing(load.problem(), PackingScore.baysOf(load));
    scratchpad = scratch;
    scratch.follow(load);
    List<Integer> out = choose(load, scratch, random);
    for (int unit : out) {
      scratch.assign(unit, null, 0, scratch.rankOf(unit));
    }
    int how = random.nextInt(3);
    if (how == 0) {
      Collections.shuffle(out, random);
    } else if (how == 1) {
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
    List<PlacedItem> placed = packing.placed();
    List<Integer> out = new ArrayList<>();
    List<Integer> home = home(load, placed);
    List<Integer> pool = new ArrayList<>();
    int kind = random.nextInt(home.isEmpty() ? 3 : 5);
    if (kind >= 3) {
      int wanted = mustFirst(load, home, random);
      out.add(wanted);
      List<Space> takers = takers(load, packing, wanted);
      if (!takers.isEmpty()) {
        String target = takers.get(random.nextInt(takers.size())).id();
        addIf(load, placed, pool, item -> item.space().id().equals(target));
      }
    } else if (kind < 2 && !placed.isEmpty()) {
      PlacedItem centre = placed.get(random.nextInt(placed.size()));
      addIf(
          load,
          placed,
          pool,
          item ->
              kind == 0
                  ? item.space().id().equals(centre.space().id())
                  : item.box().minXMm() < centre.box().maxXMm()
                      && centre.box().minXMm() < item.box().maxXMm());
    } else {
      addIf(load, placed, pool, item -> true);
    }
    Collections.shuffle(pool, random);
    out.addAll(pool.subList(0, Math.min(count, pool.size())));
    for (int unit : home) {
      if (!out.contains(unit) && random.nextInt(3) == 0) {
        out.add(unit);
      }
    }
    return out;
  }

  private static void addIf(
      PlanningLoad load,
      List<PlacedItem> placed,
      List<Integer> pool,
      Predicate<PlacedItem> wanted) {
    for (PlacedItem item : placed) {
      if (wanted.test(item)) {
        pool.add(load.problem().indexOf(item.key()));
      }
    }
  }

  /** One of the must-take units at home if there is any, else any of them. */
  private static int mustFirst(PlanningLoad load, List<Integer> home, Random random) {
    List<Integer> must = new ArrayList<>(home);
    must.removeIf(unit -> load.items().get(unit).wanted().item().need() != Need.MUST);
    List<Integer> from = must.isEmpty() ? home : must;
    return from.get(random.nextInt(from.size()));
  }

  private static List<Space> takers(PlanningLoad load, Packing packing, int unit) {
    List<Space> takers = new ArrayList<>(packing.view().fromTheFront());
    takers.removeIf(space -> !packing.view().mayHold(load.items().get(unit).wanted(), space));
    return takers;
  }

  private static List<Integer> home(PlanningLoad load, List<PlacedItem> placed) {
    boolean[] there = new boolean[load.items().size()];
    for (PlacedItem item : placed) {
      there[load.problem().indexOf(item.key())] = true;
    }
    List<Integer> home = new ArrayList<>();
    for (int unit = 0; unit < there.length; unit++) {
      if (!there[unit]) {
        home.add(unit);
      }
    }
    return home;
  }
}
