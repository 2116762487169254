package kitstow.planner.audit;

import java.util.List;
import java.util.Optional;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Slide;

/**
 * A fitted module as the audit sees it.
 *
 * @param fitted the module in its bay
 * @param block its outside, closed
 */
record AuditedModule(FittedModule fitted, Block block) {
  static AuditedModule of(FittedModule fitted) {
    return new AuditedModule(fitted, Block.of(fitted.box()));
  }

  String id() {
    return fitted.module().id();
  }

  /** How far its moving part comes out; zero without a slide. */
  int extensionMm() {
    return fitted.module().slide().map(Slide::extensionMm).orElse(0);
  }

  /** What stands at a place when closed, with the slide out. */
  Block pulledOut(Block closed) {
    int out = extensionMm();
    return switch (fitted.bay().facing()) {
      case LEFT -> closed.moved(/* byXMm= */ 0, -out);
      case RIGHT -> closed.moved(/* byXMm= */ 0, out);
      case REAR -> closed.moved(out, /* byYMm= */ 0);
    };
  }

  /** The room in front of its face that its moving part comes through; none without a slide. */
  Optional<Block> swept() {
    int out = extensionMm();
    if (out == 0) {
      return Optional.empty();
    }
    return Optional.of(
        switch (fitted.bay().facing()) {
          case LEFT -> block.with(Block.Axis.Y, block.y().before(out));
          case RIGHT -> block.with(Block.Axis.Y, block.y().after(out));
          case REAR -> block.with(Block.Axis.X, block.x().after(out));
        });
  }

  /** Whether it has a slide. */
  boolean slides() {
    return fitted.module().slide().isPresent();
  }

  /** The room that something takes up at one time or another while the slide carries it out. */
  Block onTheWayOut(Block closed) {
    return closed.joined(pulledOut(closed));
  }

  /** Whether it comes out whole with the slide of the other. */
  boolean ridesOn(AuditedModule other) {
    return fitted.movesWith().contains(other.id());
  }

  /** Whether it stands in or on the other. */
  boolean isIn(AuditedModule other) {
    return fitted.inModules().contains(other.id());
  }

  /** Whether this module stands in or on the other, or the other in or on this one. */
  boolean isNestedWith(AuditedModule other) {
    return isIn(other) || other.isIn(this);
  }

  /** Doors of its bay on the side it opens to, in the order of the bay. */
  List<FittedDoor> doorsInFront(Rig rig) {
    return AuditCase.doors(rig, fitted.bay().doorIds(), fitted.bay().facing());
  }

  /** Whether a footprint lies wholly outside the wall that this module opens through. */
  boolean isBeyondJamb(Rig rig, Block place) {
    List<FittedDoor> doors = doorsInFront(rig);
    Block bay = Block.of(fitted.bay().box());
    return switch (fitted.bay().facing()) {
      case LEFT -> place.y().toMm() <= planeOr(doors, bay.y().fromMm());
      case RIGHT -> place.y().fromMm() >= planeOr(doors, bay.y().toMm());
      case REAR -> place.x().fromMm() >= planeOr(doors, bay.x().toMm());
    };
  }

  private static int planeOr(List<FittedDoor> doors, int bayFaceMm) {
    return doors.isEmpty() ? bayFaceMm : doors.get(0).planeMm();
  }
}
