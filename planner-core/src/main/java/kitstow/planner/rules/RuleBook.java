package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;

/** All rules, in the order they are listed to people. */
public final class RuleBook {
  /** Ratings in kilograms. */
  public static final List<LimitRule> LIMITS =
      List.of(
          new GvmLimit(),
          new RearAxleLimit(),
          new FrontAxleLimit(),
          new RearTyreLimit(),
          new FrontTyreLimit(),
          new GcmLimit(),
          new TowingLimit(),
          new BallLimit(),
          new CabRoofLimit(),
          new CanopyRoofLimit(),
          new BarLimit(),
          new SpaceRating(),
          new SlideRating(),
          new ModuleRating(),
          new BayRating(),
          new TrayRating());

  /** Rules that judge a plan once. */
  public static final List<PlanRule> PLAN_RULES =
      List.of(
          new ModuleInBay(),
          new ModuleClash(),
          new CanopyClash(),
          new SlideEnvelope(),
          new InsideSpace(),
          new NoOverlap(),
          new TurnAllowed(),
          new Support(),
          new Bearing(),
          new ClearColumn(),
          new AirClearance(),
          new LidClearance(),
          new DoorAperture(),
          new TwoBars(),
          new PinKept(),
          new ForbiddenPair(),
          new GasOutside(),
          new FuelOutside(),
          new UnderCover(),
          new RoofGear(),
          new PoorCompany(),
          new EmergencyReach(),
          new CabReach(),
          new StopReach(),
          new MovesToReach(),
          new MustTake());

  /** Good practice looked at in every state. */
  public static final List<StateRule> STATE_RULES =
      List.of(
          new LeftRight(),
          new FrontAxleShare(),
          new FrontAxleDrop(),
          new BallShare(),
          new FrontAxleFloor(),
          new RearOverhang(),
          new OverallLength(),
          new OverallHeight());

  private RuleBook() {}

  /** What every rule says of itself. */
  public static List<RuleCard> cards() {
    List<RuleCard> cards = new ArrayList<>();
    for (LimitRule rule : LIMITS) {
      cards.add(rule.card());
    }
    for (PlanRule rule : PLAN_RULES) {
      cards.add(rule.card());
    }
    for (StateRule rule : STATE_RULES) {
      cards.add(rule.card());
    }
    return cards;
  }
}
