package kitstow.planner.json;

import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Body;
import kitstow.planner.rules.Situation;

/** Writes bodies and boxes. */
final class BodyWriter {
  private BodyWriter() {}

  static void bodies(Situation situation, JsonOut out) {
    RestsOn restsOn = new RestsOn(situation);
    out.list(
        "bodies",
        () -> {
          for (Body body : situation.loading().bodies()) {
            out.entry(() -> body(body, restsOn, out));
          }
        });
  }

  private static void body(Body body, RestsOn restsOn, JsonOut out) {
    out.text("id", body.unit() > 0 ? body.id() : body.key());
    out.unit(body.unit());
    out.word("kind", body.kind());
    out.textOrNull("spaceId", body.spaceId());
    out.list(
        "on",
        () -> {
          for (RestsOn.Share share : restsOn.of(body)) {
            out.entry(
                () -> {
                  out.text("bodyKey", share.key());
                  out.near("share", share.ratio(), 6);
                });
          }
        });
    corners(body.box(), out);
    out.flag("inOverhang", body.inOverhang());
  }

  /** The two corners of a box. */
  static void corners(BoxMm box, JsonOut out) {
    point("minMm", box.minXMm(), box.minYMm(), box.minZMm(), out);
    point("maxMm", box.maxXMm(), box.maxYMm(), box.maxZMm(), out);
  }

  private static void point(String key, int x, int y, int z, JsonOut out) {
    out.object(
        key,
        () -> {
          out.whole("x", x);
          out.whole("y", y);
          out.whole("z", z);
        });
  }
}
