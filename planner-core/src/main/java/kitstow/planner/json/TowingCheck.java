package kitstow.planner.json;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Ute;
import kitstow.planner.problem.Code;

/** Notes legs with a trailer behind a ute that has no ball, or no limit to judge it by. */
final class TowingCheck {
  private final Optional<Ute> ute;
  private final Map<String, Trailer> trailers = new HashMap<>();

  TowingCheck(Optional<Ute> ute) {
    this.ute = ute;
  }

  void add(Trailer trailer) {
    trailers.putIfAbsent(trailer.id(), trailer);
  }

  void check(String trailerId, Fields leg) {
    Trailer trailer = trailers.get(trailerId);
    if (ute.isPresent() && trailer != null && leg.good("trailer")) {
      String lacks = lacks(ute.get(), trailer);
      if (!lacks.isEmpty()) {
        leg.error(
            Code.NO_TOWING,
            "trailer",
            "is " + Shown.quoted(trailerId) + " behind a ute without " + lacks,
            "use a ute whose entry has it, or drive the leg without a trailer");
      }
    }
  }

  private static String lacks(Ute ute, Trailer trailer) {
    if (!ute.ball().isPresent()) {
      return "a ball (ballMm)";
    }
    if (!ute.limits().ballG().isPresent()) {
      return "a limit of ball mass (limits.ballKg)";
    }
    if (!ute.limits().gcmG().isPresent()) {
      return "a gross combination mass (limits.gcmKg)";
    }
    if (trailer.braked()) {
      return !ute.limits().brakedTowingG().isPresent()
          ? "a limit for braked trailers (limits.brakedTowingKg)"
          : "";
    }
    return !ute.limits().unbrakedTowingG().isPresent()
        ? "a limit for unbraked trailers (limits.unbrakedTowingKg)"
        : "";
  }
}
