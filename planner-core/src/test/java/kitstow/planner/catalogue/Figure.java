package kitstow.planner.catalogue;

/**
 * One figure of a catalogue entry.
 *
 * @param name name in the ranges; several figures of an entry may share one
 * @param value in the unit of the name
 */
record Figure(String name, double value) {
  private static final double G_PER_KG = 1000.0;

  static Figure kg(String name, long grams) {
    return new Figure(name, grams / G_PER_KG);
  }
}
