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
    Scenario scenario = before.scenario();
    Ute ute = scenario.ute();
    List<Tank> fuel =
        ute.fuelTanks().stream()
            .map(one -> one.id().equals(tank.id()) ? one.startingWith(startMl) : one)
            .toList();
    List<ModuleChoice> modules = new ArrayList<>();
    for (ModuleChoice choice : scenario.modules()) {
      modules.add(choice.withModule(choice.module().startingWith(tank.id(), startMl)));
    }
    return new Design(
        scenario.withUte(ute.withFuelTanks(fuel)).withModules(modules), before.plan());
  }
}
