package kitstow.tui.app;

/** What an answer to a question may come to. */
public enum Decision {
  /** Save and end the program. */
  SAVE_AND_END,
  /** End the program; what is not saved is lost. */
  END,
  /** Save and go back to the list. */
  SAVE_AND_CLOSE,
  /** Go back to the list; what is not saved is lost. */
  CLOSE,
  /** Take up work that was not saved last time. */
  RECOVER,
  /** Forget it. */
  FORGET
}
