package kitstow.tui.cli;

/** What the command tells whoever called it. */
public final class ExitCode {
  /** Done; a plan is within its limits, if only on paper, and keeps every rule. */
  public static final int OK = 0;

  /** A rule is broken or something that must come along stays home. */
  public static final int BROKEN = 1;

  /** The command line or a file is wrong. */
  public static final int BAD_INPUT = 2;

  /** A fault of our own. */
  public static final int OWN_FAULT = 70;

  private ExitCode() {}
}
