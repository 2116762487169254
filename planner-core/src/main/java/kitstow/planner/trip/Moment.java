package kitstow.planner.trip;

/**
 * When something happens, counted from departure.
 *
 * @param km distance driven
 * @param days time passed
 */
public record Moment(double km, double days) {
  /** Departure. */
  static final Moment DEPARTURE = new Moment(0.0, 0.0);

  Moment plus(double moreKm, double moreDays) {
    return new Moment(km + moreKm, days + moreDays);
  }
}
