package kitstow.planner.android;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The library as a phone gets it plans the shipped scenario as the desktop does. What the whole
 * check does beyond this is in {@link AndroidWholeTest}.
 */
class AndroidTest {
  private static final long SEED = 1;
  private static final long STEPS = 20;

  @TempDir static Path temporary;

  @Test
  void theSamePlanComesFromAPhonesByteCode() {
    String scenario = Texts.scenario("remote-fortnight");

    Phone.Run run =
        PhoneLibrary.call(
            List.of(), OneSolve.class.getName(), "plan", Texts.catalogue(), scenario, SEED, STEPS);

    assertThat(run.faults()).isEmpty();
    assertThat(run.loaded()).hasSizeGreaterThan(500);
    assertThat(run.result()).contains(OneSolve.plan(Texts.catalogue(), scenario, SEED, STEPS));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "new java.awt.Point(1, 2).toString() | java.awt.Point",
        "java.lang.management.ManagementFactory.getRuntimeMXBean().getName()"
            + " | java.lang.management.ManagementFactory",
        "\"%d mm\".formatted(1) | java/lang/String.formatted",
        "String.join(\"\", java.util.stream.Stream.of(\"mm\").toList())"
            + " | java/util/stream/Stream.toList",
      })
  void whatThePhoneLacksIsFound(String expression, String culprit) {
    Path planted = plant("kitstow.planner.Planted", "return " + expression + ";", List.of());

    assertThat(run(planted).faults()).anyMatch(fault -> fault.contains(culprit));
  }

  @Test
  void dependencyMadeForDesktopsIsFound() {
    Path dependency =
        plant("desktop.Own", "return \"\" + ProcessHandle.current().pid();", List.of());
    Path planted =
        plant("kitstow.planner.Planted", "return desktop.Own.text();", List.of(dependency));

    assertThat(run(planted, dependency).faults())
        .anyMatch(fault -> fault.contains("java.lang.ProcessHandle"))
        .anyMatch(fault -> fault.contains("java/lang/ProcessHandle"));
  }

  @Test
  void forgottenDependencyIsFound() {
    Path dependency = plant("desktop.Own", "return \"mm\";", List.of());
    Path planted =
        plant("kitstow.planner.Planted", "return desktop.Own.text();", List.of(dependency));

    assertThat(run(planted).faults()).anyMatch(fault -> fault.contains("desktop.Own"));
  }

  @Test
  void whatThePhoneHasIsNotBlamed() {
    String body = "return \"mm\".isBlank() ? \"\" : String.join(\"\", java.util.List.of(\"mm\"));";

    Phone.Run run = run(plant("kitstow.planner.Planted", body, List.of()));

    assertThat(run.faults()).isEmpty();
    assertThat(run.result()).contains("mm");
  }

  /** A jar of one class with a method {@code text}. */
  private static Path plant(String name, String body, List<Path> classPath) {
    int dot = name.lastIndexOf('.');
    String text =
        "package %s; public class %s { public static String text() { %s } }"
            .formatted(name.substring(0, dot), name.substring(dot + 1), body);
    List<String> options = List.of("--release", "17", "-cp", SourceCode.classPath(classPath));
    return SourceCode.compile(options, name, text, temporary);
  }

  private static Phone.Run run(Path... planted) {
    List<Path> besides = new ArrayList<>();
    for (Path jar : planted) {
      Path phoneJar = jar.resolveSibling("phone-" + jar.getFileName());
      Desugared.toClassFiles(List.of(jar), PhoneLibrary.PHONE.stubs(), phoneJar);
      besides.add(phoneJar);
    }
    return PhoneLibrary.call(besides, "kitstow.planner.Planted", "text");
  }
}
