package kitstow.planner.statics;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;

/**
 * One limit in one state as a weighted sum of body masses: {@code load = constant + sum(m * n) /
 * d}. All limits of the planner have this form, so load, margin and band are computed in one place
 * and compared in whole numbers.
 */
public final class LoadLine {
  private final RuleId rule;
  private final String subjectId;
  private final long limitG;
  private final long denominator;
  private final long constantG;
  private final long constantToleranceG;
  private final long slack;
  private final List<Term> terms;

  /** Weight of one body: its mass counts {@code numerator / denominator} times. */
  public record Term(int body, long numerator) {}

  private LoadLine(Builder builder) {
    this.rule = builder.rule;
    this.subjectId = builder.subjectId;
    this.limitG = builder.limitG;
    this.denominator = builder.denominator;
    this.constantG = builder.constantG;
    this.constantToleranceG = builder.constantToleranceG;
    this.slack = builder.slack;
    this.terms = List.copyOf(builder.terms);
  }

  /**
   * Starts a line.
   *
   * @param denominator common denominator of all terms, above zero
   */
  public static Builder of(RuleId rule, String subjectId, long limitG, long denominator) {
    return new Builder(rule, subjectId, limitG, denominator);
  }

  /** Rule. */
  public RuleId rule() {
    return rule;
  }

  /** What is limited. */
  public String subjectId() {
    return subjectId;
  }

  /** Limit in grams. */
  public long limitG() {
    return limitG;
  }

  /** Common denominator. */
  public long denominator() {
    return denominator;
  }

  /** Terms. */
  public List<Term> terms() {
    return terms;
  }

  /** Tolerance of the constant, grams. */
  public long constantToleranceG() {
    return constantToleranceG;
  }

  /** Load times the denominator, exact. */
  public long scaledLoad(LoadState state) {
    long sum = constantG * denominator;
    for (Term term : terms) {
      sum += state.massG(term.body()) * term.numerator();
    }
    return sum;
  }

  /** Load in grams. */
  public double loadG(LoadState state) {
    return (double) scaledLoad(state) / denominator;
  }

  /** Whether the load is above the limit, compared in whole numbers. */
  public boolean over(LoadState state) {
    return scaledLoad(state) > limitG * denominator + slack;
  }

  /** Overload in grams, rounded up; zero where the load is not above the limit. */
  public long overG(LoadState state) {
    return over(state)
        ? (scaledLoad(state) - limitG * denominator + denominator - 1L) / denominator
        : 0L;
  }

  /** Collects the terms of a line. */
  public static final class Builder {
    private final RuleId rule;
    private final String subjectId;
    private final long limitG;
    private final long denominator;
    private final List<Term> terms = new ArrayList<>();
    private long constantG;
    private long constantToleranceG;
    private long slack;

    private Builder(RuleId rule, String subjectId, long limitG, long denominator) {
      this.rule = rule;
      this.subjectId = subjectId;
      this.limitG = limitG;
      this.denominator = denominator;
    }

    /** Adds a body. */
    public Builder add(int body, long numerator) {
      if (numerator != 0L) {
        terms.add(new Term(body, numerator));
      }
      return this;
    }

    /** Adds a mass that is no body of the ute: the trailer. */
    public Builder constant(long massG, long toleranceG) {
      constantG += massG;
      constantToleranceG += toleranceG;
      return this;
    }

    /** Forgives half a gram where shares had to be rounded. */
    public Builder forgiveHalfGram() {
      slack = denominator / 2L;
      return this;
    }

    /** Whether any body was added. */
    public boolean hasTerms() {
      return !terms.isEmpty();
    }

    /** The line. */
    public LoadLine build() {
      return new LoadLine(this);
    }
  }
}
