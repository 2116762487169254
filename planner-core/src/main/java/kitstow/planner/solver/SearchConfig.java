package kitstow.planner.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import kitstow.planner.model.Scenario;
import org.optaplanner.core.api.domain.common.DomainAccessType;
import org.optaplanner.core.config.heuristic.selector.entity.EntitySelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.MoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.heuristic.selector.move.generic.ChangeMoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.generic.SwapMoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.value.ValueSelectorConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.phase.custom.CustomPhaseConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/** How OptaPlanner is set up: in code, since its XML cannot be read on Android. */
final class SearchConfig {
  private static final double RUIN_WEIGHT = 8.0;
  private static final double BAY_WEIGHT = 0.5;

  private SearchConfig() {}

  /**
   * One round of a search.
   *
   * @param stopped whether what comes before local search is to end
   */
  static SolverConfig of(Scenario scenario, Round round, BooleanSupplier stopped) {
    CustomPhaseConfig restarts = new CustomPhaseConfig();
    restarts.setCustomPhaseCommandList(
        List.of(new Restarts(round.seed(), round.restarts(), stopped)));
    TerminationConfig termination =
        new TerminationConfig()
            .withStepCountLimit((int) Math.min(Integer.MAX_VALUE, round.steps()))
            .withUnimprovedStepCountLimit((int) Math.min(Integer.MAX_VALUE, round.unimproved()));
    LocalSearchPhaseConfig search =
        new LocalSearchPhaseConfig()
            .withMoveSelectorConfig(moves(scenario))
            .withAcceptorConfig(
                new LocalSearchAcceptorConfig().withLateAcceptanceSize(round.lateness()))
            .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
            .withTerminationConfig(termination);
    SolverConfig config =
        new SolverConfig()
            .withSolutionClass(PlanningLoad.class)
            .withEntityClasses(PlanningItem.class, PlanningModule.class)
            .withDomainAccessType(DomainAccessType.REFLECTION)
            .withEnvironmentMode(EnvironmentMode.REPRODUCIBLE)
            .withRandomSeed(round.seed())
            .withScoreDirectorFactory(
                new ScoreDirectorFactoryConfig()
                    .withIncrementalScoreCalculatorClass(PackingScore.class));
    return round.restarts() > 0 ? config.withPhases(restarts, search) : config.withPhases(search);
  }

  /** The raw type is in OptaPlanner's own signature of a union of moves. */
  @SuppressWarnings("rawtypes")
  private static UnionMoveSelectorConfig moves(Scenario scenario) {
    List<MoveSelectorConfig> moves = new ArrayList<>();
    for (String variable : List.of("space", "stance", "rank")) {
      moves.add(
          new ChangeMoveSelectorConfig()
              .withEntitySelectorConfig(new EntitySelectorConfig(PlanningItem.class))
              .withValueSelectorConfig(new ValueSelectorConfig(variable))
              .withFixedProbabilityWeight(1.0));
    }
    moves.add(
        new SwapMoveSelectorConfig()
            .withEntitySelectorConfig(new EntitySelectorConfig(PlanningItem.class))
            .withFixedProbabilityWeight(1.0));
    moves.add(
        new MoveIteratorFactoryConfig()
            .withMoveIteratorFactoryClass(RuinMoves.class)
            .withFixedProbabilityWeight(RUIN_WEIGHT));
    if (!PackingProblem.openModules(scenario).isEmpty()) {
      moves.add(
          new ChangeMoveSelectorConfig()
              .withEntitySelectorConfig(new EntitySelectorConfig(PlanningModule.class))
              .withFixedProbabilityWeight(BAY_WEIGHT));
      moves.add(
          new SwapMoveSelectorConfig()
              .withEntitySelectorConfig(new EntitySelectorConfig(PlanningModule.class))
              .withFixedProbabilityWeight(BAY_WEIGHT));
    }
    return new UnionMoveSelectorConfig().withMoveSelectorList(moves);
  }
}
