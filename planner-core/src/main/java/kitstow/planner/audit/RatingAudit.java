package kitstow.planner.audit;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.FittedTank;
import kitstow.planner.model.LoadKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Slide;
import kitstow.planner.model.Space;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Zone;

/** What spaces, slides, modules, bays and the tray carry, against their ratings. */
final class RatingAudit {
  private static final Set<Zone> ON_TRAY =
      EnumSet.of(Zone.TRAY, Zone.UNDER_TRAY, Zone.CANOPY, Zone.CANOPY_ROOF, Zone.REAR_CARRIER);

  private RatingAudit() {}

  static void judge(AuditCase audited, Findings findings) {
    for (Space space : audited.rig().spaces().values()) {
      judge(
          audited,
          RuleId.SPACE_RATING,
          space.id(),
          space.ratings(),
          body -> body.spaceId().filter(space.id()::equals).isPresent(),
          findings);
    }
    for (AuditedModule module : audited.modules()) {
      judgeSlide(audited, module.fitted().module(), findings);
      judgeFixedPart(audited, module.fitted().module(), findings);
      judge(
          audited,
          RuleId.BAY_RATING,
          module.fitted().bay().id(),
          module.fitted().bay().ratings(),
          body -> body.inModules().contains(module.id()),
          findings);
    }
    judgeTray(audited, findings);
  }

  private static void judgeSlide(AuditCase audited, FitOutModule module, Findings findings) {
    boolean contentsOnly = module.slide().filter(Slide::contentsOnly).isPresent();
    String movingPart = module.id() + Loading.MOVING;
    judge(
        audited,
        RuleId.SLIDE_RATING,
        module.id(),
        module.slide().map(Slide::ratings),
        body ->
            body.movesWith().contains(module.id())
                && !(contentsOnly && body.key().equals(movingPart)),
        findings);
  }

  /** The fixed part carries what is in the module but neither it, its tanks nor on its slide. */
  private static void judgeFixedPart(AuditCase audited, FitOutModule module, Findings findings) {
    Set<String> own = new HashSet<>();
    own.add(module.id());
    own.add(module.id() + Loading.MOVING);
    Set<String> tanks = new HashSet<>();
    for (Map.Entry<String, FittedTank> entry : audited.rig().tanks().entrySet()) {
      if (entry.getValue().moduleId().filter(module.id()::equals).isPresent()) {
        tanks.add(entry.getKey());
      }
    }
    judge(
        audited,
        RuleId.MODULE_RATING,
        module.id(),
        module.rating(),
        body ->
            body.inModules().contains(module.id())
                && !own.contains(body.key())
                && !(isTank(body) && tanks.contains(body.id()))
                && !body.movesWith().contains(module.id()),
        findings);
  }

  private static boolean isTank(Body body) {
    return body.kind() == BodyKind.TANK || body.kind() == BodyKind.LIQUID;
  }

  private static void judgeTray(AuditCase audited, Findings findings) {
    Set<String> sleepers = RoofAudit.sleepersOn(audited, Zone.CANOPY_ROOF);
    Optional<Ratings> rating = audited.scenario().tray().flatMap(Tray::rating);
    if (!rating.isPresent()) {
      return;
    }
    for (LoadState state : audited.states()) {
      boolean sleeping = state.kind() == LoadKind.PARKED;
      long loadG =
          audited.massG(
              state,
              body ->
                  body.key().equals(Rig.CANOPY)
                      || body.zone().filter(ON_TRAY::contains).isPresent()
                      || (sleeping && sleepers.contains(body.key())));
      findings.limit(
          RuleId.TRAY_RATING,
          Rig.TRAY,
          state.id(),
          loadG,
          AuditCase.allowedG(rating.get(), state),
          1L);
    }
  }

  private static void judge(
      AuditCase audited,
      RuleId rule,
      String subject,
      Optional<Ratings> ratings,
      Predicate<Body> carried,
      Findings findings) {
    if (ratings.isPresent()) {
      int[] bodies = audited.bodies(carried);
      for (LoadState state : audited.states()) {
        findings.limit(
            rule,
            subject,
            state.id(),
            Arrays.stream(bodies).mapToLong(state::massG).sum(),
            AuditCase.allowedG(ratings.get(), state),
            1L);
      }
    }
  }
}
