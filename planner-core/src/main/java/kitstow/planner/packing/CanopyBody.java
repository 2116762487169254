package kitstow.planner.packing;

import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Tray;

/** The canopy as a body that nothing outside it may reach into. */
public final class CanopyBody {
  private CanopyBody() {}

  /** Outside of the canopy in the vehicle frame; absent without one. */
  public static Optional<BoxMm> of(Scenario scenario) {
    if (!scenario.tray().isPresent() || !scenario.canopy().isPresent()) {
      return Optional.empty();
    }
    Tray tray = scenario.tray().get();
    Canopy canopy = scenario.canopy().get();
    return Optional.of(
        BoxMm.at(
            new PointMm(
                tray.frontXMm() + canopy.fromTrayFrontMm(),
                -canopy.size().widthMm() / 2,
                tray.deckZMm()),
            canopy.size()));
  }
}
