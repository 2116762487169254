package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import kitstow.tui.cli.ExitCode;
import org.junit.jupiter.api.Test;

class CompareTest {
  private static final String TRIP = Run.small("trip.json");
  private static final String PLANNED = TRIP + ":" + Run.small("plan.json");
  private static final String BROKEN = TRIP + ":" + Run.small("broken-plan.json");

  @Test
  void plansStandSideBySide() {
    Run run = Run.of("compare", PLANNED, BROKEN);
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isEqualTo(ExitCode.BROKEN);
    assertThat(run.outLines())
        .allMatch(line -> line.length() <= 80)
        .noneMatch(line -> line.endsWith(" "));
    Golden.assertSame("small/compared.txt", run.outLines());
  }

  @Test
  void plansThatKeepTheirLimitsExitWithZero() {
    assertThat(Run.of("compare", PLANNED, PLANNED).exitCode()).isEqualTo(ExitCode.OK);
  }

  @Test
  void aScenarioAloneIsSearchedFor() {
    Run run = Run.of("compare", TRIP, PLANNED, "--steps", "5");
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isIn(ExitCode.OK, ExitCode.BROKEN);
    assertThat(run.out()).contains("Units aboard");
  }

  @Test
  void theTrailerIsTakenOffAndAllElseStays() {
    Path scenarios = Path.of("..", "scenarios");
    Path towing = scenarios.resolve("towing-week.json");
    Run run = Run.of("compare", towing.toString(), "--without-trailer", "--steps", "1");
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("no trailer");
    String[] left =
        run.outLines().stream()
            .filter(line -> line.startsWith("kg left to the GVM"))
            .findFirst()
            .orElseThrow()
            .substring("kg left to the GVM".length())
            .trim()
            .split(" +", -1);
    // The trailer puts 150 kg on the ball.
    assertThat(Double.parseDouble(left[1]) - Double.parseDouble(left[0])).isEqualTo(150.0);
  }

  @Test
  void aWorkDayKeepsTheFitOutAndTheEmergencyGear() {
    Run run = Run.of("compare", PLANNED, "--work-day");
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    Golden.assertSame("small/work-day.txt", run.outLines());
  }

  @Test
  void oneColumnOrTooManyAreRefused() {
    Run one = Run.of("compare", PLANNED);
    assertThat(one.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(one.err()).contains("makes 1 columns, must be 2 to 4");
    assertThat(Run.of("compare", PLANNED, PLANNED, PLANNED, "--without-trailer").exitCode())
        .isEqualTo(ExitCode.BAD_INPUT);
  }

  @Test
  void faultsOfAllFilesAreToldAtOnce() {
    Run run = Run.of("compare", "none.json", TRIP + ":nowhere.json");
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains("none.json", "nowhere.json");
    assertThat(run.out()).isEmpty();
  }
}
