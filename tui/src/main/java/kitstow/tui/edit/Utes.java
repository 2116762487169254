package kitstow.tui.edit;

import java.util.List;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Ute;

/** Utes with something changed. */
final class Utes {
  private Utes() {}

  static Ute with(Ute ute, EmptyAxleLoads empty, List<Tank> tanks) {
    return with(ute, empty, tanks, ute.parts());
  }

  static Ute with(Ute ute, List<RemovablePart> parts) {
    return with(ute, ute.empty(), ute.fuelTanks(), parts);
  }

  private static Ute with(
      Ute u, EmptyAxleLoads empty, List<Tank> tanks, List<RemovablePart> parts) {
    return new Ute(
        u.id(),
        u.title(),
        u.source(),
        u.wheelbaseMm(),
        u.frontTrackMm(),
        u.rearTrackMm(),
        empty,
        u.emptyHeightMm(),
        u.emptyHeightSource(),
        u.limits(),
        u.frontTyres(),
        u.rearTyres(),
        u.seats(),
        tanks,
        u.ball(),
        parts,
        u.springHangers(),
        u.rearmostXMm(),
        u.cabRoofZMm(),
        u.bays(),
        u.spaces());
  }
}
