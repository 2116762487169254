package kitstow.tui.keys;

/** Where on the screen a key is pressed; the same key may do different things in two places. */
public enum Place {
  /** The list of scenarios. */
  SHELF,
  /** The drawings of the load. */
  LOAD,
  /** A thing is being carried to another place. */
  CARRY,
  /** A page that is a list of rows. */
  ROWS,
  /** The pack list. */
  PACKING,
  /** The gear list. */
  GEAR,
  /** A page of things to edit. */
  EDITING,
  /** The same with legs, which have an order. */
  TRIP,
  /** A page of text. */
  TEXT
}
