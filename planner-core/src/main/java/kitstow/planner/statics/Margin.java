package kitstow.planner.statics;

import java.util.LinkedHashMap;
import java.util.Map;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Trailer;

/**
 * Load, limit and margin with its bands. Ratings are exact; masses carry their tolerance. Bodies of
 * one catalogue entry share their error fully, different entries are independent. What was on the
 * ute when its axles were weighed adds nothing to a line that counts the ute: what it is heavier
 * than stated, the rest of the ute is lighter. On a line without the ute, a roof's, it counts.
 *
 * @param loadKg load
 * @param limitKg limit
 * @param marginKg limit less load
 * @param rssKg root-sum-square band of the margin, 95 % half width
 * @param worstKg straight sum of all tolerances
 * @param over whether the load is above the limit, compared in whole grams
 */
public record Margin(
    double loadKg, double limitKg, double marginKg, double rssKg, double worstKg, boolean over) {
  /** What a margin means. */
  public enum Verdict {
    /** Within the limit even at the far end of its band. */
    WITHIN,
    /** Within by the figures, but by less than their band: weigh before relying on it. */
    ON_PAPER_ONLY,
    /** Over. */
    OVER
  }

  /** Margin of a line in a state. */
  public static Margin of(Loading loading, LoadState state, LoadLine line) {
    double worst = line.constantToleranceG();
    double[] partG = new double[loading.entries()];
    boolean countsUte = countsUte(loading, line);
    for (LoadLine.Term term : line.terms()) {
      double weight = (double) term.numerator() / line.denominator();
      double part = weight * toleranceG(loading, state, term.body(), countsUte);
      worst += Math.abs(part);
      partG[loading.entryOf(term.body())] += part;
    }
    double loadG = line.loadG(state);
    return new Margin(
        loadG / 1000.0,
        line.limitG() / 1000.0,
        (line.limitG() - loadG) / 1000.0,
        rssKg(line, partG),
        worst / 1000.0,
        line.over(state));
  }

  /**
   * What each catalogue entry adds to the band of a line, grams, by the key its units share; parts
   * of different entries are independent.
   */
  public static Map<String, Double> partsG(Loading loading, LoadState state, LoadLine line) {
    Map<String, Double> byEntry = new LinkedHashMap<>();
    boolean countsUte = countsUte(loading, line);
    for (LoadLine.Term term : line.terms()) {
      Body body = loading.bodies().get(term.body());
      double weight = (double) term.numerator() / line.denominator();
      double part = weight * toleranceG(loading, state, term.body(), countsUte);
      byEntry.merge(body.toleranceKey(), part, Double::sum);
    }
    return byEntry;
  }

  /** Band of a margin, kilograms, from the parts of its entries. */
  public static double rssKg(LoadLine line, Map<String, Double> partsG) {
    return rssKg(line, partsG.values().stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static double rssKg(LoadLine line, double[] partsG) {
    // Linear propagation of independent tolerances (JCGM 100:2008, 5.1.2; section from memory).
    double squares = (double) line.constantToleranceG() * line.constantToleranceG();
    for (double part : partsG) {
      squares += part * part;
    }
    return Math.sqrt(squares) / 1000.0;
  }

  private static boolean countsUte(Loading loading, LoadLine line) {
    for (LoadLine.Term term : line.terms()) {
      if (loading.bodies().get(term.body()).kind() == BodyKind.UTE) {
        return true;
      }
    }
    return false;
  }

  /**
   * What a body adds to the tolerance of the loaded ute in a state, grams: the same share of its
   * mass as when full.
   */
  public static double toleranceG(Loading loading, LoadState state, int body) {
    return toleranceG(loading, state, body, /* countsUte= */ true);
  }

  private static double toleranceG(Loading loading, LoadState state, int index, boolean countsUte) {
    Body body = loading.bodies().get(index);
    if (body.kind() == BodyKind.BALL) {
      return ballToleranceG(loading, state);
    }
    long toleranceG = countsUte ? body.toleranceG() : loading.ownToleranceG(index);
    if (body.kind() == BodyKind.UTE || body.nominalG() == 0L) {
      return toleranceG;
    }
    return (double) toleranceG * state.massG(index) / body.nominalG();
  }

  /** The one body stands for every trailer; its tolerance is that of the trailer that is on. */
  private static long ballToleranceG(Loading loading, LoadState state) {
    for (Trailer trailer : loading.scenario().trailers()) {
      if (state.trailerId().filter(trailer.id()::equals).isPresent()) {
        return trailer.ball().toleranceG();
      }
    }
    return 0L;
  }

  /** What the margin means. */
  public Verdict verdict() {
    if (over) {
      return Verdict.OVER;
    }
    return marginKg < rssKg ? Verdict.ON_PAPER_ONLY : Verdict.WITHIN;
  }

  /**
   * Share of the limit that is used; infinite where the limit is zero and something rests on it.
   */
  public double usedRatio() {
    if (limitKg > 0.0) {
      return loadKg / limitKg;
    }
    return loadKg > 0.0 ? Double.POSITIVE_INFINITY : 0.0;
  }
}
