package kitstow.planner.android;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Calendar;
import java.util.Date;
import java.util.Locale;
import java.util.TimeZone;
import kitstow.planner.json.ReportWriter;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What surrounds the library makes no difference to what it says. */
class NoSurprisesTest {
  private static final Locale LOCALE = Locale.getDefault();
  private static final TimeZone TIME_ZONE = TimeZone.getDefault();

  @AfterEach
  void putBack() {
    Locale.setDefault(LOCALE);
    TimeZone.setDefault(TIME_ZONE);
  }

  @ParameterizedTest
  @CsvSource({"tr-TR, Pacific/Apia", "ar-EG-u-nu-arab, America/St_Johns", "de-DE, Asia/Kathmandu"})
  void otherLocaleAndTimeZoneGiveTheSamePlanAndReport(String locale, String timeZone) {
    String plan = plan();
    String report = report();

    Locale.setDefault(Locale.forLanguageTag(locale));
    TimeZone.setDefault(TimeZone.getTimeZone(timeZone));

    assertThat(plan()).isEqualTo(plan);
    assertThat(report()).isEqualTo(report);
  }

  @Test
  void nothingAsksForWhatSurroundsIt() {
    JavaClasses ours =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("kitstow.planner");
    assertThat(ours).hasSizeGreaterThan(200);
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.time..", "java.text..", "java.lang.reflect..")
        .check(ours);
    noClasses()
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(TimeZone.class, Calendar.class, Date.class, ClassLoader.class)
        .check(ours);
    noClasses()
        .should()
        .callMethod(Locale.class, "getDefault")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "getProperty", String.class)
        .orShould()
        .callMethod(System.class, "getenv", String.class)
        .orShould()
        .callMethod(Class.class, "forName", String.class)
        .orShould()
        .callMethod(String.class, "toLowerCase")
        .orShould()
        .callMethod(String.class, "toUpperCase")
        .orShould()
        .callMethod(String.class, "format", String.class, Object[].class)
        .check(ours);
  }

  private static String plan() {
    return OneSolve.plan(
        Texts.catalogue(), Texts.scenario("work-day"), /* seed= */ 1, /* steps= */ 20);
  }

  private static String report() {
    return ReportWriter.write(ShippedFiles.checked("remote-fortnight"));
  }
}
