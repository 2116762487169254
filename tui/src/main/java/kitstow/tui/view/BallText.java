package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.VehiclePointMm;
import kitstow.planner.statics.BallOnAxles;

/** What each trailer's ball mass does to the axles. */
final class BallText {
  private BallText() {}

  static List<String> lines(Loading loading, Page page) {
    List<String> lines = new ArrayList<>();
    Optional<VehiclePointMm> ball = loading.scenario().ute().ball();
    for (Trailer trailer : loading.scenario().trailers()) {
      ball.map(at -> BallOnAxles.of(loading.scenario().ute(), at, trailer))
          .ifPresent(shares -> lines.addAll(page.paragraph("", of(trailer, shares))));
    }
    return lines;
  }

  private static String of(Trailer trailer, BallOnAxles shares) {
    return trailer.title()
        + ": its "
        + Figures.loadKg(shares.ballKg())
        + " kg on the ball, "
        + Figures.near(shares.behindRearAxleMm(), 0)
        + " mm behind the rear axle, put "
        + Figures.loadKg(shares.rearKg())
        + " kg on the rear axle and "
        + (shares.frontKg() < 0.0 ? "take " : "put ")
        + Figures.near(Math.abs(shares.frontKg()), 1)
        + (shares.frontKg() < 0.0 ? " kg off the front axle." : " kg on the front axle.");
  }
}
