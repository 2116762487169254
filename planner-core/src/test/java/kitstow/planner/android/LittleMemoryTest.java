package kitstow.planner.android;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The search on a phone's memory and with a weak compiler, in virtual machines of the desktop. The
 * times are of the machine the check runs on and say nothing of a phone's.
 */
@Tag("android")
class LittleMemoryTest {
  private static final long STEPS = 10000;
  private static final double SECONDS = 10.0;
  private static final long[] SEEDS = {1, 2, 3, 4, 5};
  private static final String LITTLE_HEAP = "-Xmx192m";
  private static final String ONE_THREAD_COLLECTOR = "-XX:+UseSerialGC";
  private static final String WEAK_COMPILER = "-XX:TieredStopAtLevel=1";

  private static final double MIB = 1024.0 * 1024.0;

  @TempDir static Path temporary;

  private static final FigureTable TABLE = new FigureTable();

  private static Fork fork;

  @BeforeAll
  static void takeThePackagedJar() {
    List<Path> classPath = new ArrayList<>(Phone.dependencies());
    classPath.add(Path.of(System.getProperty("kitstow.jar")));
    fork = new Fork(classPath, temporary);
  }

  @AfterAll
  static void print() {
    System.out.print(TABLE.text());
  }

  @Test
  void sameStepsGiveTheSamePlan() {
    Fork.Figures plenty = fork.steps(1, STEPS);
    Fork.Figures little = fork.steps(1, STEPS, LITTLE_HEAP, ONE_THREAD_COLLECTOR);
    Fork.Figures weak = fork.steps(1, STEPS, LITTLE_HEAP, ONE_THREAD_COLLECTOR, WEAK_COMPILER);

    assertThat(little.plan()).isEqualTo(plenty.plan());
    assertThat(weak.plan()).isEqualTo(plenty.plan());
    TABLE.add("10000 steps, default heap", "%.1f s", plenty.number("seconds"));
    TABLE.add("10000 steps, 192 MiB", "%.1f s, the same plan", little.number("seconds"));
    TABLE.add(
        "10000 steps, 192 MiB, C1 only",
        "%.1f s, the same plan, %.2f times as long",
        weak.number("seconds"),
        weak.number("seconds") / little.number("seconds"));
    TABLE.add(
        "peak heap at 192 MiB",
        "%.0f MiB, %.0f MiB after a collection",
        little.number("beforeCollection") / MIB,
        little.number("afterCollection") / MIB);
    TABLE.add("allocated in 10000 steps", "%.0f MiB", little.number("allocated") / MIB);
  }

  @Test
  void tenSecondsFindAsMuchOnLittleMemory() {
    List<Fork.Figures> plenty = new ArrayList<>();
    List<Fork.Figures> little = new ArrayList<>();
    for (long seed : SEEDS) {
      plenty.add(fork.seconds(seed, SECONDS));
      little.add(fork.seconds(seed, SECONDS, LITTLE_HEAP, ONE_THREAD_COLLECTOR));
    }

    TABLE.add("10 s, default heap", "%s", found(plenty));
    TABLE.add("10 s, 192 MiB", "%s", found(little));
    assertThat(median(little, "unitsHome")).isLessThanOrEqualTo(median(plenty, "unitsHome"));
    assertThat(median(little, "momentNm")).isLessThanOrEqualTo(median(plenty, "momentNm") * 1.01);
  }

  private static String found(List<Fork.Figures> figures) {
    return String.format(
        Locale.ROOT,
        "%.0f N·m, %.0f units home (medians of 5 seeds)",
        median(figures, "momentNm"),
        median(figures, "unitsHome"));
  }

  private static double median(List<Fork.Figures> figures, String name) {
    return figures.stream()
        .map(each -> each.number(name))
        .sorted()
        .toList()
        .get(figures.size() / 2);
  }
}
