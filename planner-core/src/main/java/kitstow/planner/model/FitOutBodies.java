package kitstow.planner.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Bodies of modules and tanks, where the rig has them. */
final class FitOutBodies {
  private final Rig rig;
  private final BodyList bodies;

  FitOutBodies(Rig rig, BodyList bodies) {
    this.rig = rig;
    this.bodies = bodies;
  }

  void addModulesAndTanks() {
    for (FittedModule fitted : rig.modules().values()) {
      FitOutModule module = fitted.module();
      Optional<Zone> zone = Optional.of(fitted.bay().zone());
      List<String> inside = new ArrayList<>(List.of(module.id()));
      inside.addAll(fitted.inModules());
      bodies.add(
          Draft.of(module.id(), BodyKind.MODULE, module.title(), fitted.box(), module.fixed())
              .toleranceKey("module:" + module.entryId())
              .zone(zone)
              .movesWith(fitted.movesWith())
              .inModules(inside));
      if (module.moving().massG() > 0L) {
        List<String> moves = new ArrayList<>();
        if (module.slide().isPresent()) {
          moves.add(module.id());
        }
        moves.addAll(fitted.movesWith());
        bodies.add(
            new Draft(
                    module.id() + Loading.MOVING,
                    module.id(),
                    BodyKind.MODULE,
                    module.title() + ", moving part",
                    fitted.box(),
                    module.moving())
                .toleranceKey("module:" + module.entryId())
                .zone(zone)
                .movesWith(moves)
                .inModules(inside));
      }
    }
    for (FittedTank fitted : rig.tanks().values()) {
      Tank tank = fitted.tank();
      Optional<Zone> zone =
          fitted.moduleId().map(rig.modules()::get).map(module -> module.bay().zone());
      if (tank.empty().massG() > 0L) {
        bodies.add(
            Draft.of(tank.id(), BodyKind.TANK, tank.title(), fitted.box(), tank.empty())
                .toleranceKey(toleranceKey(fitted))
                .zone(zone)
                .movesWith(fitted.movesWith())
                .inModules(fitted.inModules()));
      }
      long fullG = tank.massOfG(tank.capacityMl());
      long toleranceG = fullG * rig.scenario().settings().liquidTolerancePermille() / 1000L;
      bodies.add(
          new Draft(
                  tank.id() + Loading.LIQUID,
                  tank.id(),
                  BodyKind.LIQUID,
                  tank.title() + ", content",
                  fitted.box(),
                  new KnownMass(fullG, MassSource.LABEL, toleranceG))
              .zone(zone)
              .movesWith(fitted.movesWith())
              .inModules(fitted.inModules()));
    }
  }

  /** A tank of a module is the same tank in every module of that entry. */
  private String toleranceKey(FittedTank fitted) {
    String id = fitted.tank().id();
    return fitted
        .moduleId()
        .map(rig.modules()::get)
        .map(host -> "module:" + host.module().entryId() + "/" + id.substring(id.indexOf('/') + 1))
        .orElse(id);
  }
}
