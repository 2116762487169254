package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Ute;

/** What a tank holds when the trip starts. */
public final class TankEditor implements Editor {
  private final Tank tank;
  private final Field start;

  /** An editor of a tank of a ute or of a module. */
  public TankEditor(Tank tank) {
    this.tank = tank;
    this.start =
        Field.figure(
            "At the start",
            Measures::contentMl,
            new Field.Range(0L, tank.capacityMl()),
            "0 to " + Words.litres(tank.capacityMl()));
  }

  /** The tanks of a scenario: those of the ute, then those of modules. */
  public static List<Tank> all(Scenario scenario) {
    List<Tank> tanks = new ArrayList<>(scenario.ute().fuelTanks());
    scenario.modules().forEach(choice -> tanks.addAll(choice.module().tanks()));
    return tanks;
  }

  @Override
  public String title() {
    return tank.title();
  }

  @Override
  public String deed() {
    return "fill " + tank.title();
  }

  @Override
  public List<Field> fields() {
    return List.of(start);
  }

  @Override
  public List<String> texts() {
    return List.of(Words.litres(tank.startMl()));
  }

  @Override
  public Design after(Design before, Form form) {
    return filled(before, tank, form.value(start));
  }

  /** A design in which a tank starts with so much. */
  public static Design filled(Design before, Tank tank, long startMl) {
    Tank filled =
        new Tank(
            tank.id(),
            tank.title(),
            tank.kind(),
            tank.capacityMl(),
            tank.densityGPerL(),
            tank.empty(),
            tank.box(),
            startMl);
    Scenario scenario = before.scenario();
    Ute ute = scenario.ute();
    List<ModuleChoice> modules = new ArrayList<>();
    for (ModuleChoice choice : scenario.modules()) {
      modules.add(
          Modules.with(
              choice, Modules.withTanks(choice.module(), with(choice.module().tanks(), filled))));
    }
    return new Design(
        scenario
            .withUte(Utes.with(ute, ute.empty(), with(ute.fuelTanks(), filled)))
            .withModules(modules),
        before.plan());
  }

  private static List<Tank> with(List<Tank> tanks, Tank filled) {
    return tanks.stream().map(one -> one.id().equals(filled.id()) ? filled : one).toList();
  }
}
