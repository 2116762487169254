package kitstow.planner.json;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Ute;
import kitstow.planner.problem.Code;

/** Notes a limit of length or height on a leg that cannot be judged for want of a size. */
final class SizeCheck {
  private final Optional<Ute> ute;
  private final List<Trailer> trailers;

  SizeCheck(Optional<Ute> ute, List<Trailer> trailers) {
    this.ute = ute;
    this.trailers = List.copyOf(trailers);
  }

  void check(Optional<String> trailerId, Fields leg) {
    if (leg.has("mostLengthMm") && ute.isPresent() && !ute.get().foremostXMm().isPresent()) {
      note(leg, "mostLengthMm", "the ute has no foremostXMm");
    }
    for (Trailer trailer : trailers) {
      boolean on = trailerId.filter(trailer.id()::equals).isPresent();
      if (on && leg.has("mostLengthMm") && !trailer.behindBallMm().isPresent()) {
        note(leg, "mostLengthMm", Shown.quoted(trailer.id()) + " has no behindBallMm");
      }
      if (on && leg.has("mostHeightMm") && !trailer.heightMm().isPresent()) {
        note(leg, "mostHeightMm", Shown.quoted(trailer.id()) + " has no heightMm");
      }
    }
  }

  private static void note(Fields leg, String key, String lacks) {
    if (leg.good(key)) {
      leg.error(
          Code.NOT_MEASURED,
          key,
          "is a limit that cannot be judged: " + lacks,
          "measure it and give it there, or take the limit out");
    }
  }
}
