package kitstow.planner.audit;

import kitstow.planner.geometry.BoxMm;

/**
 * A box as three spans, vehicle frame (x rearward, y right, z up; millimetres). The audit's own
 * form of a box: it shares no code with the boxes it checks.
 *
 * @param x along the vehicle
 * @param y across it
 * @param z upward
 */
record Block(Span x, Span y, Span z) {
  /** The three directions, in the order in which a turn names them. */
  enum Axis {
    X,
    Y,
    Z
  }

  /** A box of the model. */
  static Block of(BoxMm box) {
    return new Block(
        new Span(box.minXMm(), box.maxXMm()),
        new Span(box.minYMm(), box.maxYMm()),
        new Span(box.minZMm(), box.maxZMm()));
  }

  /** Its span in a direction. */
  Span along(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }

  /** The same box with another span in one direction. */
  Block with(Axis axis, Span span) {
    return switch (axis) {
      case X -> new Block(span, y, z);
      case Y -> new Block(x, span, z);
      case Z -> new Block(x, y, span);
    };
  }

  /** This box moved in plan. */
  Block moved(int byXMm, int byYMm) {
    return new Block(x.moved(byXMm), y.moved(byYMm), z);
  }

  /** The smallest box that holds both. */
  Block joined(Block other) {
    return new Block(x.joined(other.x), y.joined(other.y), z.joined(other.z));
  }

  /** The room of a height right above it. */
  Block above(int heightMm) {
    return new Block(x, y, z.after(heightMm));
  }

  /** Whether the two have volume in common. */
  boolean sharesRoom(Block other) {
    return x.shares(other.x) && y.shares(other.y) && z.shares(other.z);
  }

  /** How far the two reach into each other: the shortest way in which one could leave. */
  long depthInMm(Block other) {
    return Math.min(x.sharedMm(other.x), Math.min(y.sharedMm(other.y), z.sharedMm(other.z)));
  }

  /** Whether the two have area in common, seen from above. */
  boolean sharesPlan(Block other) {
    return x.shares(other.x) && y.shares(other.y);
  }

  /** Area in common, seen from above. */
  long sharedPlanMm2(Block other) {
    return x.sharedMm(other.x) * y.sharedMm(other.y);
  }

  /** Its area, seen from above. */
  long planMm2() {
    return (long) x.lengthMm() * y.lengthMm();
  }

  /** Whether the other lies in this one, faces included. */
  boolean holds(Block other) {
    return x.holds(other.x) && y.holds(other.y) && z.holds(other.z);
  }
}
