package kitstow.planner.model;

import kitstow.planner.geometry.BoxMm;

/**
 * The one conversion from the frame of a host to the vehicle frame; see {@link LocalBoxMm} for what
 * a, b and c mean in each.
 */
sealed interface HostFrame {
  /** A box of the host in the vehicle frame. */
  BoxMm toVehicle(LocalBoxMm box);

  /** Frames that are only moved: ute, tray, canopy. */
  record Moved(int xMm, int yMm, int zMm) implements HostFrame {
    @Override
    public BoxMm toVehicle(LocalBoxMm box) {
      int x = xMm + box.aMm();
      int y = yMm + box.bMm();
      int z = zMm + box.cMm();
      return new BoxMm(
          x, y, z, x + box.size().lengthMm(), y + box.size().widthMm(), z + box.size().heightMm());
    }
  }

  /** The frame of a module that stands in a bay: turned, and mirrored between left and right. */
  record Mounted(BoxMm outside, Facing facing) implements HostFrame {
    @Override
    public BoxMm toVehicle(LocalBoxMm box) {
      int depth = box.size().lengthMm();
      int across = box.size().widthMm();
      int z = outside.minZMm() + box.cMm();
      int top = z + box.size().heightMm();
      return switch (facing) {
        case LEFT ->
            new BoxMm(
                outside.minXMm() + box.bMm(),
                outside.maxYMm() - box.aMm() - depth,
                z,
                outside.minXMm() + box.bMm() + across,
                outside.maxYMm() - box.aMm(),
                top);
        case RIGHT ->
            new BoxMm(
                outside.minXMm() + box.bMm(),
                outside.minYMm() + box.aMm(),
                z,
                outside.minXMm() + box.bMm() + across,
                outside.minYMm() + box.aMm() + depth,
                top);
        case REAR ->
            new BoxMm(
                outside.minXMm() + box.aMm(),
                outside.minYMm() + box.bMm(),
                z,
                outside.minXMm() + box.aMm() + depth,
                outside.minYMm() + box.bMm() + across,
                top);
      };
    }
  }
}
