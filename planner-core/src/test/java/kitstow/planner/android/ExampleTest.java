package kitstow.planner.android;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import kitstow.planner.LoadPlanner;
import kitstow.planner.android.example.StopAndResume;
import kitstow.planner.android.example.TripPlanning;
import kitstow.planner.json.Outcome;
import kitstow.planner.json.PlanReader;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example of an app knows nothing but the phone's platform and the library, and works. */
class ExampleTest {
  private static final double SECONDS = 1.0;

  @TempDir static Path temporary;

  /** In Java 8's language, for which the compiler can be given another platform to know. */
  private static Path compiled() {
    Path lambdas = StubJar.writeForLambdas(temporary.resolve("lambdas.jar"));
    List<String> options =
        List.of(
            "-source",
            "8",
            "-target",
            "8",
            "-Xlint:-options",
            "-bootclasspath",
            SourceCode.classPath(List.of(PhoneLibrary.PHONE.stubs(), lambdas)),
            "-cp",
            PhoneLibrary.DESUGARED.toString());
    List<Class<?>> sources = List.of(TripPlanning.class, StopAndResume.class);
    return SourceCode.compileAgain(options, sources, temporary);
  }

  @Test
  void appThatIsStoppedGoesOnFromItsText() {
    Path phoneJar = temporary.resolve("example.jar");
    Complaints complaints =
        Desugared.toClassFiles(List.of(compiled()), PhoneLibrary.PHONE.stubs(), phoneJar);
    String scenario = Texts.scenario("remote-fortnight");

    Phone.Run run =
        PhoneLibrary.call(
            List.of(phoneJar),
            StopAndResume.class.getName(),
            "run",
            Texts.catalogue(),
            scenario,
            SECONDS);

    assertThat(complaints.others()).isEmpty();
    assertThat(run.faults()).isEmpty();
    Scenario trip = OneSolve.scenario(Texts.catalogue(), scenario);
    String[] texts = (String[]) run.result().orElseThrow();
    CheckReport kept = LoadPlanner.check(trip, plan(texts[0], trip));
    CheckReport resumed = LoadPlanner.check(trip, plan(texts[1], trip));
    assertThat(resumed.brokenFindings()).hasSizeLessThanOrEqualTo(kept.brokenFindings().size());
  }

  private static LoadPlan plan(String text, Scenario trip) {
    return PlanReader.read(text, trip)
        .match(
            Outcome.Read::value,
            refused -> {
              throw new AssertionError(refused.report().text());
            });
  }
}
