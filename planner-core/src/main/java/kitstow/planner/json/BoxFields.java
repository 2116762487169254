package kitstow.planner.json;

import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.VehiclePointMm;

/**
 * Reads corners and sizes, millimetres. Hosts that are only moved (ute, tray, canopy) write x, y, z
 * and length, width, height; a module writes depth, across, up and depth, across, height.
 */
final class BoxFields {
  private BoxFields() {}

  /** Outside size of something as listed. */
  static SizeMm size(Fields fields, String key) {
    return size(fields.object(key, "give {\"length\": 600, \"width\": 400, \"height\": 350}"));
  }

  /** A size whose fields are these. */
  static SizeMm size(Fields size) {
    SizeMm sizeMm =
        new SizeMm(
            size.whole("length", Measure.SIZE),
            size.whole("width", Measure.SIZE),
            size.whole("height", Measure.SIZE));
    size.done();
    return sizeMm;
  }

  /** Size of a module, or of something in its frame. */
  static SizeMm moduleSize(Fields fields) {
    Fields size =
        fields.object("sizeMm", "give {\"depth\": 500, \"across\": 900, \"height\": 300}");
    SizeMm sizeMm =
        new SizeMm(
            size.whole("depth", Measure.SIZE),
            size.whole("across", Measure.SIZE),
            size.whole("height", Measure.SIZE));
    size.done();
    return sizeMm;
  }

  /** A point of the vehicle. */
  static VehiclePointMm vehiclePoint(Fields fields, String key) {
    return vehiclePoint(point(fields, key));
  }

  /** A point of the vehicle, if it is given. */
  static Optional<VehiclePointMm> vehiclePointIfGiven(Fields fields, String key) {
    return fields.objectIfGiven(key).map(BoxFields::vehiclePoint);
  }

  private static VehiclePointMm vehiclePoint(Fields point) {
    SpacePointMm at = spacePoint(point);
    return new VehiclePointMm(at.xMm(), at.yMm(), at.zMm());
  }

  /** A corner relative to a space. */
  static SpacePointMm spaceCorner(Fields fields) {
    return spacePoint(point(fields, "cornerMm"));
  }

  /** A corner relative to a space, if it is given. */
  static Optional<SpacePointMm> spaceCornerIfGiven(Fields fields) {
    return fields.objectIfGiven("cornerMm").map(BoxFields::spacePoint);
  }

  private static Fields point(Fields fields, String key) {
    return fields.object(key, "give {\"x\": 0, \"y\": 0, \"z\": 0}");
  }

  private static SpacePointMm spacePoint(Fields point) {
    SpacePointMm at =
        new SpacePointMm(
            point.whole("x", Measure.COORDINATE),
            point.whole("y", Measure.COORDINATE),
            point.whole("z", Measure.COORDINATE));
    point.done();
    return at;
  }

  /** A box in the frame of a ute, tray or canopy. */
  static LocalBoxMm hostBox(Fields fields) {
    SpacePointMm corner = spaceCorner(fields);
    return new LocalBoxMm(corner.xMm(), corner.yMm(), corner.zMm(), size(fields, "sizeMm"));
  }

  /** A box in the frame of a module. */
  static LocalBoxMm moduleBox(Fields fields) {
    Fields corner = fields.object("cornerMm", "give {\"depth\": 0, \"across\": 0, \"up\": 0}");
    int depth = corner.whole("depth", Measure.COORDINATE);
    int across = corner.whole("across", Measure.COORDINATE);
    int up = corner.whole("up", Measure.COORDINATE);
    corner.done();
    return new LocalBoxMm(depth, across, up, moduleSize(fields));
  }

  /** A box in the vehicle frame. */
  static BoxMm vehicleBox(Fields fields) {
    LocalBoxMm box = hostBox(fields);
    return BoxMm.at(new PointMm(box.aMm(), box.bMm(), box.cMm()), box.size());
  }
}
