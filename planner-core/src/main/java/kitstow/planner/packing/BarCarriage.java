package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.Space;

/**
 * Which bars carry an item on a roof or side rack. Without a floor an item needs two bars beneath
 * it with its centre between them; the nearest on either side of its centre share it by the lever
 * rule. With a platform floor the floor hands each item to the nearest bars on either side of its
 * centre.
 */
public final class BarCarriage {
  /** Parts into which an item's mass is divided between two bars: 1 mg on a 100 kg load. */
  public static final long SHARE_PARTS = 1_000_000_000L;

  /** Share of an item that one bar carries, 0 to 1. */
  public record Share(RoofBars.Bar bar, double ratio) {
    /** The share in whole parts of {@link #SHARE_PARTS}. */
    public long parts() {
      return Math.round(ratio * SHARE_PARTS);
    }
  }

  private BarCarriage() {}

  /** Line of a bar, x in the vehicle frame. */
  public static int lineXMm(Space space, RoofBars.Bar bar) {
    return space.box().minXMm() + bar.fromFrontMm();
  }

  /** Bars beneath an item, front to rear. */
  public static List<RoofBars.Bar> beneath(BoxMm item, Space space, RoofBars bars) {
    List<RoofBars.Bar> beneath = new ArrayList<>();
    for (RoofBars.Bar bar : bars.bars()) {
      int x = lineXMm(space, bar);
      if (item.minXMm() <= x && x <= item.maxXMm()) {
        beneath.add(bar);
      }
    }
    return beneath;
  }

  /**
   * Whether bars can carry an item where it is: its centre over the width of the space and between
   * two bars. On bare bars these two lie beneath it and it rests on them; on a platform floor they
   * are the first and the last of all.
   */
  public static boolean carried(BoxMm item, Space space, RoofBars bars) {
    boolean resting = bars.platformFloor() || item.minZMm() == space.box().minZMm();
    List<RoofBars.Bar> between = bars.platformFloor() ? bars.bars() : beneath(item, space, bars);
    if (between.size() < 2 || !resting) {
      return false;
    }
    long centreX = (long) item.minXMm() + item.maxXMm();
    long centreY = (long) item.minYMm() + item.maxYMm();
    return 2L * lineXMm(space, between.get(0)) <= centreX
        && centreX <= 2L * lineXMm(space, between.get(between.size() - 1))
        && 2L * space.box().minYMm() <= centreY
        && centreY <= 2L * space.box().maxYMm();
  }

  /** Shares of the bars that carry an item; they add up to one unless there is no bar at all. */
  public static List<Share> shares(BoxMm item, Space space, RoofBars bars) {
    List<RoofBars.Bar> candidates = bars.platformFloor() ? bars.bars() : beneath(item, space, bars);
    if (candidates.isEmpty()) {
      return List.of();
    }
    long centre = (long) item.minXMm() + item.maxXMm();
    int behind = 0;
    while (behind < candidates.size() && 2L * lineXMm(space, candidates.get(behind)) <= centre) {
      behind++;
    }
    if (behind == 0) {
      return List.of(new Share(candidates.get(0), 1.0));
    }
    RoofBars.Bar front = candidates.get(behind - 1);
    if (behind == candidates.size()) {
      return List.of(new Share(front, 1.0));
    }
    RoofBars.Bar rear = candidates.get(behind);
    long frontX = 2L * lineXMm(space, front);
    long rearX = 2L * lineXMm(space, rear);
    // Lever rule between the two bars. [S10]
    double rearRatio = (double) (centre - frontX) / (rearX - frontX);
    return List.of(new Share(front, 1.0 - rearRatio), new Share(rear, rearRatio));
  }
}
