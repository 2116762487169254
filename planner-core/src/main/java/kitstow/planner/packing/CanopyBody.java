package kitstow.planner.packing;

import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Scenario;

/** The canopy as a body that nothing outside it may reach into. */
public final class CanopyBody {
  private CanopyBody() {}

  /** Outside of the canopy in the vehicle frame; absent without one. */
  public static Optional<BoxMm> of(Scenario scenario) {
    return scenario.tray().flatMap(tray -> scenario.canopy().map(one -> one.outsideOn(tray)));
  }
}
