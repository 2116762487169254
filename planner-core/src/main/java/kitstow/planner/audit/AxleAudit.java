package kitstow.planner.audit;

import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.TyreSet;
import kitstow.planner.model.Ute;

/**
 * Axle loads against axle limits and tyres. Exact: masses are whole grams, lengths whole half
 * millimetres, so a load is a whole number of parts of a gram, 2 x wheelbase parts to the gram.
 */
final class AxleAudit {
  private static final int FIRST_INDEX = 100;

  /**
   * Kilograms one tyre carries, by load index from 100 (UN Regulation 54, Annex 4, read in public
   * charts) [S54].
   */
  private static final int[] CAPACITY_KG = {
    800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, 1060, 1090, 1120, 1150, 1180, 1215, 1250,
    1285, 1320, 1360, 1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850, 1900
  };

  private AxleAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    Ute ute = audited.scenario().ute();
    long partsPerG = 2L * ute.wheelbaseMm();
    for (LoadState state : audited.states()) {
      if (state.kind() == LoadKind.PARKED) {
        continue;
      }
      long total = 0L;
      long front = 0L;
      for (int i = 0; i < state.size(); i++) {
        BoxMm box = audited.loading().bodies().get(i).box();
        long doubledX = (long) box.minXMm() + box.maxXMm() + 2L * state.shift(i).xMm();
        // F_front * 2 WB = sum(m_i * (2 WB - 2 c_i)); moments about the rear axle. [S11]
        front += state.massG(i) * (partsPerG - doubledX);
        total += state.massG(i) * partsPerG;
      }
      // What the front axle does not carry, the rear one does.
      long rear = total - front;
      findings.limit(
          RuleId.FRONT_AXLE_LIMIT,
          "front-axle",
          state.id(),
          front,
          ute.limits().frontAxleG(),
          partsPerG);
      findings.limit(
          RuleId.REAR_AXLE_LIMIT,
          "rear-axle",
          state.id(),
          rear,
          ute.limits().rearAxleG(),
          partsPerG);
      judgeTyres(
          RuleId.FRONT_TYRE_LIMIT, "front-tyres", ute.frontTyres(), state, front, ute, findings);
      judgeTyres(RuleId.REAR_TYRE_LIMIT, "rear-tyres", ute.rearTyres(), state, rear, ute, findings);
    }
  }

  private static void judgeTyres(
      RuleId rule,
      String subject,
      TyreSet tyres,
      LoadState state,
      long load,
      Ute ute,
      Findings findings) {
    int row = tyres.loadIndex() - FIRST_INDEX;
    if (row >= 0 && row < CAPACITY_KG.length) {
      long limitG = 1000L * CAPACITY_KG[row] * tyres.count();
      findings.limit(rule, subject, state.id(), load, limitG, 2L * ute.wheelbaseMm());
    }
  }
}
