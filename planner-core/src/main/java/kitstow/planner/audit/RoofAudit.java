package kitstow.planner.audit;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Body;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Person;
import kitstow.planner.model.RoofLimits;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Surface;
import kitstow.planner.model.Zone;

/** All that lies on the cab roof, and all on the canopy roof, against the roof's own limits. */
final class RoofAudit {
  private RoofAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    judge(
        audited,
        Zone.CAB_ROOF,
        audited.scenario().ute().limits().cabRoof(),
        RuleId.CAB_ROOF_LIMIT,
        "cab-roof",
        findings);
    judge(
        audited,
        Zone.CANOPY_ROOF,
        audited.scenario().canopy().flatMap(Canopy::roof),
        RuleId.CANOPY_ROOF_LIMIT,
        "canopy-roof",
        findings);
  }

  private static void judge(
      AuditCase audited,
      Zone roof,
      Optional<RoofLimits> limits,
      RuleId rule,
      String subject,
      Findings findings) {
    Set<String> sleepers = sleepersOn(audited, roof);
    for (LoadState state : audited.states()) {
      boolean sleeping = state.kind() == LoadKind.PARKED;
      long loadG =
          audited.massG(
              state, body -> isIn(body, roof) || (sleeping && sleepers.contains(body.key())));
      // A roof without limits may carry nothing.
      long limitG = limits.map(known -> allowedG(known, state, audited)).orElse(0L);
      findings.limit(rule, subject, state.id(), loadG, limitG, 1L);
    }
  }

  /** Body keys of the people who sleep on a roof. */
  static Set<String> sleepersOn(AuditCase audited, Zone roof) {
    Set<String> keys = new HashSet<>();
    for (Person person : audited.scenario().trip().people()) {
      if (person.sleepsOn().filter(roof::equals).isPresent()) {
        keys.add(person.id());
      }
    }
    return keys;
  }

  /** Whether a body counts in a zone. */
  static boolean isIn(Body body, Zone zone) {
    return body.zone().filter(zone::equals).isPresent();
  }

  private static long allowedG(RoofLimits limits, LoadState state, AuditCase audited) {
    if (state.kind() == LoadKind.PARKED) {
      return limits.parkedG();
    }
    return state.surface() == Surface.ROAD
        ? limits.movingG()
        : Math.floorDiv(
            limits.movingG() * audited.scenario().settings().offRoadRoofPermille(), 1000L);
  }
}
