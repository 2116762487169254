package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Gives several units new spaces, poses and ranks at once. */
final class Reassign extends AbstractMove<PlanningLoad> {
  /** What one unit is given. */
  record Change(PlanningItem item, @Nullable String space, long stance, int rank) {
    static Change asItIs(PlanningItem item) {
      return new Change(item, item.space(), item.stance(), item.rank());
    }

    boolean changes() {
      return !Objects.equals(item.space(), space) || item.stance() != stance || item.rank() != rank;
    }
  }

  private final List<Change> changes;

  Reassign(List<Change> changes) {
    this.changes = List.copyOf(changes);
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<PlanningLoad> scoreDirector) {
    return changes.stream().anyMatch(Change::changes);
  }

  @Override
  protected AbstractMove<PlanningLoad> createUndoMove(ScoreDirector<PlanningLoad> scoreDirector) {
    List<Change> back = new ArrayList<>();
    for (Change change : changes) {
      back.add(Change.asItIs(change.item()));
    }
    return new Reassign(back);
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<PlanningLoad> scoreDirector) {
    for (Change change : changes) {
      PlanningItem item = change.item();
      scoreDirector.beforeVariableChanged(item, "space");
      item.setSpace(change.space());
      scoreDirector.afterVariableChanged(item, "space");
      scoreDirector.beforeVariableChanged(item, "stance");
      item.setStance(change.stance());
      scoreDirector.afterVariableChanged(item, "stance");
      scoreDirector.beforeVariableChanged(item, "rank");
      item.setRank(change.rank());
      scoreDirector.afterVariableChanged(item, "rank");
    }
  }

  @Override
  public Reassign rebase(ScoreDirector<PlanningLoad> destination) {
    List<Change> rebased = new ArrayList<>();
    for (Change change : changes) {
      PlanningItem item = destination.lookUpWorkingObject(change.item());
      rebased.add(new Change(item, change.space(), change.stance(), change.rank()));
    }
    return new Reassign(rebased);
  }

  @Override
  public Collection<?> getPlanningEntities() {
    return changes.stream().map(Change::item).collect(java.util.stream.Collectors.toList());
  }

  @Override
  public Collection<?> getPlanningValues() {
    return changes.stream().map(Change::space).collect(java.util.stream.Collectors.toList());
  }

  @Override
  public String toString() {
    return "reassign " + changes;
  }
}
