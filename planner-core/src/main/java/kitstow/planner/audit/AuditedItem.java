package kitstow.planner.audit;

import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;

/**
 * A placed unit whose box the audit has worked out by itself from space, corner, shape and turn.
 *
 * @param placed the unit as the loading has it
 * @param block where it stands with everything closed
 * @param body index of its body
 */
record AuditedItem(PlacedItem placed, Block block, int body) {
  /** Letter of the listed length in the name of a turn. */
  static final char LENGTH = 'L';

  /** Letter of the listed width in the name of a turn. */
  static final char WIDTH = 'W';

  private static final char HEIGHT = 'H';

  /**
   * Works out where a unit stands.
   *
   * @throws IllegalArgumentException if the loading has it elsewhere
   */
  static AuditedItem of(PlacedItem placed, int body) {
    SpacePointMm corner = placed.placement().corner();
    Block room = Block.of(placed.space().box());
    SizeMm listed = placed.item().shapes().get(placed.placement().shape());
    String turn = placed.placement().turn().name();
    Block block =
        new Block(
            standing(room.x(), corner.xMm(), listed, turn.charAt(0)),
            standing(room.y(), corner.yMm(), listed, turn.charAt(1)),
            standing(room.z(), corner.zMm(), listed, turn.charAt(2)));
    if (!block.equals(Block.of(placed.box()))) {
      throw new IllegalArgumentException(
          "item " + placed.key() + " stands at " + placed.box() + ", its placement says " + block);
    }
    return new AuditedItem(placed, block, body);
  }

  private static Span standing(Span room, int cornerMm, SizeMm listed, char letter) {
    int fromMm = room.fromMm() + cornerMm;
    return new Span(fromMm, fromMm + listedMm(listed, letter));
  }

  /** A turn's name says, in the order x, y, z, which listed dimension lies that way. */
  private static int listedMm(SizeMm listed, char letter) {
    return switch (letter) {
      case LENGTH -> listed.lengthMm();
      case WIDTH -> listed.widthMm();
      case HEIGHT -> listed.heightMm();
      default -> throw new IllegalArgumentException("no such dimension in a turn: " + letter);
    };
  }

  /** The direction in which a listed dimension lies. */
  Block.Axis axisOf(char letter) {
    return switch (placed.placement().turn().name().indexOf(letter)) {
      case 0 -> Block.Axis.X;
      case 1 -> Block.Axis.Y;
      default -> Block.Axis.Z;
    };
  }

  String key() {
    return placed.key();
  }

  Item item() {
    return placed.item();
  }

  Space space() {
    return placed.space();
  }

  /** Whether it lies on bare bars, where nothing has a floor beneath it. */
  boolean onBareBars() {
    return AuditCase.hasBareBars(space());
  }

  /** Whether it is a unit apart from the other. */
  boolean differsFrom(AuditedItem other) {
    return !key().equals(other.key());
  }

  /** Whether it comes out with the slide of a module. */
  boolean ridesOn(AuditedModule module) {
    return space().movesWith().contains(module.id());
  }

  /** Whether its space is in or on a module. */
  boolean isIn(AuditedModule module) {
    return space().inModules().contains(module.id());
  }

  /** Whether it stands right on top of the other, at least in part. */
  boolean standsOn(AuditedItem other) {
    return block.z().fromMm() == other.block.z().toMm() && block.sharesPlan(other.block);
  }

  /** Whether it is over the other at any height, at least in part. */
  boolean isOver(AuditedItem other) {
    return block.z().fromMm() >= other.block.z().toMm() && block.sharesPlan(other.block);
  }
}
