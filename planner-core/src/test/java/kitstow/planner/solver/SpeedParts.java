package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import kitstow.planner.LoadPlanner;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Environment;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Zone;
import kitstow.planner.report.CheckReport;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.statics.AxleLoads;
import kitstow.planner.statics.OverhangMoment;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import kitstow.planner.trip.Timeline;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What is timed. The two hundred boxes are invented, the rest is shipped. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class SpeedParts {
  private static final String NAME = "remote-fortnight";
  private static final int UNITS = 200;

  private final String text = text();
  private final Scenario scenario = ShippedFiles.scenario(NAME);
  private final LoadPlan plan = ShippedFiles.plan(NAME, scenario);
  private final PackingProblem problem = new PackingProblem(scenario);
  private final Packing packing = PlanningMapper.toPacking(problem, plan);
  private final Loading many;
  private final LoadState moving;
  private int unit;

  /** Two hundred boxes, and the shipped plan packed. */
  public SpeedParts() {
    Scenario boxes =
        RigBuilder.aBareDualCab()
            .person("driver", Masses.kg(90), "driver")
            .roadDay(100.0)
            .uteSpace(
                aSpace("deck", 1800, -750, 900, new SizeMm(2000, 1000, 1000))
                    .zone(Zone.CAB)
                    .environment(Environment.OPEN_AIR))
            .items(
                anItem("box")
                    .size(100, 100, 100)
                    .massG(Masses.kg(1))
                    .bearsG(Masses.kg(20))
                    .quantity(UNITS))
            .scenario();
    Packing all = new Packing(new PackingProblem(boxes), Map.of());
    new Construction(all.problem()).packAll(all, new Random(0L), /* noise= */ 0.0);
    many = Loading.of(boxes, all.plan(LoadPlan.Origin.HAND));
    if (many.placed().size() < UNITS) {
      throw new IllegalStateException("only " + many.placed().size() + " boxes have room");
    }
    moving = Timeline.of(many).states().get(0);
  }

  private static String text() {
    try {
      return Files.readString(Path.of("..", "scenarios", NAME + ".json"));
    } catch (IOException e) {
      throw new IllegalStateException("the shipped scenario is missing", e);
    }
  }

  /** A scenario of 81 units read and checked against its catalogue. */
  @Benchmark
  public Scenario readingAScenario() {
    return ShippedFiles.read(NAME, text);
  }

  /** Every rule, in every state of the trip, and the audit. */
  @Benchmark
  public CheckReport checkingAPlan() {
    return LoadPlanner.check(scenario, plan);
  }

  /** Axle loads and moment of two hundred units in one state. */
  @Benchmark
  public double staticsOfTwoHundredUnits() {
    return AxleLoads.of(many, moving).rearKg() + OverhangMoment.of(many, moving).newtonMetres();
  }

  /** A plan of 81 units put down from nothing, no place known beforehand. */
  @Benchmark
  public LoadPlan decodingAPlan() {
    PackingProblem fresh = new PackingProblem(scenario);
    return PlanningMapper.toPacking(fresh, plan).plan(LoadPlan.Origin.HAND);
  }

  /** One unit goes home and comes back, and each time all is scored. */
  @Benchmark
  public long scoringAUnitThatComesBack() {
    next();
    String space = packing.spaceOf(unit);
    packing.assign(unit, null, packing.stanceOf(unit), packing.rankOf(unit));
    long without = packing.levels().momentSteps();
    packing.assign(unit, space, packing.stanceOf(unit), packing.rankOf(unit));
    return packing.levels().momentSteps() - without;
  }

  private void next() {
    unit = (unit + 1) % problem.units().size();
  }
}
