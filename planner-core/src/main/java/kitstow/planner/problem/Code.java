package kitstow.planner.problem;

/** Every sort of fault the planner finds in its input. */
public enum Code {
  /** The text is longer, or holds more values, than the planner reads. */
  TOO_LONG,
  /** The text is not JSON; reading stopped there. */
  NOT_JSON,
  /** Objects and lists are nested deeper than any format of ours. */
  NESTED_TOO_DEEP,
  /** One object has the same key twice. */
  DUPLICATE_KEY,
  /** Another kind of file is expected here. */
  WRONG_KIND,
  /** The file is written for another version of the format. */
  WRONG_SCHEMA_VERSION,

  /** A key that means nothing here. */
  UNKNOWN_KEY,
  /** A key that must be there is not. */
  MISSING_KEY,
  /** A value of another type, such as a number in quotes. */
  WRONG_TYPE,
  /** A null, which could mean anything. */
  NULL_VALUE,
  /** A number outside what makes sense. */
  OUT_OF_RANGE,
  /** A number with more decimals than are kept. */
  TOO_FINE,
  /** A word that is not one of those allowed. */
  UNKNOWN_WORD,
  /** An id with signs an id may not have. */
  BAD_ID,
  /** An empty or overlong text. */
  BAD_TEXT,
  /** A text with a control character. */
  CONTROL_CHARACTER,
  /** A list with too few or too many entries. */
  LIST_LENGTH,
  /** A list that names the same thing twice. */
  LISTED_TWICE,

  /** An id that is already taken. */
  DUPLICATE_ID,
  /** An id the planner keeps for itself. */
  RESERVED_ID,
  /** An own entry with the id of a catalogue entry. */
  ID_IN_CATALOGUE,
  /** A name that nothing has. */
  UNKNOWN_REFERENCE,
  /** Modules that fit only into each other. */
  CIRCULAR_MODULES,
  /** An own entry that nothing uses. */
  UNUSED_ENTRY,

  /** More content than the whole item weighs. */
  CONTENT_ABOVE_MASS,
  /** More mass than lead of that size has: often centimetres for millimetres. */
  HEAVIER_THAN_LEAD,
  /** Something moves in a module that does not pull out. */
  MOVES_WITHOUT_SLIDE,
  /** Bars that are not listed from front to rear. */
  BARS_OUT_OF_ORDER,
  /** A bar outside its space. */
  BAR_OUTSIDE_SPACE,
  /** A region outside of what it belongs to. */
  OUTSIDE_HOST,
  /** An opening that ends before it starts. */
  ENDS_OUT_OF_ORDER,
  /** More in a tank than it holds. */
  ABOVE_CAPACITY,
  /** Growth without an upper limit. */
  GROWTH_WITHOUT_LIMIT,
  /** Room for a lid that is not on top. */
  LID_NOT_ON_TOP,
  /** A ball mass above the whole trailer. */
  BALL_ABOVE_TRAILER,

  /** Two people on one seat. */
  SEAT_TAKEN,
  /** A canopy without a tray beneath it. */
  CANOPY_WITHOUT_TRAY,
  /** A thing on a tray or canopy that is not fitted. */
  NOT_FITTED,
  /** A part that is stowed without an item, or has an item without being stowed. */
  STOWED_PART,
  /** A trailer behind a ute without a ball or a towing limit. */
  NO_TOWING,
  /** A supply that the named thing does not hold. */
  WRONG_SUPPLY,
  /** A pin that no plan can keep. */
  PIN_CONTRADICTION,

  /** A limit of length or height that cannot be judged, since a size is not given. */
  NOT_MEASURED,

  /** An override of a rule that holds always. */
  NOT_OVERRIDABLE,

  /** A plan of another scenario. */
  WRONG_SCENARIO,
  /** A bay with two modules in it. */
  BAY_TAKEN,
  /** A bay the module may not stand in. */
  BAY_NOT_LISTED,
  /** A space or bay that is not there under the plan's modules. */
  NOT_THERE_IN_PLAN,
  /** A unit or shape the item does not have. */
  NO_SUCH_UNIT_OR_SHAPE,
  /** A unit that is placed twice. */
  PLACED_TWICE,

  /** There were more problems than are listed. */
  MORE_PROBLEMS
}
