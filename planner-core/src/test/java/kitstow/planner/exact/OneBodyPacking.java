package kitstow.planner.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;

/**
 * The least moment with which all boxes of a case go into its spaces, proved by CP-SAT: each stands
 * on a floor or wholly on one other box, and no space carries more than it may. Places lie on a
 * grid of 10 mm in which all sizes are whole, and no better one lies between: every rule here is an
 * order of coordinates that differ by whole steps once rounded down, so a plan whose places are all
 * rounded down keeps the rules and has no more moment. Where the front axle has a limit this is
 * proved for the grid only, since what is rounded down goes forward.
 *
 * <p>Two boxes are apart where one lies before, beside or above the other (C. S. Chen, S. M. Lee,
 * Q. S. Shen, "An analytical model for the container loading problem", European Journal of
 * Operational Research 80 (1995) 68-76; from memory).
 *
 * <p>The search knows no rule "on one body", only whole bases supported by whatever is level. So
 * {@link BoxCases} draws boxes of which no two can ever bear a third together, and the rules of
 * both are the same.
 */
final class OneBodyPacking {
  static final int GRID_MM = 10;
  private static final long MOST_MOMENT = 1_000_000_000_000L;

  private final CpModel model = new CpModel();
  private final BoxCase boxes;
  private final List<Body> bodies = new ArrayList<>();

  /** A box in the model: its lowest corner and the ends of its three extents, in steps. */
  private record Body(
      IntVar x,
      IntVar y,
      IntVar z,
      IntVar x1,
      IntVar y1,
      IntVar z1,
      LinearArgument moment,
      LinearArgument endMoment) {}

  private OneBodyPacking(BoxCase boxes) {
    this.boxes = boxes;
  }

  /** The optimum, or nothing where it is proved that they do not all go in. */
  static Optional<BoxCase.Optimum> solve(BoxCase boxes) {
    OneBodyPacking packing = new OneBodyPacking(boxes);
    packing.build();
    return CpSat.prove(packing.model).map(packing::read);
  }

  private void build() {
    for (BoxCase.Box box : boxes.boxes()) {
      bodies.add(body(box));
    }
    for (int i = 0; i < bodies.size(); i++) {
      for (int j = 0; j < i; j++) {
        keepApart(bodies.get(i), bodies.get(j));
      }
      support(i);
    }
    if (boxes.spaces().size() > 1) {
      divide();
    } else {
      // The mirror image of a plan is as good, so one of each pair is enough.
      Body first = bodies.get(0);
      model.addLessOrEqual(
          LinearExpr.sum(new IntVar[] {first.y(), first.y1()}), boxes.room().widthMm() / GRID_MM);
    }
    limitFront(BoxCase.Box::massG);
    limitFront(BoxCase.Box::endG);
    minimiseWorst();
  }

  private void minimiseWorst() {
    LinearExpr start = sum(Body::moment);
    if (!boxes.changes()) {
      model.minimize(start);
      return;
    }
    IntVar worst = model.newIntVar(0L, MOST_MOMENT, "");
    model.addGreaterOrEqual(worst, start);
    model.addGreaterOrEqual(worst, sum(Body::endMoment));
    model.minimize(worst);
  }

  private LinearExpr sum(Function<Body, LinearArgument> part) {
    return LinearExpr.sum(bodies.stream().map(part).toArray(LinearArgument[]::new));
  }

  /** What the boxes put on the front axle, by the lever rule about the rear one. */
  private void limitFront(ToLongFunction<BoxCase.Box> massG) {
    if (boxes.mostFrontHalfGMm() == Long.MAX_VALUE) {
      return;
    }
    LinearExprBuilder front = LinearExpr.newBuilder();
    for (int i = 0; i < bodies.size(); i++) {
      long mass = massG.applyAsLong(boxes.boxes().get(i));
      front.addTerm(bodies.get(i).x(), -mass * GRID_MM);
      front.addTerm(bodies.get(i).x1(), -mass * GRID_MM);
      front.add(2L * boxes.axleMm() * mass);
    }
    model.addLessOrEqual(front, boxes.mostFrontHalfGMm());
  }

  /** Every box lies in one of the spaces, and none of these carries more than it may. */
  private void divide() {
    BoolVar[][] in = new BoolVar[boxes.spaces().size()][bodies.size()];
    for (int i = 0; i < bodies.size(); i++) {
      List<Literal> lies = new ArrayList<>();
      for (int k = 0; k < in.length; k++) {
        in[k][i] = liesIn(bodies.get(i), boxes.spaces().get(k).box());
        lies.add(in[k][i]);
      }
      model.addExactlyOne(lies);
    }
    long[] startG = boxes.boxes().stream().mapToLong(BoxCase.Box::massG).toArray();
    long[] endG = boxes.boxes().stream().mapToLong(BoxCase.Box::endG).toArray();
    for (int k = 0; k < in.length; k++) {
      long ratingG = boxes.spaces().get(k).ratingG();
      if (ratingG < Long.MAX_VALUE) {
        model.addLessOrEqual(LinearExpr.weightedSum(in[k], startG), ratingG);
        model.addLessOrEqual(LinearExpr.weightedSum(in[k], endG), ratingG);
      }
    }
  }

  private BoolVar liesIn(Body body, BoxMm space) {
    BoolVar does = model.newBoolVar("");
    model.addGreaterOrEqual(body.x(), space.minXMm() / GRID_MM).onlyEnforceIf(does);
    model.addLessOrEqual(body.x1(), space.maxXMm() / GRID_MM).onlyEnforceIf(does);
    model.addGreaterOrEqual(body.y(), space.minYMm() / GRID_MM).onlyEnforceIf(does);
    model.addLessOrEqual(body.y1(), space.maxYMm() / GRID_MM).onlyEnforceIf(does);
    model.addLessOrEqual(body.z1(), space.maxZMm() / GRID_MM).onlyEnforceIf(does);
    return does;
  }

  private Body body(BoxCase.Box box) {
    SizeMm room = boxes.room();
    List<SizeMm> sizes = box.sizes();
    BoolVar[] stands = new BoolVar[sizes.size()];
    long[] lengths = new long[sizes.size()];
    long[] widths = new long[sizes.size()];
    long[] heights = new long[sizes.size()];
    for (int i = 0; i < sizes.size(); i++) {
      stands[i] = model.newBoolVar("");
      lengths[i] = sizes.get(i).lengthMm() / GRID_MM;
      widths[i] = sizes.get(i).widthMm() / GRID_MM;
      heights[i] = sizes.get(i).heightMm() / GRID_MM;
    }
    model.addExactlyOne(stands);
    IntVar[] x = extent(room.lengthMm(), LinearExpr.weightedSum(stands, lengths));
    IntVar[] y = extent(room.widthMm(), LinearExpr.weightedSum(stands, widths));
    IntVar[] z = extent(room.heightMm(), LinearExpr.weightedSum(stands, heights));
    LinearArgument moment = moment(box.massG(), sizes, stands, x);
    LinearArgument endMoment =
        box.endG() == box.massG() ? moment : moment(box.endG(), sizes, stands, x);
    return new Body(x[0], y[0], z[0], x[1], y[1], z[1], moment, endMoment);
  }

  /** Where an extent begins and where it ends. */
  private IntVar[] extent(int roomMm, LinearExpr length) {
    int steps = roomMm / GRID_MM;
    IntVar begin = model.newIntVar(0, steps, "");
    IntVar end = model.newIntVar(0, steps, "");
    model.addEquality(end, LinearExpr.newBuilder().add(begin).add(length).build());
    return new IntVar[] {begin, end};
  }

  /** Its moment. Where a part of the space lies before the axle, it is the highest of chords. */
  private LinearArgument moment(long massG, List<SizeMm> sizes, BoolVar[] stands, IntVar[] x) {
    long perStep = massG * GRID_MM;
    LinearExpr ofTheMiddle =
        LinearExpr.newBuilder()
            .addWeightedSum(x, new long[] {perStep, perStep})
            .add(-2L * boxes.axleMm() * massG)
            .build();
    if (boxes.axleMm() <= 0) {
      return ofTheMiddle;
    }
    long most = 2L * massG * boxes.room().lengthMm();
    IntVar moment = model.newIntVar(0L, most, "");
    model.addGreaterOrEqual(moment, ofTheMiddle);
    for (int i = 0; i < sizes.size(); i++) {
      addChords(massG, sizes.get(i).lengthMm(), stands[i], x[0], moment);
    }
    return moment;
  }

  /**
   * The moment is convex in where the box begins, so it lies on or above each chord between
   * neighbouring steps, and at every step on the highest of them. Rounding up does not bend it
   * back: it adds less than 1, and the slope grows by thousands a step.
   */
  private void addChords(long massG, int lengthMm, BoolVar stands, IntVar begin, IntVar moment) {
    int last = (boxes.room().lengthMm() - lengthMm) / GRID_MM;
    long slopeBefore = 0L;
    for (int at = 0; at <= last; at++) {
      long from = boxes.momentHalfGMm(massG, at * GRID_MM, at * GRID_MM + lengthMm);
      long to = boxes.momentHalfGMm(massG, (at + 1) * GRID_MM, (at + 1) * GRID_MM + lengthMm);
      long slope = to - from;
      if (slope > slopeBefore) {
        LinearExpr chord =
            LinearExpr.newBuilder().addTerm(begin, slope).add(from - slope * at).build();
        model.addGreaterOrEqual(moment, chord).onlyEnforceIf(stands);
      }
      slopeBefore = slope;
    }
  }

  private void keepApart(Body a, Body b) {
    model.addAtLeastOne(
        new Literal[] {
          follows(a.x1(), b.x()),
          follows(b.x1(), a.x()),
          follows(a.y1(), b.y()),
          follows(b.y1(), a.y()),
          follows(a.z1(), b.z()),
          follows(b.z1(), a.z())
        });
  }

  /** Whether one extent ends before another begins; true only where it does. */
  private Literal follows(IntVar end, IntVar begin) {
    BoolVar does = model.newBoolVar("");
    model.addLessOrEqual(end, begin).onlyEnforceIf(does);
    return does;
  }

  private void support(int i) {
    Body upper = bodies.get(i);
    List<Literal> stands = new ArrayList<>();
    BoolVar floor = model.newBoolVar("");
    model.addEquality(upper.z(), 0L).onlyEnforceIf(floor);
    stands.add(floor);
    for (int j = 0; j < bodies.size(); j++) {
      if (j != i) {
        stands.add(standsWhollyOn(upper, bodies.get(j)));
      }
    }
    model.addExactlyOne(stands);
  }

  private Literal standsWhollyOn(Body upper, Body lower) {
    BoolVar does = model.newBoolVar("");
    model.addEquality(upper.z(), lower.z1()).onlyEnforceIf(does);
    model.addGreaterOrEqual(upper.x(), lower.x()).onlyEnforceIf(does);
    model.addLessOrEqual(upper.x1(), lower.x1()).onlyEnforceIf(does);
    model.addGreaterOrEqual(upper.y(), lower.y()).onlyEnforceIf(does);
    model.addLessOrEqual(upper.y1(), lower.y1()).onlyEnforceIf(does);
    return does;
  }

  private BoxCase.Optimum read(CpSolver solver) {
    List<BoxMm> places = new ArrayList<>();
    for (Body body : bodies) {
      places.add(
          new BoxMm(
              mm(solver, body.x()),
              mm(solver, body.y()),
              mm(solver, body.z()),
              mm(solver, body.x1()),
              mm(solver, body.y1()),
              mm(solver, body.z1())));
    }
    return new BoxCase.Optimum(Math.round(solver.objectiveValue()), places);
  }

  private static int mm(CpSolver solver, IntVar steps) {
    return (int) solver.value(steps) * GRID_MM;
  }
}
