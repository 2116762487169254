package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.Trailer;
import kitstow.planner.problem.Code;

/** Reads the trailers of a scenario. */
final class TrailerReader {
  private final Figures figures;
  private final Known known;

  TrailerReader(Figures figures, Known known) {
    this.figures = figures;
    this.known = known;
  }

  List<Trailer> read(Fields scenario) {
    List<Trailer> trailers = new ArrayList<>();
    for (Fields fields : scenario.objectsIfGiven("trailers")) {
      String id = fields.id("id");
      known.trailers.claim(id, fields.place("id"));
      String title = fields.text("title", "name it as it shall be shown");
      long totalG = fields.number("totalKg", Measure.VEHICLE_LIMIT);
      long ballG = fields.number("ballKg", Measure.RATING);
      MassSource source = Figures.source(fields);
      OptionalLong totalToleranceG = Figures.tolerance(fields, "totalToleranceKg");
      OptionalLong ballToleranceG = Figures.tolerance(fields, "ballToleranceKg");
      boolean braked = fields.flag("braked");
      OptionalInt behindBallMm = fields.wholeIfGiven("behindBallMm", Measure.SIZE);
      OptionalInt heightMm = fields.wholeIfGiven("heightMm", Measure.SIZE);
      fields.done();
      if (fields.good("totalKg", "ballKg") && ballG > totalG) {
        fields.error(
            Code.BALL_ABOVE_TRAILER,
            "ballKg",
            "is " + Decimals.kg(ballG) + ", must be within the trailer's " + Decimals.kg(totalG),
            "the ball carries a part of the trailer, often about a tenth");
      }
      trailers.add(
          new Trailer(
              id,
              title,
              figures.known(totalG, source, totalToleranceG),
              figures.known(ballG, source, ballToleranceG),
              braked,
              behindBallMm,
              heightMm));
    }
    if (!scenario.idsKnown("trailers")) {
      known.trailers.incomplete();
    }
    return trailers;
  }
}
