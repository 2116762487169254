package kitstow.tui.view;

import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Zone;

/** From where the load is looked at. */
public enum Eye {
  /** The left half from the left side, front at the left. */
  LEFT("Left side"),
  /** The right half, seen through from the left, front at the left. */
  RIGHT("Right side"),
  /** From above without the roofs, front at the left and the right side at the top. */
  ABOVE("From above"),
  /** The roofs from above. */
  ROOFS("Roofs, from above"),
  /** From behind, the left side at the left. */
  REAR("From behind");

  private final String title;

  Eye(String title) {
    this.title = title;
  }

  /** Name of the view. */
  public String title() {
    return title;
  }

  /** The view after this one. */
  public Eye next() {
    List<Eye> all = List.of(values());
    return all.get((all.indexOf(this) + 1) % all.size());
  }

  /** Whether a box in a zone is seen from here. */
  public boolean sees(BoxMm box, Zone zone) {
    return switch (this) {
      case LEFT -> SideView.shows(Facing.LEFT, box);
      case RIGHT -> SideView.shows(Facing.RIGHT, box);
      case ABOVE -> !PlanView.roof(zone);
      case ROOFS -> PlanView.roof(zone);
      case REAR -> true;
    };
  }

  /** Least of what lies along the picture, millimetres. */
  public int minAcrossMm(BoxMm box) {
    return this == REAR ? box.minYMm() : box.minXMm();
  }

  /** Most of what lies along the picture, millimetres. */
  public int maxAcrossMm(BoxMm box) {
    return this == REAR ? box.maxYMm() : box.maxXMm();
  }

  /** Least of what lies up the picture, millimetres. */
  public int minUpMm(BoxMm box) {
    return flat() ? box.minYMm() : box.minZMm();
  }

  /** Most of what lies up the picture, millimetres. */
  public int maxUpMm(BoxMm box) {
    return flat() ? box.maxYMm() : box.maxZMm();
  }

  /** How near the nearest face of a box is. */
  int near(BoxMm box) {
    return switch (this) {
      case LEFT -> -box.minYMm();
      case RIGHT -> box.maxYMm();
      case ABOVE, ROOFS -> box.maxZMm();
      case REAR -> box.maxXMm();
    };
  }

  /** Whether one looks down. */
  public boolean flat() {
    return this == ABOVE || this == ROOFS;
  }

  Block block(String key, BoxMm box, boolean solid) {
    return new Block(
        key, minAcrossMm(box), maxAcrossMm(box), minUpMm(box), maxUpMm(box), near(box), solid);
  }

  /** The smallest box round some boxes. */
  public static BoxMm round(List<BoxMm> boxes) {
    BoxMm all = boxes.get(0);
    for (BoxMm box : boxes) {
      all =
          new BoxMm(
              Math.min(all.minXMm(), box.minXMm()),
              Math.min(all.minYMm(), box.minYMm()),
              Math.min(all.minZMm(), box.minZMm()),
              Math.max(all.maxXMm(), box.maxXMm()),
              Math.max(all.maxYMm(), box.maxYMm()),
              Math.max(all.maxZMm(), box.maxZMm()));
    }
    return all;
  }
}
