package kitstow.planner.model;

/** The part of the vehicle a bay or space belongs to; decides which roof ledger it counts in. */
public enum Zone {
  /** Inside the cab. */
  CAB,
  /** On the cab roof: counts against the cab roof limit. */
  CAB_ROOF,
  /** On the open tray. */
  TRAY,
  /** Below the deck. */
  UNDER_TRAY,
  /** Inside the canopy. */
  CANOPY,
  /** On the canopy roof: counts against the canopy roof limit. */
  CANOPY_ROOF,
  /** On a carrier behind the tray. */
  REAR_CARRIER
}
