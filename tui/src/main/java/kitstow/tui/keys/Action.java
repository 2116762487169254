package kitstow.tui.keys;

/** What a key can do. */
public enum Action {
  /** Ends the program. */
  QUIT,
  /** Shows all keys. */
  HELP,
  /** Leaves what is open. */
  BACK,
  /** Opens or takes what is chosen. */
  TAKE,
  /** The page of the load. */
  SHEET_LOAD,
  /** The page of limits. */
  SHEET_LIMITS,
  /** The pack list. */
  SHEET_PACK,
  /** What stays home and why. */
  SHEET_HOME,
  /** What room is left. */
  SHEET_ROOM,
  /** What is broken, doubtful or worth knowing. */
  SHEET_FINDINGS,
  /** Plans side by side. */
  SHEET_COMPARE,
  /** Carries out what would mend the first thing that is broken. */
  MEND,
  /** Carries out the first lever on the tightest limit. */
  LEVER,
  /** Keeps the plan to set it beside others. */
  KEEP,
  /** Forgets what was kept. */
  FORGET_KEPT,
  /** The gear list. */
  SHEET_GEAR,
  /** The trip. */
  SHEET_TRIP,
  /** The ute and its fit-out. */
  SHEET_UTE,
  /** Begins a new scenario. */
  BEGIN,
  /** Reads gear from a table. */
  IMPORT,
  /** Changes what is marked. */
  EDIT,
  /** Adds one of what is marked. */
  ADD,
  /** Removes what is marked. */
  REMOVE,
  /** Has the marked leg driven earlier. */
  EARLIER,
  /** Has the marked leg driven later. */
  LATER,
  /** Ticks a thing on the pack list. */
  TICK,
  /** The next page. */
  NEXT_SHEET,
  /** The page before. */
  PREVIOUS_SHEET,
  /** One up. */
  UP,
  /** One down. */
  DOWN,
  /** One to the left. */
  LEFT,
  /** One to the right. */
  RIGHT,
  /** A screen up. */
  PAGE_UP,
  /** A screen down. */
  PAGE_DOWN,
  /** The next thing. */
  NEXT_THING,
  /** The thing before. */
  PREVIOUS_THING,
  /** Finds a thing by its name. */
  FIND,
  /** The next view. */
  NEXT_VIEW,
  /** Nearer. */
  ZOOM_IN,
  /** Farther. */
  ZOOM_OUT,
  /** Moves the picture to the left. */
  PAN_LEFT,
  /** Moves the picture to the right. */
  PAN_RIGHT,
  /** Moves the picture up. */
  PAN_UP,
  /** Moves the picture down. */
  PAN_DOWN,
  /** The next state of the trip. */
  NEXT_STATE,
  /** The state before. */
  PREVIOUS_STATE,
  /** The state in which a limit is tightest. */
  WORST_STATE,
  /** Takes the chosen thing up to carry it. */
  CARRY,
  /** Puts it down. */
  DROP,
  /** The next space that takes it. */
  NEXT_SPACE,
  /** The space before. */
  PREVIOUS_SPACE,
  /** Turns it. */
  TURN,
  /** Pins it, or takes the pin off. */
  PIN,
  /** Sends it home. */
  HOME,
  /** Brings it aboard. */
  BRING,
  /** Takes the last change back. */
  UNDO,
  /** Does it again. */
  REDO,
  /** Starts a search, or stops it. */
  SEARCH,
  /** Starts a longer one. */
  SEARCH_LONGER,
  /** Writes the files. */
  SAVE
}
