package kitstow.planner.model;

/** What sort of thing a rule guards. */
public enum RuleKind {
  /** A rating in kilograms. */
  LIMIT,
  /** Boxes, turns, support, doors and slides. */
  GEOMETRY,
  /** What may not ride together. */
  COMPANY,
  /** What must be at hand. */
  REACH,
  /** What must come along. */
  NEED,
  /** Good practice; never broken, only noted. */
  PREFERENCE
}
