package kitstow.planner.model;

/** What is used up on a trip. */
public enum SupplyKind {
  /** Fuel for the engine. */
  FUEL,
  /** Drinking and washing water. */
  WATER,
  /** Food and drinks. */
  FOOD,
  /** Cooking gas. */
  GAS
}
