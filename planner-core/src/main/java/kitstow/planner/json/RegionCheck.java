package kitstow.planner.json;

import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.Zone;
import kitstow.planner.problem.Code;

/**
 * Notes bays and spaces that clearly contradict what they belong to: outside the clear inside of
 * their canopy, beside their module, or riding on a module that does not pull out.
 */
final class RegionCheck {
  /** Nothing to compare with. */
  static final RegionCheck NONE =
      new RegionCheck(Optional.empty(), Optional.empty(), /* pullsOut= */ true);

  private final Optional<LocalBoxMm> inside;
  private final Optional<SizeMm> module;
  private final boolean pullsOut;

  private RegionCheck(Optional<LocalBoxMm> inside, Optional<SizeMm> module, boolean pullsOut) {
    this.inside = inside;
    this.module = module;
    this.pullsOut = pullsOut;
  }

  /** Against the clear inside of a canopy. */
  static RegionCheck canopy(LocalBoxMm inside) {
    return new RegionCheck(Optional.of(inside), Optional.empty(), /* pullsOut= */ true);
  }

  /** Against a module's outside, if that is known. */
  static RegionCheck module(Optional<SizeMm> size, boolean pullsOut) {
    return new RegionCheck(Optional.empty(), size, pullsOut);
  }

  /** Compares a region of a ute, tray or canopy. */
  void hostRegion(Fields fields, LocalBoxMm box, Zone zone) {
    if (!inside.isPresent() || zone != Zone.CANOPY || !fields.good("cornerMm", "sizeMm", "zone")) {
      return;
    }
    LocalBoxMm room = inside.get();
    within(fields, "x", box.aMm(), box.size().lengthMm(), room.aMm(), room.size().lengthMm());
    within(fields, "y", box.bMm(), box.size().widthMm(), room.bMm(), room.size().widthMm());
    within(fields, "z", box.cMm(), box.size().heightMm(), room.cMm(), room.size().heightMm());
  }

  private static void within(
      Fields fields, String axis, int fromMm, int lengthMm, int roomFromMm, int roomLengthMm) {
    int toMm = fromMm + lengthMm;
    int roomToMm = roomFromMm + roomLengthMm;
    if (fromMm < roomFromMm || toMm > roomToMm) {
      outside(fields, axis, fromMm, toMm, roomFromMm, roomToMm, "the clear inside of the canopy");
    }
  }

  /** Compares a region of a module; it may stand on the module, but not beside or above it. */
  void moduleRegion(Fields fields, LocalBoxMm box, boolean moves) {
    if (moves && !pullsOut) {
      fields.error(
          Code.MOVES_WITHOUT_SLIDE,
          "moves",
          "is true in a module that does not pull out",
          "give the module a \"slide\", or leave \"moves\" out");
    }
    if (!module.isPresent() || !fields.good("cornerMm", "sizeMm")) {
      return;
    }
    SizeMm size = module.get();
    int depthToMm = box.aMm() + box.size().lengthMm();
    int acrossToMm = box.bMm() + box.size().widthMm();
    if (box.aMm() < 0 || depthToMm > size.lengthMm()) {
      outside(fields, "depth", box.aMm(), depthToMm, 0, size.lengthMm(), "its module");
    }
    if (box.bMm() < 0 || acrossToMm > size.widthMm()) {
      outside(fields, "across", box.bMm(), acrossToMm, 0, size.widthMm(), "its module");
    }
    if (box.cMm() < 0 || box.cMm() > size.heightMm()) {
      fields.error(
          Code.OUTSIDE_HOST,
          "cornerMm",
          "starts "
              + box.cMm()
              + " mm up, must start in or on its module of "
              + size.heightMm()
              + " mm height",
          "measure from the module's underside");
    }
  }

  private static void outside(
      Fields fields, String axis, int fromMm, int toMm, int roomFromMm, int roomToMm, String room) {
    fields.error(
        Code.OUTSIDE_HOST,
        "cornerMm",
        "reaches from "
            + fromMm
            + " to "
            + toMm
            + " mm in "
            + axis
            + ", must be within "
            + room
            + ", which is from "
            + roomFromMm
            + " to "
            + roomToMm
            + " mm",
        "put corner and size right, or those of what it belongs to");
  }
}
