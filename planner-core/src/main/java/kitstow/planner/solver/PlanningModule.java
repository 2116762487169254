package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** A module whose bay is open, as the search sees it. */
@PlanningEntity
class PlanningModule {
  /** Stands for "left out". */
  static final String NO_BAY = "";

  @PlanningId private String id;

  @ValueRangeProvider(id = "bays")
  private List<String> choices = new ArrayList<>();

  @PlanningVariable(valueRangeProviderRefs = "bays")
  private String bay = NO_BAY;

  /** For the solver's cloning. */
  PlanningModule() {
    this.id = "";
  }

  PlanningModule(ModuleChoice choice) {
    this.id = choice.module().id();
    this.choices.addAll(choice.bayIds());
    if (choice.need() != Need.MUST) {
      this.choices.add(NO_BAY);
    }
    this.bay = choice.bayIds().get(0);
  }

  String id() {
    return id;
  }

  String bay() {
    return bay;
  }

  void setBay(String value) {
    bay = value;
  }

  @Override
  public String toString() {
    return id;
  }
}
