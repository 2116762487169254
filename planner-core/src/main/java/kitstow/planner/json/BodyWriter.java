package kitstow.planner.json;

import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Body;
import kitstow.planner.rules.Situation;

/** Writes bodies and boxes. */
final class BodyWriter {
  private BodyWriter() {}

  static void bodies(Situation situation, Output out) {
    RestsOn restsOn = new RestsOn(situation);
    out.listAlways("bodies", situation.loading().bodies(), body -> body(body, restsOn, out));
  }

  private static void body(Body body, RestsOn restsOn, Output out) {
    out.text("id", body.unit() > 0 ? body.id() : body.key());
    unit(body.unit(), out);
    out.word("kind", body.kind());
    out.textOrNull("spaceId", body.spaceId());
    out.listAlways(
        "on",
        restsOn.of(body),
        share -> {
          out.text("bodyKey", share.key());
          out.near("share", share.ratio(), 6);
        });
    corners(body.box(), out);
    out.flag("inOverhang", body.inOverhang());
  }

  /** The unit of an item of which there are several; null for 0. */
  static void unit(int value, Output out) {
    if (value > 0) {
      out.whole("unit", value);
    } else {
      out.nothing("unit");
    }
  }

  /** The two corners of a box. */
  static void corners(BoxMm box, Output out) {
    out.point("minMm", box.minXMm(), box.minYMm(), box.minZMm());
    out.point("maxMm", box.maxXMm(), box.maxYMm(), box.maxZMm());
  }
}
