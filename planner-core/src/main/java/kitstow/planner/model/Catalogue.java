package kitstow.planner.model;

import java.util.List;

/**
 * Generic things a scenario may name instead of describing them. Trays and canopies stand at the
 * origin, accessories lie at it, gear has quantity one, until a scenario places them.
 *
 * @param utes vehicles
 * @param trays trays
 * @param canopies canopies
 * @param modules fit-out modules
 * @param accessories fixed additions
 * @param gear gear
 */
public record Catalogue(
    List<Ute> utes,
    List<Tray> trays,
    List<Canopy> canopies,
    List<FitOutModule> modules,
    List<Accessory> accessories,
    List<Item> gear) {
  /** Nothing. */
  public static final Catalogue EMPTY =
      new Catalogue(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  /** Copies its collections. */
  public Catalogue {
    utes = List.copyOf(utes);
    trays = List.copyOf(trays);
    canopies = List.copyOf(canopies);
    modules = List.copyOf(modules);
    accessories = List.copyOf(accessories);
    gear = List.copyOf(gear);
  }
}
