package kitstow.planner;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.Optional;
import java.util.stream.Stream;

/** Which package of the planner may depend on which, and on what from outside. */
@AnalyzeClasses(packages = "kitstow.planner", importOptions = ImportOption.DoNotIncludeTests.class)
class LayeringTest {
  private static final String ROOT = "kitstow.planner";

  private static final String[] ALL = {
    "geometry",
    "model",
    "trip",
    "statics",
    "packing",
    "rules",
    "audit",
    "solver",
    "report",
    "advice",
    "problem",
    "json"
  };

  /** What every package may use. */
  private static final String[] COMMON = {
    "java..", "org.jspecify..", "com.google.errorprone.annotations.."
  };

  private static final String OPTAPLANNER = "org.optaplanner..";
  private static final String GSON = "com.google.gson..";

  @ArchTest static final ArchRule geometry = layer("geometry");
  @ArchTest static final ArchRule model = layer("model", "geometry");
  @ArchTest static final ArchRule trip = layer("trip", "model", "geometry");
  @ArchTest static final ArchRule statics = layer("statics", "trip", "model", "geometry");
  @ArchTest static final ArchRule packing = layer("packing", "model", "geometry");

  @ArchTest
  static final ArchRule rules = layer("rules", "statics", "packing", "trip", "model", "geometry");

  @ArchTest
  static final ArchRule report =
      layer("report", "rules", "statics", "packing", "trip", "model", "geometry");

  @ArchTest
  static final ArchRule solver =
      layer("solver", "rules", "statics", "packing", "trip", "model", "geometry", OPTAPLANNER);

  @ArchTest static final ArchRule audit = layer("audit", "model", "geometry");

  @ArchTest
  static final ArchRule advice =
      layer(
          "advice", "rules", "report", "solver", "statics", "packing", "trip", "model", "geometry");

  @ArchTest static final ArchRule problem = layer("problem");

  @ArchTest
  static final ArchRule json =
      layer(
          "json",
          "problem",
          "report",
          "rules",
          "statics",
          "packing",
          "trip",
          "model",
          "geometry",
          GSON);

  @ArchTest
  static final ArchRule root =
      classes()
          .that()
          .resideInAPackage(ROOT)
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(concat(COMMON, ROOT, ROOT + ".."));

  @ArchTest
  static final ArchRule everyClassIsInAKnownPackage =
      classes()
          .should()
          .resideInAnyPackage(
              concat(Stream.of(ALL).map(LayeringTest::tree).toArray(String[]::new), ROOT));

  @ArchTest
  static final ArchRule packagesFormNoCycle =
      slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().allowEmptyShould(true);

  /** The audit checks the planner's answers, so it must not compute with the planner's own code. */
  @ArchTest
  static final ArchRule auditCallsNoStaticMethodOfGeometry =
      noClasses()
          .that()
          .resideInAPackage(tree("audit"))
          .should()
          .accessTargetWhere(isStaticMethodOfGeometry())
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule onlyTheSolverKnowsOptaPlanner =
      noClasses()
          .that()
          .resideOutsideOfPackage(tree("solver"))
          .should()
          .dependOnClassesThat()
          .resideInAPackage(OPTAPLANNER);

  @ArchTest
  static final ArchRule onlyJsonKnowsGson =
      noClasses()
          .that()
          .resideOutsideOfPackage(tree("json"))
          .should()
          .dependOnClassesThat()
          .resideInAPackage(GSON);

  @ArchTest
  static final ArchRule nothingTouchesFilesOrTheScreen =
      noClasses()
          .should()
          .dependOnClassesThat()
          .haveNameMatching("java\\.(io\\.(File|RandomAccessFile)|nio\\.file\\.|awt\\.).*");

  @ArchTest
  static final ArchRule nothingPrints =
      GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

  /**
   * A rule that a package depends on itself, on what all may use, and on what is named.
   *
   * @param allowed packages of ours by their short name, others as a pattern with dots
   */
  private static ArchRule layer(String name, String... allowed) {
    String[] trees =
        Stream.of(allowed).map(s -> s.contains(".") ? s : tree(s)).toArray(String[]::new);
    return classes()
        .that()
        .resideInAPackage(tree(name))
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(concat(concat(COMMON, trees), tree(name)))
        .allowEmptyShould(true);
  }

  private static String tree(String name) {
    return ROOT + "." + name + "..";
  }

  private static String[] concat(String[] first, String... more) {
    return Stream.concat(Stream.of(first), Stream.of(more)).toArray(String[]::new);
  }

  private static DescribedPredicate<JavaAccess<?>> isStaticMethodOfGeometry() {
    return DescribedPredicate.describe(
        "the target is a static method of geometry",
        access ->
            resideInAPackage(tree("geometry")).test(access.getTargetOwner())
                && isStaticMethod(access.getTarget().resolveMember()));
  }

  private static boolean isStaticMethod(Optional<? extends JavaMember> member) {
    return member
        .filter(m -> m instanceof JavaMethod)
        .map(m -> m.getModifiers().contains(JavaModifier.STATIC))
        .orElse(false);
  }
}
