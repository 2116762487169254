package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kitstow.planner.exact.ExactAssignment;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;

/**
 * Seven to twelve cubes and six spaces one cube long, each with a rating, so that where a cube
 * stands is only a matter of its space; invented. The ratings together are 0.8, 1.0 or 1.3 times
 * what the cubes weigh.
 */
final class Cubes {
  private static final int CUBE_MM = 100;
  private static final int WHEELBASE_MM = 3000;
  private static final double[] TIGHTNESS = {0.8, 1.0, 1.3};

  /** Front ends of the spaces in the canopy's frame, which starts at x 2000. */
  private static final int[] FROM_FRONT_MM = {100, 500, 1000, 1150, 1400, 1650};

  private final long[] massG;
  private final int[] worth;
  private final long[] ratingG = new long[FROM_FRONT_MM.length];

  /** A way to prove the best assignment. */
  interface Proof {
    ExactAssignment.Optimum of(long[][] value, long[][] mass, long[][] cost, long[] capacity);
  }

  private Cubes(int count) {
    this.massG = new long[count];
    this.worth = new int[count];
  }

  /** The case with a number. */
  static Cubes of(int number) {
    Random random = new Random(4099L * number + 7L);
    Cubes cubes = new Cubes(7 + random.nextInt(6));
    long totalG = 0L;
    for (int i = 0; i < cubes.massG.length; i++) {
      cubes.massG[i] = 2_000L + random.nextInt(28_000);
      cubes.worth[i] = 1 + random.nextInt(50);
      totalG += cubes.massG[i];
    }
    for (int k = 0; k < cubes.ratingG.length; k++) {
      double share = TIGHTNESS[number % TIGHTNESS.length] / cubes.ratingG.length;
      cubes.ratingG[k] = Math.round(totalG * share * (0.5 + random.nextDouble()));
    }
    return cubes;
  }

  Scenario scenario() {
    RigBuilder rig =
        RigBuilder.aBareDualCab().person("driver", Masses.kg(90), "driver").roadDay(10.0);
    SizeMm size = new SizeMm(CUBE_MM, 1300, CUBE_MM);
    for (int k = 0; k < ratingG.length; k++) {
      rig.canopySpace(
          aSpace("space-" + k, FROM_FRONT_MM[k], -650, 0, size).ratings(Masses.always(ratingG[k])));
    }
    for (int i = 0; i < massG.length; i++) {
      rig.items(
          anItem("cube-" + i)
              .size(CUBE_MM, CUBE_MM, CUBE_MM)
              .massG(massG[i])
              .bearsG(0L)
              .turns(Turn.LWH)
              .value(worth[i]));
    }
    return rig.scenario();
  }

  /** The best assignment: most value, then least moment in gram millimetres. */
  ExactAssignment.Optimum optimum(Proof proof) {
    int spaces = ratingG.length;
    long[][] value = new long[massG.length][spaces];
    long[][] mass = new long[massG.length][spaces];
    long[][] moment = new long[massG.length][spaces];
    for (int i = 0; i < massG.length; i++) {
      for (int k = 0; k < spaces; k++) {
        value[i][k] = worth[i];
        mass[i][k] = massG[i];
        moment[i][k] = massG[i] * behindMm(2000 + FROM_FRONT_MM[k]);
      }
    }
    return proof.of(value, mass, moment, ratingG);
  }

  /** The plan of an assignment: side by side in each space. */
  LoadPlan planOf(ExactAssignment.Optimum optimum) {
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < massG.length; i++) {
      int agent = optimum.agentOf().get(i);
      if (agent >= 0) {
        placements.add(
            new Placement(
                "cube-" + i,
                /* unit= */ 1,
                "space-" + agent,
                /* shape= */ 0,
                Turn.LWH,
                new SpacePointMm(0, CUBE_MM * i, 0)));
      }
    }
    return new LoadPlan("test", Map.of(), placements, LoadPlan.Origin.HAND);
  }

  /** How far behind the rear axle the middle of a cube is; none lies across the line. */
  static long behindMm(int frontXMm) {
    return Math.max(0, frontXMm + CUBE_MM / 2 - WHEELBASE_MM)
        * (frontXMm >= WHEELBASE_MM ? 1L : 0L);
  }
}
