package kitstow.planner;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnitAccess;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.stream.Stream;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Surface;

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
  static final ArchRule auditOnlyReadsAndMakesValuesOfGeometry =
      noClasses()
          .that()
          .resideInAPackage(tree("audit"))
          .should()
          .accessTargetWhere(computesInGeometry())
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule auditKnowsOnlyThePlainValuesOfGeometry =
      noClasses()
          .that()
          .resideInAPackage(tree("audit"))
          .should()
          .dependOnClassesThat(
              resideInAPackage(tree("geometry"))
                  .and(not(belongToAnyOf(BoxMm.class, PointMm.class, SizeMm.class, Turn.class))));

  /** Ratings, slides and empty bays have answers of their own; the audit works those out itself. */
  @ArchTest
  static final ArchRule auditAsksTheModelForNoAnswer =
      noClasses()
          .that()
          .resideInAPackage(tree("audit"))
          .should()
          .callMethod(Ratings.class, "inG", LoadKind.class, Surface.class)
          .orShould()
          .callMethod(FittedModule.class, "pullOut")
          .orShould()
          .callMethod(Loading.class, "home")
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

  /** Any method of geometry that is neither an accessor of a record nor what every enum has. */
  private static DescribedPredicate<JavaAccess<?>> computesInGeometry() {
    return DescribedPredicate.describe(
        "the target computes something in geometry",
        access -> {
          JavaClass owner = access.getTargetOwner();
          String name = access.getTarget().getName();
          return access instanceof JavaCodeUnitAccess<?> call
              && resideInAPackage(tree("geometry")).test(owner)
              && owner.getMethods().stream().anyMatch(method -> method.getName().equals(name))
              && !(call.getTarget().getRawParameterTypes().isEmpty()
                  && owner.tryGetField(name).isPresent());
        });
  }
}
