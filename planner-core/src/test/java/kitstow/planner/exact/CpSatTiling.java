package kitstow.planner.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.NoOverlap2dConstraint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Squares laid into a rectangle without overlap by CP-SAT, which sees only their sides. */
final class CpSatTiling {
  private CpSatTiling() {}

  /** Where the squares lie, or nothing where it is proved that they do not go in. */
  static Optional<List<BouwkampCode.Square>> solve(BouwkampCode code) {
    CpModel model = new CpModel();
    NoOverlap2dConstraint apart = model.addNoOverlap2D();
    List<IntVar> lefts = new ArrayList<>();
    List<IntVar> tops = new ArrayList<>();
    for (int side : code.sides()) {
      IntVar left = model.newIntVar(0, code.width() - side, "");
      IntVar top = model.newIntVar(0, code.height() - side, "");
      apart.addRectangle(
          model.newFixedSizeIntervalVar(left, side, ""),
          model.newFixedSizeIntervalVar(top, side, ""));
      lefts.add(left);
      tops.add(top);
    }
    return CpSat.prove(model).map(solver -> read(code, solver, lefts, tops));
  }

  private static List<BouwkampCode.Square> read(
      BouwkampCode code, CpSolver solver, List<IntVar> lefts, List<IntVar> tops) {
    List<BouwkampCode.Square> squares = new ArrayList<>();
    for (int i = 0; i < code.sides().size(); i++) {
      squares.add(
          new BouwkampCode.Square(
              (int) solver.value(lefts.get(i)),
              (int) solver.value(tops.get(i)),
              code.sides().get(i)));
    }
    return squares;
  }
}
