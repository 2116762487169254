package kitstow.planner.json;

import kitstow.planner.model.Accessory;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Ute;

/** The entries of all types that a scenario may name. */
final class Shelves {
  private final Figures figures;
  private final Faults faults;
  private final Shelf<Ute> utes;
  private final Shelf<Tray> trays;
  private final Shelf<Canopy> canopies;
  private final Shelf<FitOutModule> modules;
  private final Shelf<Accessory> accessories;
  private final Shelf<Item> gear;

  Shelves(Figures figures, Faults faults) {
    this.figures = figures;
    this.faults = faults;
    this.utes = new Shelf<>("utes", Ute::id, faults);
    this.trays = new Shelf<>("trays", Tray::id, faults);
    this.canopies = new Shelf<>("canopies", Canopy::id, faults);
    this.modules = new Shelf<>("modules", FitOutModule::id, faults);
    this.accessories = new Shelf<>("accessories", Accessory::id, faults);
    this.gear = new Shelf<>("gear", Item::id, faults);
  }

  /** Puts in a catalogue. */
  void stock(Catalogue catalogue) {
    Restated restated = new Restated(figures);
    utes.stock(catalogue.utes(), restated::ute);
    trays.stock(catalogue.trays(), restated::tray);
    canopies.stock(catalogue.canopies(), restated::canopy);
    modules.stock(catalogue.modules(), restated::module);
    accessories.stock(catalogue.accessories(), restated::accessory);
    gear.stock(catalogue.gear(), restated::item);
  }

  /** Reads lists of entries. */
  void read(Fields lists) {
    BodyReader bodies = new BodyReader(figures, faults);
    utes.read(lists, new UteReader(figures, faults)::read);
    trays.read(lists, bodies::tray);
    canopies.read(lists, bodies::canopy);
    modules.read(lists, new ModuleReader(figures, faults)::read);
    accessories.read(lists, new AccessoryReader(figures)::entry);
    gear.read(lists, new GearReader(figures, faults)::read);
    lists.done();
  }

  /** Everything on the shelves. */
  Catalogue catalogue() {
    return new Catalogue(
        utes.all(), trays.all(), canopies.all(), modules.all(), accessories.all(), gear.all());
  }

  /** Notes own entries that nothing names. */
  void noteUnused() {
    utes.noteUnused();
    trays.noteUnused();
    canopies.noteUnused();
    modules.noteUnused();
    accessories.noteUnused();
    gear.noteUnused();
  }

  Shelf<Ute> utes() {
    return utes;
  }

  Shelf<Tray> trays() {
    return trays;
  }

  Shelf<Canopy> canopies() {
    return canopies;
  }

  Shelf<FitOutModule> modules() {
    return modules;
  }

  Shelf<Accessory> accessories() {
    return accessories;
  }

  Shelf<Item> gear() {
    return gear;
  }
}
