package kitstow.planner.android;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packaged library as an app takes it: desugared, shrunk, counted, and searching on little
 * memory. Prints its figures as a table. Runs with the profile {@code android} only.
 */
@Tag("android")
class AndroidWholeTest {
  private static final long SEED = 1;
  private static final long STEPS = 200;
  private static final long STEPS_WHEN_SHRUNK = 20;
  private static final String DEMO = "remote-fortnight";

  /** What the app itself needs of its own code; all else is up to the rules in the jars. */
  private static final String KEEP_ENTRY =
      "-keep class " + OneSolve.class.getName() + " { public static java.lang.String plan(...); }";

  /**
   * R8 8.5 miscounts the stack of the code it makes for records of more than 16 components, notices
   * and goes on. From class files that are desugared before, which are what runs here, it does not.
   */
  private static final String LONG_RECORDS = "The max stack height of 16 is violated";

  @TempDir static Path temporary;

  private static final FigureTable TABLE = new FigureTable();

  private static Phone phone;
  private static List<Path> jars;
  private static Path desugared;

  @BeforeAll
  static void takeThePackagedJar() throws IOException {
    phone = Phone.atMinimum(temporary);
    jars = new ArrayList<>(Phone.dependencies());
    jars.add(Path.of(System.getProperty("kitstow.jar")));
    Path entry = temporary.resolve("entry").resolve("kitstow/planner/android/OneSolve.class");
    Files.createDirectories(entry.getParent());
    Files.copy(SourceCode.compiledTest(OneSolve.class), entry);
    jars.add(ClassFiles.pack(temporary.resolve("entry"), temporary.resolve("entry.jar")));
    desugared = temporary.resolve("desugared.jar");
    Complaints complaints = Desugared.toClassFiles(jars, phone.stubs(), desugared);
    assertThat(complaints.missing()).isEmpty();
    assertThat(complaints.others()).isEmpty();
  }

  @AfterAll
  static void print() {
    System.out.print(TABLE.text());
  }

  @Test
  void samePlanAndEverythingLinks() {
    Phone.Run run = solve(desugared, jars, STEPS);

    assertThat(run.faults()).isEmpty();
    assertThat(run.result()).contains(planOnTheDesktop(STEPS));
    ClassFiles app = ClassFiles.ofJars(List.of(desugared));
    List<String> ours = app.names().stream().filter(name -> name.startsWith("kitstow/")).toList();
    assertThat(ours).hasSizeGreaterThan(200);
    assertThat(new Linker(app, phone.platform()).unlinked(ours)).isEmpty();
    TABLE.add("seed 1, 200 steps, desugared", "the desktop's plan");
    TABLE.add("classes the search loaded", "%d, none refused, all linked", run.loaded().size());
    TABLE.add("classes of the library", "%d, all linked", ours.size());
  }

  @Test
  void onlyKnownClassesAreMissing() throws IOException {
    Path bare =
        ClassFiles.merge(
            jars, AndroidWholeTest::codeOrService, temporary.resolve("without-rules.jar"));
    List<String> rules = new ArrayList<>(List.of(KEEP_ENTRY));
    rules.addAll(rulesThatSilenceNothing());
    Path folder = Files.createDirectory(temporary.resolve("shrunk"));

    Complaints complaints = Shrunk.toDex(List.of(bare), rules, phone.stubs(), folder);

    Map<String, String> known = KnownMissing.reasons();
    assertThat(known.values()).allMatch(reason -> reason.length() > 40);
    assertThat(complaints.missing()).isEqualTo(new TreeSet<>(known.keySet()));
    assertThat(complaints.others()).allMatch(text -> text.contains(LONG_RECORDS));
    DexFolder dex = DexFolder.of(folder);
    TABLE.add("classes missing for R8", "%d, as listed", known.size());
    TABLE.add("dex, shrunk by R8", "%s, %d methods", megabytes(dex.bytes()), dex.methods());
  }

  @Test
  void unshrunkDexFitsIntoOneFile() throws IOException {
    Path folder = Files.createDirectory(temporary.resolve("unshrunk"));

    Complaints complaints = Desugared.toDex(jars, phone.stubs(), folder);

    assertThat(complaints.missing()).isEmpty();
    assertThat(complaints.others()).isEmpty();
    DexFolder dex = DexFolder.of(folder);
    assertThat(dex.files()).isEqualTo(1);
    TABLE.add("dex, not shrunk", "%s, %d methods", megabytes(dex.bytes()), dex.methods());
  }

  @Test
  void shrunkAppPlansByTheRulesInTheJars() {
    Path rules =
        ClassFiles.merge(
            jars,
            name -> name.startsWith("META-INF/proguard/") || name.startsWith("META-INF/services/"),
            temporary.resolve("rules.jar"));
    Path shrunk = temporary.resolve("shrunk.jar");

    Complaints complaints =
        Shrunk.toClassFiles(List.of(desugared, rules), List.of(KEEP_ENTRY), phone.stubs(), shrunk);
    Phone.Run run = solve(shrunk, List.of(shrunk), STEPS_WHEN_SHRUNK);

    assertThat(complaints.missing()).isEmpty();
    assertThat(complaints.others()).isEmpty();
    assertThat(run.faults()).isEmpty();
    assertThat(run.result()).contains(planOnTheDesktop(STEPS_WHEN_SHRUNK));
    TABLE.add("seed 1, 20 steps, shrunk", "the desktop's plan");
  }

  @Test
  void missingClassOfANewDependencyIsNotAKnownOne() throws IOException {
    String text =
        "package desktop; public class Own {"
            + " public static long own() { return ProcessHandle.current().pid(); } }";
    Path jar = SourceCode.compile(List.of("--release", "17"), "desktop.Own", text, temporary);
    Path folder = Files.createDirectory(temporary.resolve("planted"));

    Complaints complaints =
        Shrunk.toDex(
            List.of(jar), List.of("-keep class desktop.Own { *; }"), phone.stubs(), folder);

    assertThat(complaints.missing()).containsExactly("java.lang.ProcessHandle");
    assertThat(KnownMissing.reasons()).doesNotContainKey("java.lang.ProcessHandle");
  }

  private static Phone.Run solve(Path app, List<Path> resources, long steps) {
    return phone.call(
        List.of(app),
        resources,
        OneSolve.class.getName(),
        "plan",
        Texts.catalogue(),
        Texts.scenario(DEMO),
        SEED,
        steps);
  }

  private static String planOnTheDesktop(long steps) {
    return OneSolve.plan(Texts.catalogue(), Texts.scenario(DEMO), SEED, steps);
  }

  private static boolean codeOrService(String entry) {
    return entry.startsWith("META-INF/services/")
        || (entry.endsWith(".class") && !entry.startsWith("META-INF/"));
  }

  /** The library's own rules, but for those that keep R8 from telling what is missing. */
  private static List<String> rulesThatSilenceNothing() throws IOException {
    Path rules = Path.of("src/main/resources/META-INF/proguard/planner-core.pro");
    return Files.readAllLines(rules).stream()
        .filter(line -> !line.startsWith("-dontwarn"))
        .toList();
  }

  private static String megabytes(long bytes) {
    return String.format(Locale.ROOT, "%.2f MB", bytes * 1.0e-6);
  }
}
