package kitstow.planner.packing;

import java.util.Collection;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.model.Door;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;

/** Where a module goes when it is pulled out, and whether it passes its door on the way. */
public final class SlideTravel {
  /** The section of what moves, across the pull-out: along the side and in height. */
  public record Envelope(int fromMm, int toMm, int lowerZMm, int upperZMm) {}

  private SlideTravel() {}

  /** The room beyond a module's face that it sweeps; without extent if it does not pull out. */
  public static BoxMm swept(FittedModule module) {
    BoxMm box = module.box();
    PointMm out = module.pullOut();
    return switch (module.bay().facing()) {
      case LEFT ->
          new BoxMm(
              box.minXMm(),
              box.minYMm() + out.yMm(),
              box.minZMm(),
              box.maxXMm(),
              box.minYMm(),
              box.maxZMm());
      case RIGHT ->
          new BoxMm(
              box.minXMm(),
              box.maxYMm(),
              box.minZMm(),
              box.maxXMm(),
              box.maxYMm() + out.yMm(),
              box.maxZMm());
      case REAR ->
          new BoxMm(
              box.maxXMm(),
              box.minYMm(),
              box.minZMm(),
              box.maxXMm() + out.xMm(),
              box.maxYMm(),
              box.maxZMm());
    };
  }

  /** What something that rides on a module sweeps from its closed place to the pulled-out one. */
  public static BoxMm swept(BoxMm rider, FittedModule module) {
    return Boxes.union(rider, rider.moved(module.pullOut()));
  }

  /** The section of a module that pulls out, with the tallest thing on it. */
  public static Envelope envelope(Loading loading, FittedModule module) {
    return envelope(loading.rig(), module, loading.placed().values());
  }

  /**
   * The section of a module that pulls out, with the tallest of some things that ride on it.
   *
   * @param items things; those that do not ride on the module do not count
   */
  public static Envelope envelope(Rig rig, FittedModule module, Collection<PlacedItem> items) {
    String id = module.module().id();
    BoxMm box = module.box();
    int upper = box.maxZMm();
    for (FittedModule other : rig.modules().values()) {
      if (other.movesWith().contains(id)) {
        upper = Math.max(upper, other.box().maxZMm());
      }
    }
    for (PlacedItem item : items) {
      if (item.space().movesWith().contains(id)) {
        upper = Math.max(upper, item.box().maxZMm());
      }
    }
    return module.bay().facing() == Facing.REAR
        ? new Envelope(box.minYMm(), box.maxYMm(), box.minZMm(), upper)
        : new Envelope(box.minXMm(), box.maxXMm(), box.minZMm(), upper);
  }

  /** How far an envelope fouls a door, in millimetres; zero where it passes. */
  public static int foulMm(Envelope envelope, FittedDoor door) {
    int foul = Math.max(door.fromMm() - envelope.fromMm(), envelope.toMm() - door.toMm());
    foul = Math.max(foul, door.sillZMm() - envelope.lowerZMm());
    foul = Math.max(foul, envelope.upperZMm() - door.headZMm());
    for (Door.Strut strut : door.struts()) {
      int along =
          Math.min(envelope.toMm(), strut.toMm()) - Math.max(envelope.fromMm(), strut.fromMm());
      int up =
          Math.min(envelope.upperZMm(), strut.upperZMm())
              - Math.max(envelope.lowerZMm(), strut.lowerZMm());
      if (along > 0 && up > 0) {
        foul = Math.max(foul, Math.min(along, up));
      }
    }
    return Math.max(0, foul);
  }
}
