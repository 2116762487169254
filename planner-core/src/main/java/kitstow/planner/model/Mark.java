package kitstow.planner.model;

/** What an item is like, for rules of company and air. */
public enum Mark {
  /** Food or food-clean. */
  FOOD,
  /** Petrol, diesel and other flammable liquids, and machines that hold them. */
  FUEL,
  /** Compressed or liquefied gas. */
  GAS,
  /** Oils and chemicals. */
  OIL,
  /** Batteries and electrics. */
  ELECTRIC,
  /** Wet or dirty. */
  WET,
  /** Fragile electronics and the like. */
  FRAGILE,
  /** Heavy loose tools. */
  HEAVY_TOOL,
  /** Bedding and clothes. */
  BEDDING,
  /** Must stay dry. */
  DRY,
  /** Keep from heat. */
  COOL,
  /** Sharp. */
  SHARP,
  /** Bulky or long. */
  BULKY,
  /** Attracts theft. */
  THEFT,
  /** Must be at hand from a seat: an extinguisher, a first-aid kit. */
  CAB
}
