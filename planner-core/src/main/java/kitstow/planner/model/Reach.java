package kitstow.planner.model;

/** How quickly an item must be at hand. */
public enum Reach {
  /** Without moving anything else. */
  EMERGENCY,
  /** Many times a day. */
  MANY_A_DAY,
  /** Once or twice a day. */
  DAILY,
  /** Every few days. */
  FEW_DAYS,
  /** Hardly ever. */
  RARE
}
