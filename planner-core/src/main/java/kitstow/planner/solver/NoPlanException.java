package kitstow.planner.solver;

/** A search ended before it had any plan. */
public final class NoPlanException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** The search ended without a plan. */
  public NoPlanException() {
    super("the search ended without a plan");
  }
}
