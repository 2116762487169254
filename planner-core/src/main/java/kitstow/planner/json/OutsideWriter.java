package kitstow.planner.json;

import java.util.OptionalInt;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Trailer;
import kitstow.planner.statics.OverallSize;

/** Writes how long and high everything is together. */
final class OutsideWriter {
  private final Loading loading;
  private final Output out;

  OutsideWriter(Loading loading, Output out) {
    this.loading = loading;
    this.out = out;
  }

  /** Without a trailer. */
  void alone() {
    size(OverallSize.alone(loading));
  }

  /** With a trailer. */
  void with(Trailer trailer) {
    out.text("trailerId", trailer.id());
    size(OverallSize.with(loading, trailer));
  }

  private void size(OverallSize size) {
    orNull("lengthMm", size.lengthMm());
    out.text("rearmost", size.rearmost().key());
    orNull("heightMm", size.heightMm());
    out.text("highest", size.highest().key());
  }

  private void orNull(String key, OptionalInt mm) {
    if (mm.isPresent()) {
      out.whole(key, mm.getAsInt());
    } else {
      out.nothing(key);
    }
  }
}
