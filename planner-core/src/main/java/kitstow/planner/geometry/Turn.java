package kitstow.planner.geometry;

/**
 * How a box stands: which of its own dimensions lies along x, along y and upward. {@code LWH} is
 * the carrying position as listed: length along x, width along y, height up.
 */
public enum Turn {
  /** Length along x, width along y, height up: as listed. */
  LWH,
  /** Turned a quarter round the vertical: width along x, length along y, height up. */
  WLH,
  /** On its side: length along x, height along y, width up. */
  LHW,
  /** On its side and turned: height along x, length along y, width up. */
  HLW,
  /** On end: width along x, height along y, length up. */
  WHL,
  /** On end and turned: height along x, width along y, length up. */
  HWL;

  /** The size a box of the listed size has when it stands this way. */
  public SizeMm applyTo(SizeMm listed) {
    int l = listed.lengthMm();
    int w = listed.widthMm();
    int h = listed.heightMm();
    return switch (this) {
      case LWH -> new SizeMm(l, w, h);
      case WLH -> new SizeMm(w, l, h);
      case LHW -> new SizeMm(l, h, w);
      case HLW -> new SizeMm(h, l, w);
      case WHL -> new SizeMm(w, h, l);
      case HWL -> new SizeMm(h, w, l);
    };
  }
}
