package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Pin;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;

/**
 * Turns an order of items into places: each item in turn takes the first of its candidate places,
 * forward and low first, at which no rule of place, company or emergency reach is broken. Whatever
 * finds no place stays out, with the rule that barred its best place. The same order always gives
 * the same places.
 */
public final class Decoder {
  /** Places tried in full for one item before it is given up. */
  private static final int MOST_TRIES = 30;

  /** What a millimetre of height costs against one of mean reach behind the rear axle. */
  private static final double HEIGHT_COST = 0.25;

  /** What a millimetre rearward costs where all of it lies ahead of the rear axle. */
  private static final double AHEAD_COST = 0.02;

  private final PlacementJudge judge;
  private final int rearAxleXMm;

  /**
   * What became of an order of items.
   *
   * @param placed items with a place
   * @param barred for each item without one, the rule that barred it
   */
  public record Decoded(List<PlacedItem> placed, Map<String, RuleId> barred, List<Step> steps) {
    /** Nothing decoded yet. */
    public static final Decoded NOTHING = new Decoded(List.of(), Map.of(), List.of());
  }

  /** What became of one item of an order; an order that starts alike starts with the same steps. */
  public record Step(Wanted wanted, String spaceId, Optional<PlacedItem> place, RuleId barredBy) {
    boolean isFor(Wanted other, String otherSpaceId) {
      return wanted.firstPose() == other.firstPose()
          && wanted.key().equals(other.key())
          && spaceId.equals(otherSpaceId);
    }
  }

  /** A decoder for a rig. */
  public Decoder(Rig rig) {
    this.judge = new PlacementJudge(rig);
    this.rearAxleXMm = rig.scenario().ute().wheelbaseMm();
  }

  /**
   * Packs a group of spaces.
   *
   * @param cluster spaces whose contents can be in each other's way
   * @param wanted items by space id, in the order in which they are placed
   * @param before an earlier decode of the same group; the steps the two orders share are not
   *     searched again
   */
  public Decoded decode(List<Space> cluster, Map<String, List<Wanted>> wanted, Decoded before) {
    Trial trial = new Trial(cluster);
    Map<String, RuleId> barred = new LinkedHashMap<>();
    List<Step> steps = new ArrayList<>();
    boolean alike = true;
    for (Space space : cluster) {
      for (Wanted one : wanted.getOrDefault(space.id(), List.of())) {
        int at = steps.size();
        alike =
            alike && at < before.steps().size() && before.steps().get(at).isFor(one, space.id());
        Step step = alike ? before.steps().get(at) : find(one, space, trial);
        steps.add(step);
        if (step.place().isPresent()) {
          trial.add(step.place().get());
        } else {
          barred.put(one.key(), step.barredBy());
        }
      }
    }
    return new Decoded(new ArrayList<>(trial.all()), barred, steps);
  }

  /** Whether a unit can stand in a space at all, in any pose. */
  public boolean mayHold(Wanted wanted, Space space) {
    for (Pose pose : wanted.poses()) {
      if (!judge.bars(wanted, space, pose).isPresent()) {
        return true;
      }
    }
    return false;
  }

  private record Candidate(Pose pose, PointMm corner, double cost) {}

  private Step find(Wanted wanted, Space space, Trial trial) {
    RuleId barredBy = RuleId.INSIDE_SPACE;
    if (trial.filledMm3(space.id()) + wanted.poses().get(0).size().volumeMm3()
        > volumeMm3(Room.of(space))) {
      return new Step(wanted, space.id(), Optional.empty(), barredBy);
    }
    List<Pose> first =
        wanted.firstPose() >= 0 && wanted.firstPose() < wanted.poses().size()
            ? List.of(wanted.poses().get(wanted.firstPose()))
            : List.of();
    for (List<Pose> poses : List.of(first, wanted.poses())) {
      List<Candidate> candidates = new ArrayList<>();
      for (Pose pose : poses) {
        Optional<RuleId> bar = judge.bars(wanted, space, pose);
        if (bar.isPresent()) {
          barredBy = bar.get();
        } else {
          addCandidates(wanted, space, pose, trial, candidates);
        }
      }
      candidates.sort(Comparator.comparingDouble(Candidate::cost));
      int tries = 0;
      for (Candidate candidate : candidates) {
        PlacedItem item = placed(wanted, space, candidate);
        Optional<RuleId> broken = judge.breaks(item, trial);
        if (!broken.isPresent()) {
          return new Step(wanted, space.id(), Optional.of(item), barredBy);
        }
        if (tries == 0) {
          barredBy = broken.get();
        }
        if (++tries >= MOST_TRIES) {
          break;
        }
      }
    }
    return new Step(wanted, space.id(), Optional.empty(), barredBy);
  }

  private static long volumeMm3(BoxMm box) {
    return (long) box.lengthMm() * box.widthMm() * box.heightMm();
  }

  private static PlacedItem placed(Wanted wanted, Space space, Candidate candidate) {
    PointMm at = candidate.corner();
    BoxMm box = BoxMm.at(at, candidate.pose().size());
    SpacePointMm corner =
        new SpacePointMm(
            at.xMm() - space.box().minXMm(),
            at.yMm() - space.box().minYMm(),
            at.zMm() - space.box().minZMm());
    Placement placement =
        new Placement(
            wanted.item().id(),
            wanted.unit(),
            space.id(),
            candidate.pose().shape(),
            candidate.pose().turn(),
            corner);
    return new PlacedItem(wanted.item(), wanted.unit(), wanted.key(), space, placement, box);
  }

  private void addCandidates(
      Wanted wanted, Space space, Pose pose, Trial trial, List<Candidate> candidates) {
    BoxMm room = Room.of(space);
    int lastX = room.maxXMm() - pose.size().lengthMm();
    int lastY = room.maxYMm() - pose.size().widthMm();
    int lastZ = room.maxZMm() - pose.size().heightMm();
    for (PointMm corner : corners(wanted, space, pose, trial)) {
      boolean inside =
          corner.xMm() >= room.minXMm()
              && corner.xMm() <= lastX
              && corner.yMm() >= room.minYMm()
              && corner.yMm() <= lastY
              && corner.zMm() >= room.minZMm()
              && corner.zMm() <= lastZ;
      if (inside && free(corner, pose.size(), trial)) {
        candidates.add(new Candidate(pose, corner, cost(BoxMm.at(corner, pose.size()), space)));
      }
    }
  }

  private static boolean free(PointMm corner, SizeMm size, Trial trial) {
    int maxX = corner.xMm() + size.lengthMm();
    int maxY = corner.yMm() + size.widthMm();
    int maxZ = corner.zMm() + size.heightMm();
    for (PlacedItem other : trial.all()) {
      BoxMm o = other.box();
      if (corner.xMm() < o.maxXMm()
          && o.minXMm() < maxX
          && corner.yMm() < o.maxYMm()
          && o.minYMm() < maxY
          && corner.zMm() < o.maxZMm()
          && o.minZMm() < maxZ) {
        return false;
      }
    }
    return true;
  }

  /**
   * What a place costs, in millimetres of mean reach behind the rear axle: forward and low first;
   * the last term only breaks ties.
   */
  public double cost(BoxMm box, Space space) {
    double a = (double) box.minXMm() - rearAxleXMm;
    double b = (double) box.maxXMm() - rearAxleXMm;
    double behind = a >= 0.0 ? (a + b) / 2.0 : b <= 0.0 ? 0.0 : b * b / (2.0 * (b - a));
    double low = box.minZMm() - space.box().minZMm();
    double ahead = box.minXMm() - space.box().minXMm();
    double across = box.minYMm() - space.box().minYMm();
    return behind + HEIGHT_COST * low + AHEAD_COST * ahead + 0.001 * across;
  }

  private static List<PointMm> corners(Wanted wanted, Space space, Pose pose, Trial trial) {
    BoxMm box = space.box();
    Optional<SpacePointMm> pinned = wanted.item().pin().flatMap(Pin::corner);
    if (pinned.isPresent()) {
      return List.of(
          new PointMm(
              box.minXMm() + pinned.get().xMm(),
              box.minYMm() + pinned.get().yMm(),
              box.minZMm() + pinned.get().zMm()));
    }
    int length = pose.size().lengthMm();
    int width = pose.size().widthMm();
    List<PointMm> corners = new ArrayList<>(8 + 13 * trial.in(space.id()).size());
    addRow(corners, box.minXMm(), box.minZMm(), box, width);
    space.bars().ifPresent(bars -> addBarCorners(corners, space, bars, length, width));
    for (PlacedItem other : trial.in(space.id())) {
      BoxMm o = other.box();
      corners.add(new PointMm(o.maxXMm(), o.minYMm(), o.minZMm()));
      corners.add(new PointMm(o.maxXMm(), o.maxYMm() - width, o.minZMm()));
      corners.add(new PointMm(o.minXMm(), o.maxYMm(), o.minZMm()));
      corners.add(new PointMm(o.minXMm(), o.minYMm() - width, o.minZMm()));
      corners.add(new PointMm(box.minXMm(), o.maxYMm(), o.minZMm()));
      corners.add(new PointMm(box.minXMm(), o.minYMm() - width, o.minZMm()));
      corners.add(new PointMm(o.minXMm(), o.minYMm(), o.maxZMm()));
      corners.add(new PointMm(o.minXMm(), o.maxYMm() - width, o.maxZMm()));
      corners.add(new PointMm(o.maxXMm() - length, o.minYMm(), o.maxZMm()));
      addRow(corners, o.maxXMm(), o.minZMm(), box, width);
    }
    return corners;
  }

  /** Both side walls at one x and z. */
  private static void addRow(List<PointMm> corners, int x, int z, BoxMm box, int width) {
    corners.add(new PointMm(x, box.minYMm(), z));
    corners.add(new PointMm(x, box.maxYMm() - width, z));
  }

  /**
   * Places that rest an item on two bars: from a bar on, back from a bar, centred between two, each
   * as near as the allowed projection lets it be, and as far forward as that is.
   */
  private static void addBarCorners(
      List<PointMm> corners, Space space, RoofBars bars, int length, int width) {
    BoxMm box = space.box();
    BoxMm room = Room.of(space);
    int lastX = Math.max(room.minXMm(), room.maxXMm() - length);
    List<RoofBars.Bar> all = bars.bars();
    addRow(corners, room.minXMm(), box.minZMm(), box, width);
    for (int i = 0; i + 1 < all.size(); i++) {
      int x = BarCarriage.lineXMm(space, all.get(i));
      int next = BarCarriage.lineXMm(space, all.get(i + 1));
      for (int at : new int[] {x, next - length, (x + next - length) / 2}) {
        int within = Math.min(lastX, Math.max(room.minXMm(), at));
        addRow(corners, within, box.minZMm(), box, width);
      }
    }
  }
}
