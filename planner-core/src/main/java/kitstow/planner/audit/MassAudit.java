package kitstow.planner.audit;

import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.UteLimits;

/** Total mass against GVM, and what a trailer adds against GCM, towing and ball limits. */
final class MassAudit {
  private MassAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    UteLimits limits = audited.scenario().ute().limits();
    for (LoadState state : audited.states()) {
      if (state.kind() == LoadKind.PARKED) {
        continue;
      }
      long totalG = audited.massG(state, body -> true);
      findings.limit(RuleId.GVM_LIMIT, "ute", state.id(), totalG, limits.gvmG(), 1L);
      if (state.kind() == LoadKind.MOVING && state.trailerId().isPresent()) {
        Trailer trailer = trailer(audited, state.trailerId().get());
        judgeTowing(limits, state, trailer, totalG, findings);
        limits
            .ballG()
            .ifPresent(
                limitG ->
                    findings.limit(
                        RuleId.BALL_LIMIT,
                        trailer.id(),
                        state.id(),
                        audited.massG(state, Loading.BALL),
                        limitG,
                        1L));
      }
    }
  }

  private static void judgeTowing(
      UteLimits limits, LoadState state, Trailer trailer, long uteG, Findings findings) {
    // The ball mass stands on the ute and in the trailer's total; it must be counted once.
    long combinationG = uteG + trailer.total().massG() - trailer.ball().massG();
    limits
        .gcmG()
        .ifPresent(
            limitG ->
                findings.limit(
                    RuleId.GCM_LIMIT, trailer.id(), state.id(), combinationG, limitG, 1L));
    (trailer.braked() ? limits.brakedTowingG() : limits.unbrakedTowingG())
        .ifPresent(
            limitG ->
                findings.limit(
                    RuleId.TOWING_LIMIT,
                    trailer.id(),
                    state.id(),
                    trailer.total().massG(),
                    limitG,
                    1L));
  }

  private static Trailer trailer(AuditCase audited, String id) {
    for (Trailer trailer : audited.scenario().trailers()) {
      if (trailer.id().equals(id)) {
        return trailer;
      }
    }
    throw new IllegalArgumentException("no such trailer: " + id);
  }
}
