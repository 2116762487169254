package kitstow.planner.solver;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kitstow.planner.model.Settings;
import org.jspecify.annotations.Nullable;

/**
 * The best that any run has found so far, rig by rig: kept in a file from one bench to the next, so
 * that short runs can be measured against long ones of another day. A line is a name, grams over,
 * must-take left, value left, the moment in N·m and the step by which it is compared, with
 * semicolons between; with another step it is another rig, or another start, and not known.
 */
final class KnownBests {
  private static final int FIELDS = 6;

  private final @Nullable Path file;
  private final Map<String, Best> bests = new TreeMap<>();

  /** What was reached. */
  private record Best(long overG, long mustLeft, long valueLeft, double momentNm, double stepNm) {
    static Best parse(String[] line) {
      return new Best(
          Long.parseLong(line[1]),
          Long.parseLong(line[2]),
          Long.parseLong(line[3]),
          Double.parseDouble(line[4]),
          Double.parseDouble(line[5]));
    }

    ScoreLevels levels() {
      long steps = (long) Math.ceil(momentNm / stepNm - 1e-9);
      return new ScoreLevels(0L, overG, mustLeft, valueLeft, steps, Long.MIN_VALUE / 4L);
    }

    String line(String name) {
      return String.format(
          Locale.ROOT, "%s;%d;%d;%d;%.1f;%.1f", name, overG, mustLeft, valueLeft, momentNm, stepNm);
    }
  }

  /**
   * Reads what is known.
   *
   * @param file where it is kept, or null to keep nothing
   */
  KnownBests(@Nullable Path file) {
    this.file = file;
    if (file != null && Files.exists(file)) {
      try {
        for (String line : Files.readAllLines(file)) {
          String[] fields = line.split(";", -1);
          if (fields.length != FIELDS) {
            throw new IllegalStateException(file + ": not six fields: " + line);
          }
          bests.put(fields[0], Best.parse(fields));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** What is known of a rig, in steps of the moment; better in handling than anything can be. */
  Optional<ScoreLevels> of(String rig, double stepNm) {
    return Optional.ofNullable(bests.get(rig))
        .filter(best -> best.stepNm() == stepNm)
        .map(Best::levels);
  }

  /** Keeps what a run has found, if it is better than what is known. */
  void offer(String rig, ScoreLevels found, double stepNm, Settings.MassLimits massLimits) {
    boolean better =
        of(rig, stepNm)
            .map(known -> found.toScore(massLimits).compareTo(known.toScore(massLimits)) > 0)
            .orElse(true);
    if (better && file != null && found.conflicts() == 0L) {
      double momentNm = found.momentSteps() * stepNm;
      bests.put(
          rig, new Best(found.overG(), found.mustLeft(), found.valueLeft(), momentNm, stepNm));
      List<String> lines = new ArrayList<>();
      bests.forEach((name, best) -> lines.add(best.line(name)));
      try {
        Files.write(file, lines);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
