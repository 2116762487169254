package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import kitstow.planner.LoadPlanner;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;

/** Nothing but the answer reaches a user's terminal. */
class QuietSearchTest {
  /** Written straight to the terminal where nobody has set up logging. */
  private static final Logger METERS = Logger.getLogger("io.micrometer");

  /** Keeps what is logged. */
  private static final class Keeper extends Handler {
    private final List<String> messages = Collections.synchronizedList(new ArrayList<>());

    @Override
    public void publish(LogRecord logged) {
      messages.add(logged.getMessage());
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }

  @Test
  void searchesSideBySideDoNotQuarrelOverTheirMeters() {
    Keeper keeper = new Keeper();
    keeper.setLevel(Level.ALL);
    METERS.setLevel(Level.ALL);
    METERS.addHandler(keeper);
    try {
      LoadPlanner.plan(
          new PlanSearch.Request(ShippedFiles.scenario("counter-1000"), 1L, 60L, 0.0, 4),
          best -> {},
          () -> false);
    } finally {
      METERS.removeHandler(keeper);
      METERS.setLevel(null);
    }

    assertThat(keeper.messages).noneMatch(message -> message.contains("already registered"));
  }
}
