package kitstow.planner.rules;

import java.util.Optional;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Trailer;

/** The trailer on the ball while moving. */
final class Trailers {
  private Trailers() {}

  static Optional<Trailer> on(Loading loading, LoadState state) {
    if (state.kind() == LoadKind.MOVING && state.trailerId().isPresent()) {
      for (Trailer trailer : loading.scenario().trailers()) {
        if (trailer.id().equals(state.trailerId().get())) {
          return Optional.of(trailer);
        }
      }
    }
    return Optional.empty();
  }
}
