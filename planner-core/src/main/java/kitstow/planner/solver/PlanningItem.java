package kitstow.planner.solver;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** One unit of gear as the search sees it. Annotations stand on fields for Android's sake. */
@PlanningEntity
class PlanningItem {
  @PlanningId private String key;
  private int index;

  /** Space id; null stays home. */
  @PlanningVariable(valueRangeProviderRefs = "spaces", nullable = true)
  private @Nullable String space;

  /** How it is to stand; see {@link Stance}. */
  @PlanningVariable(valueRangeProviderRefs = "stances")
  private Long stance = Stance.ANY;

  /** Place in the order in which a space is filled; ties go to the lower index. */
  @PlanningVariable(valueRangeProviderRefs = "ranks")
  private Integer rank = 0;

  /** For the solver's cloning. */
  PlanningItem() {
    this.key = "";
  }

  PlanningItem(int index, String key) {
    this.key = key;
    this.index = index;
    this.rank = index;
  }

  String key() {
    return key;
  }

  int index() {
    return index;
  }

  @Nullable String space() {
    return space;
  }

  void setSpace(@Nullable String value) {
    space = value;
  }

  long stance() {
    return stance;
  }

  void setStance(long value) {
    stance = value;
  }

  int rank() {
    return rank;
  }

  void setRank(int value) {
    rank = value;
  }

  @Override
  public String toString() {
    return key;
  }
}
