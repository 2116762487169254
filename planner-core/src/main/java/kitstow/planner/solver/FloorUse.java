package kitstow.planner.solver;

import java.util.List;

/** What items take of sections and ratings, space by space. */
final class FloorUse {
  private final List<FloorSpace> spaces;
  private final double[][][] sections;
  private final double[] kg;

  FloorUse(List<FloorSpace> spaces) {
    this.spaces = spaces;
    this.sections = new double[spaces.size()][FloorFamily.COUNT][];
    this.kg = new double[spaces.size()];
    for (int s = 0; s < sections.length; s++) {
      for (int k = 0; k < FloorFamily.COUNT; k++) {
        sections[s][k] = new double[spaces.get(s).slices()];
      }
    }
  }

  static int mostSlices(List<FloorSpace> spaces) {
    int most = 1;
    for (FloorSpace space : spaces) {
      most = Math.max(most, space.slices());
    }
    return most;
  }

  void add(FloorColumn column, double atMm, int count, double massKg) {
    int s = column.space().index();
    column.use(atMm, count, sections[s]);
    kg[s] += count * massKg;
  }

  /** Moves a share of the way towards another use. */
  void mix(FloorUse other, double share) {
    for (int s = 0; s < sections.length; s++) {
      for (int k = 0; k < FloorFamily.COUNT; k++) {
        for (int t = 0; t < sections[s][k].length; t++) {
          sections[s][k][t] += share * (other.sections[s][k][t] - sections[s][k][t]);
        }
      }
      kg[s] += share * (other.kg[s] - kg[s]);
    }
  }

  /** Use of a slice beyond what it has, millimetres. */
  double excess(int space, int family, int slice) {
    return sections[space][family][slice] - spaces.get(space).sliceMm();
  }

  /** Mass beyond a limit, kilograms. */
  double excessKg(FloorLimits limits, int limit) {
    double load = 0.0;
    for (int s = 0; s < kg.length; s++) {
      load += limits.weight(limit, s) * kg[s];
    }
    return load - limits.capacityKg(limit);
  }
}
