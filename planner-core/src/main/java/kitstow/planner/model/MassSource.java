package kitstow.planner.model;

/** How a mass is known, from the most to the least trusted. */
public enum MassSource {
  /** Read off a scale or weighbridge. */
  WEIGHED,
  /** Read off a vehicle plate or handbook. */
  PLATE,
  /** Read off a product label or data sheet. */
  LABEL,
  /** Guessed or taken from common practice. */
  ESTIMATE
}
