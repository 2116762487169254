package kitstow.planner.report;

import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.rules.StateCheck;
import kitstow.planner.statics.AxleLoads;
import kitstow.planner.statics.OverallSize;
import kitstow.planner.statics.SideLoads;
import kitstow.planner.trip.EmptyUte;

/** Sentences on good practice that a state does not keep to. */
final class PracticeWords {
  private PracticeWords() {}

  /**
   * What was found.
   *
   * @param title title of the rule
   */
  static String message(String title, StateCheck check, StateFigures figures, Loading loading) {
    return switch (check.rule()) {
      case LEFT_RIGHT -> sides(check, figures, loading);
      case FRONT_AXLE_SHARE -> share(check, figures.axles());
      case FRONT_AXLE_DROP -> drop(check, figures.axles(), loading);
      case BALL_SHARE ->
          "the ball carries "
              + Amounts.text(check.value())
              + " % of the trailer; good practice is "
              + Amounts.text(check.limit())
              + (check.value() < check.limit() ? " % or more" : " % or less");
      case REAR_OVERHANG ->
          "ute, body and load reach "
              + Amounts.whole(check.value())
              + " mm behind the rear axle, "
              + Amounts.whole(check.value() - check.limit())
              + " mm farther than the regulation that is asked for allows";
      case OVERALL_LENGTH, OVERALL_HEIGHT -> outside(check, figures, loading);
      case FRONT_AXLE_FLOOR ->
          "the front axle carries "
              + Amounts.text(check.value())
              + " % of the total; the regulation that is asked for wants "
              + Amounts.text(check.limit())
              + " % or more";
      default ->
          title
              + " is asked for: found "
              + Amounts.text(check.value())
              + " "
              + check.unit()
              + " against "
              + Amounts.text(check.limit())
              + " "
              + check.unit();
    };
  }

  /** What would mend it. */
  static String mend(StateCheck check, StateFigures figures) {
    return switch (check.rule()) {
      case LEFT_RIGHT ->
          "move heavy things to the "
              + (figures.sides().differenceKg() > 0.0 ? "left" : "right")
              + " or towards the middle";
      case FRONT_AXLE_SHARE, FRONT_AXLE_DROP, FRONT_AXLE_FLOOR -> "move heavy things forward";
      case BALL_SHARE ->
          "move the load of the trailer "
              + (check.value() < check.limit() ? "forward" : "rearward")
              + " and weigh it on the ball again";
      case OVERALL_LENGTH -> "put forward or leave what reaches farthest back, or the trailer";
      case OVERALL_HEIGHT -> "take down what reaches highest";
      case REAR_OVERHANG -> "put forward or leave what reaches farthest back";
      default -> "move heavy things forward and towards the centre plane";
    };
  }

  private static String sides(StateCheck check, StateFigures figures, Loading loading) {
    SideLoads sides = figures.sides();
    boolean right = sides.differenceKg() > 0.0;
    String heavy = right ? "right" : "left";
    String heaviest = movable(loading, figures.state(), right);
    return "the left wheels carry "
        + Amounts.text(sides.leftKg())
        + " kg, the right ones "
        + Amounts.text(sides.rightKg())
        + " kg: the "
        + heavy
        + " side is "
        + Amounts.up(check.value())
        + " heavier, where good practice is "
        + Amounts.text(check.limit())
        + " kg at most"
        + (heaviest.isEmpty()
            ? ""
            : "; the heaviest gear on the " + heavy + " that can be moved: " + heaviest);
  }

  /** The heaviest unpinned gear on one side. */
  private static String movable(Loading loading, LoadState state, boolean right) {
    Amounts amounts = new Amounts();
    for (int i = 0; i < state.size(); i++) {
      Body body = loading.bodies().get(i);
      PlacedItem item = loading.placed().get(body.key());
      if (body.kind() == BodyKind.ITEM && item != null && !item.item().pin().isPresent()) {
        long doubledY = (long) body.box().minYMm() + body.box().maxYMm();
        doubledY += 2L * state.shift(i).yMm();
        if (state.massG(i) > 0L && (right ? doubledY > 0L : doubledY < 0L)) {
          amounts.add(body, state.massG(i) / 1000.0);
        }
      }
    }
    return amounts.heaviest();
  }

  private static String outside(StateCheck check, StateFigures figures, Loading loading) {
    boolean length = check.rule() == RuleId.OVERALL_LENGTH;
    OverallSize size = OverallSize.of(loading, figures.state());
    return "ute, load and trailer are "
        + Amounts.whole(check.value())
        + (length ? " mm long" : " mm high")
        + ", "
        + Amounts.whole(check.value() - check.limit())
        + " mm more than this leg takes; what reaches "
        + (length ? "farthest back" : "highest")
        + " is "
        + (length ? size.rearmost() : size.highest()).title();
  }

  private static String share(StateCheck check, AxleLoads axles) {
    double askedKg = check.limit() / 100.0 * axles.totalKg();
    return "the front axle carries "
        + Amounts.text(axles.frontKg())
        + " kg of "
        + Amounts.text(axles.totalKg())
        + " kg, which is "
        + Amounts.text(check.value())
        + " %; good practice is "
        + Amounts.text(check.limit())
        + " % or more, here "
        + Amounts.text(askedKg)
        + " kg: "
        + Amounts.up(askedKg - axles.frontKg())
        + " are missing";
  }

  private static String drop(StateCheck check, AxleLoads axles, Loading loading) {
    double kerbKg = EmptyUte.kerbOf(loading.scenario()).frontG() / 1000.0;
    return "the front axle carries "
        + Amounts.text(axles.frontKg())
        + " kg, "
        + Amounts.up(kerbKg - axles.frontKg())
        + " less than the "
        + Amounts.text(kerbKg)
        + " kg of the ute at kerb; that is a loss of "
        + Amounts.text(check.value())
        + " %, where good practice is "
        + Amounts.text(check.limit())
        + " % ("
        + Amounts.text(kerbKg * check.limit() / 100.0)
        + " kg) at most";
  }
}
