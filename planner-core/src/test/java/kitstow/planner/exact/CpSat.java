package kitstow.planner.exact;

import static org.assertj.core.api.Assumptions.assumeThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.Locale;
import java.util.Optional;

/**
 * The constraint solver CP-SAT of OR-Tools as an independent witness. Its native library comes for
 * Linux on x86-64 alone; elsewhere a test that needs it is skipped.
 */
public final class CpSat {
  private static final int WORKERS = 2;

  private CpSat() {}

  /** Skips the test where there is no native library; call it first. */
  public static void assumed() {
    String system = System.getProperty("os.name") + " " + System.getProperty("os.arch");
    assumeThat(system.toLowerCase(Locale.ROOT))
        .as("the native library of CP-SAT is there for Linux on x86-64 only")
        .matches("linux (amd64|x86_64)");
    Loader.loadNativeLibraries();
  }

  /**
   * Solves a model to the end.
   *
   * @return the values of a proved optimum, or nothing where it is proved that there is no solution
   */
  static Optional<CpSolver> prove(CpModel model) {
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(WORKERS);
    CpSolverStatus status = solver.solve(model);
    return switch (status) {
      case OPTIMAL -> Optional.of(solver);
      case INFEASIBLE -> Optional.empty();
      case FEASIBLE, UNKNOWN, MODEL_INVALID, UNRECOGNIZED ->
          throw new IllegalStateException("not solved to the end: " + status);
    };
  }
}
