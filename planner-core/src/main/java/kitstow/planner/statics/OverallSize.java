package kitstow.planner.statics;

import java.util.Optional;
import java.util.OptionalInt;
import kitstow.planner.model.Body;
import kitstow.planner.model.BodyKind;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Trailer;
import kitstow.planner.model.Ute;
import kitstow.planner.model.VehiclePointMm;

/**
 * How long and how high everything is together, closed, as boxes of the vehicle frame: what a ferry
 * asks for and a garage has. Springs and tyres are taken as they stand at the heights given.
 *
 * @param lengthMm overall length; absent where ute or trailer do not say how far they reach
 * @param heightMm overall height above the ground; absent where the trailer does not say its own
 * @param rearmost what reaches farthest back
 * @param highest what reaches highest
 */
public record OverallSize(
    OptionalInt lengthMm, OptionalInt heightMm, Outermost rearmost, Outermost highest) {
  /**
   * What reaches farthest.
   *
   * @param key a body key, the trailer's id, or "ute"
   * @param title shown to people
   */
  public record Outermost(String key, String title) {}

  /** Size without a trailer. */
  public static OverallSize alone(Loading loading) {
    return of(loading, Optional.empty());
  }

  /** Size with a trailer on the ball. */
  public static OverallSize with(Loading loading, Trailer trailer) {
    return of(loading, Optional.of(trailer));
  }

  /** Size in a state, with the trailer that is on in it. */
  public static OverallSize of(Loading loading, LoadState state) {
    for (Trailer trailer : loading.scenario().trailers()) {
      if (state.trailerId().filter(trailer.id()::equals).isPresent()) {
        return with(loading, trailer);
      }
    }
    return alone(loading);
  }

  private static OverallSize of(Loading loading, Optional<Trailer> trailer) {
    Ute ute = loading.scenario().ute();
    Outermost rearmost = new Outermost("ute", "the ute itself");
    Outermost highest = new Outermost("ute", "the roof of the cab");
    int frontMm = ute.foremostXMm().orElse(0);
    int rearMm = ute.rearmostXMm();
    int highMm = ute.cabRoofZMm();
    for (Body body : loading.bodies()) {
      if (hasExtent(body)) {
        frontMm = Math.min(frontMm, body.box().minXMm());
        if (body.box().maxXMm() > rearMm) {
          rearMm = body.box().maxXMm();
          rearmost = new Outermost(body.key(), body.title());
        }
        if (body.box().maxZMm() > highMm) {
          highMm = body.box().maxZMm();
          highest = new Outermost(body.key(), body.title());
        }
      }
    }
    boolean lengthKnown = ute.foremostXMm().isPresent();
    boolean heightKnown = true;
    if (trailer.isPresent()) {
      Trailer towed = trailer.get();
      lengthKnown &= towed.behindBallMm().isPresent();
      heightKnown = towed.heightMm().isPresent();
      int ballMm = ute.ball().map(VehiclePointMm::xMm).orElse(ute.rearmostXMm());
      int endMm = ballMm + towed.behindBallMm().orElse(0);
      if (endMm > rearMm) {
        rearMm = endMm;
        rearmost = new Outermost(towed.id(), towed.title());
      }
      if (towed.heightMm().orElse(0) > highMm) {
        highMm = towed.heightMm().getAsInt();
        highest = new Outermost(towed.id(), towed.title());
      }
    }
    return new OverallSize(
        lengthKnown ? OptionalInt.of(rearMm - frontMm) : OptionalInt.empty(),
        heightKnown ? OptionalInt.of(highMm) : OptionalInt.empty(),
        rearmost,
        highest);
  }

  /** Rearmost point of ute, body and load, without a trailer; x in the vehicle frame. */
  public static int rearmostXMm(Loading loading) {
    int rearMm = loading.scenario().ute().rearmostXMm();
    for (Body body : loading.bodies()) {
      if (hasExtent(body)) {
        rearMm = Math.max(rearMm, body.box().maxXMm());
      }
    }
    return rearMm;
  }

  /** The ute's own masses, people and the ball are points. */
  private static boolean hasExtent(Body body) {
    return body.kind() != BodyKind.UTE
        && body.kind() != BodyKind.PERSON
        && body.kind() != BodyKind.BALL;
  }
}
