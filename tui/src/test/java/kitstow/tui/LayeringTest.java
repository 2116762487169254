package kitstow.tui;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;

/** Which package of the terminal program may depend on which. */
@AnalyzeClasses(packages = "kitstow.tui", importOptions = ImportOption.DoNotIncludeTests.class)
class LayeringTest {
  private static final String ROOT = "kitstow.tui";
  private static final String LANTERNA = "com.googlecode.lanterna..";
  private static final String PICOCLI = "picocli..";

  @ArchTest static final ArchRule view = layer("view");
  @ArchTest static final ArchRule cli = layer("cli", "view", PICOCLI, "org.apache.commons.csv..");
  @ArchTest static final ArchRule keys = layer("keys");
  @ArchTest static final ArchRule widget = layer("widget", "keys", "view");
  @ArchTest static final ArchRule app = layer("app", "edit", "keys", "view");
  @ArchTest static final ArchRule edit = layer("edit");
  @ArchTest static final ArchRule screen = layer("screen", "app", "edit", "widget", "keys", "view");

  @ArchTest
  static final ArchRule runtime =
      layer("runtime", "screen", "app", "edit", "widget", "keys", "view", "cli", LANTERNA);

  @ArchTest
  static final ArchRule packagesFormNoCycle =
      slices().matching(ROOT + ".(*)..").should().beFreeOfCycles();

  /** What the screen shows follows from its state alone. */
  @ArchTest
  static final ArchRule stateAndDrawingsReadNoFileAndNoClock =
      noClasses()
          .that()
          .resideInAnyPackage(
              tree("app"), tree("edit"), tree("screen"), tree("widget"), tree("keys"))
          .should()
          .dependOnClassesThat()
          .haveNameMatching(
              "java\\.nio\\.file\\.Files|java\\.io\\.File.*|java\\.time\\..*Clock|java\\.lang\\.Thread")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(System.class, "currentTimeMillis");

  private static ArchRule layer(String name, String... allowed) {
    List<String> trees =
        new ArrayList<>(
            List.of(
                "java..",
                "org.jspecify..",
                "com.google.errorprone.annotations..",
                "kitstow.planner..",
                tree(name)));
    for (String one : allowed) {
      trees.add(one.contains(".") ? one : tree(one));
    }
    return classes()
        .that()
        .resideInAPackage(tree(name))
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(trees.toArray(new String[0]));
  }

  private static String tree(String name) {
    return ROOT + "." + name + "..";
  }
}
