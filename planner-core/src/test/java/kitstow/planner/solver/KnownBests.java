package kitstow.planner.solver;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kitstow.planner.model.Settings;
import org.jspecify.annotations.Nullable;

/**
 * The best that any run has found so far, rig by rig: what is shipped with the tests, so that short
 * runs can be measured against long ones of another day, and what a file adds to it. A line is a
 * name, a print of the scenario, grams over, must-take left, value left and the moment in N·m, with
 * semicolons between; a line whose print is not the scenario's is passed over.
 */
final class KnownBests {
  private static final String SHIPPED = "known-bests.csv";
  private static final int FIELDS = 6;

  /** Moments are written to a tenth of a newton metre. */
  private static final double ROUNDED_NM = 0.051;

  private final @Nullable Path file;
  private final Map<String, List<Best>> bests = new TreeMap<>();

  /** What was reached. */
  private record Best(String print, long overG, long mustLeft, long valueLeft, double momentNm) {
    static Best parse(String[] line) {
      return new Best(
          line[1],
          Long.parseLong(line[2]),
          Long.parseLong(line[3]),
          Long.parseLong(line[4]),
          Double.parseDouble(line[5]));
    }

    /** In steps of the moment; better in handling than anything can be. */
    ScoreLevels levels(double stepNm) {
      long steps = (long) Math.ceil((momentNm - ROUNDED_NM) / stepNm);
      return new ScoreLevels(0L, overG, mustLeft, valueLeft, steps, Long.MIN_VALUE / 4L);
    }

    String line(String name) {
      return String.format(
          Locale.ROOT, "%s;%s;%d;%d;%d;%.1f", name, print, overG, mustLeft, valueLeft, momentNm);
    }
  }

  /**
   * Reads what is known.
   *
   * @param file what is known beside what is shipped, and where it is kept; or null
   */
  KnownBests(@Nullable Path file) {
    this.file = file;
    try {
      readShipped();
      if (file != null && Files.exists(file)) {
        read(Files.readAllLines(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void readShipped() throws IOException {
    try (InputStream in = KnownBests.class.getResourceAsStream(SHIPPED)) {
      if (in == null) {
        throw new IllegalStateException("no " + SHIPPED);
      }
      read(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList());
    }
  }

  private void read(List<String> lines) {
    for (String line : lines) {
      String[] fields = line.split(";", -1);
      if (fields.length != FIELDS) {
        throw new IllegalStateException("not six fields: " + line);
      }
      bests.computeIfAbsent(fields[0], name -> new ArrayList<>()).add(Best.parse(fields));
    }
  }

  /** What is known of a rig. */
  Optional<ScoreLevels> of(BenchRig rig, double stepNm) {
    Settings.MassLimits massLimits = rig.scenario().settings().massLimits();
    String print = rig.print();
    return bests.getOrDefault(rig.name(), List.of()).stream()
        .filter(best -> best.print().equals(print))
        .map(best -> best.levels(stepNm))
        .max(Comparator.comparing(levels -> levels.toScore(massLimits)));
  }

  /** Keeps what a run has found, if it is better than what is known. */
  void offer(BenchRig rig, ScoreLevels found, double stepNm) {
    Settings.MassLimits massLimits = rig.scenario().settings().massLimits();
    boolean better =
        of(rig, stepNm)
            .map(known -> found.toScore(massLimits).compareTo(known.toScore(massLimits)) > 0)
            .orElse(true);
    if (better && file != null && found.conflicts() == 0L) {
      double momentNm = found.momentSteps() * stepNm;
      Best best =
          new Best(rig.print(), found.overG(), found.mustLeft(), found.valueLeft(), momentNm);
      bests.put(rig.name(), List.of(best));
      List<String> lines = new ArrayList<>();
      bests.forEach((name, known) -> known.forEach(one -> lines.add(one.line(name))));
      try {
        Files.write(file, lines);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
