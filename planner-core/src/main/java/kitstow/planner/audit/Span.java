package kitstow.planner.audit;

/**
 * A stretch of one axis in millimetres.
 *
 * @param fromMm where it starts
 * @param toMm where it ends, at least {@code fromMm}
 */
record Span(int fromMm, int toMm) {
  /** Whether the two have a stretch in common; touching ends are none. */
  boolean shares(Span other) {
    return fromMm < other.toMm && other.fromMm < toMm;
  }

  /** How much the two have in common; zero where they only touch or lie apart. */
  long sharedMm(Span other) {
    return shares(other) ? (long) Math.min(toMm, other.toMm) - Math.max(fromMm, other.fromMm) : 0L;
  }

  /** What the two have in common; they must share. */
  Span common(Span other) {
    return new Span(Math.max(fromMm, other.fromMm), Math.min(toMm, other.toMm));
  }

  /** The shortest stretch that holds both. */
  Span joined(Span other) {
    return new Span(Math.min(fromMm, other.fromMm), Math.max(toMm, other.toMm));
  }

  /** Whether the other lies in this one, ends included. */
  boolean holds(Span other) {
    return fromMm <= other.fromMm && other.toMm <= toMm;
  }

  /** How far the other reaches out of this one at its worse end; zero if it does not. */
  int missedMm(Span other) {
    return Math.max(0, Math.max(fromMm - other.fromMm, other.toMm - toMm));
  }

  /** This span made longer at both ends. */
  Span widened(int beforeMm, int behindMm) {
    return new Span(fromMm - beforeMm, toMm + behindMm);
  }

  /** This span moved. */
  Span moved(int byMm) {
    return new Span(fromMm + byMm, toMm + byMm);
  }

  /** The stretch of a length that follows this span. */
  Span after(int lengthMm) {
    return new Span(toMm, toMm + lengthMm);
  }

  /** The stretch of a length that comes before this span. */
  Span before(int lengthMm) {
    return new Span(fromMm - lengthMm, fromMm);
  }

  /** Its length. */
  int lengthMm() {
    return toMm - fromMm;
  }

  /** Twice its middle, so that it stays whole. */
  long doubledMiddleMm() {
    return (long) fromMm + toMm;
  }
}
