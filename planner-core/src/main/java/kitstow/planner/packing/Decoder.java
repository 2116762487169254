package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;

/**
 * Finds the place of one more thing: of all candidate places in a space, forward and low first, the
 * first at which no rule of place, company or emergency reach is broken. The same things around it
 * give the same place, in whatever order they came.
 */
public final class Decoder {
  /** Places tried in full for one item before it is given up. */
  private static final int MOST_TRIES = 40;

  private static final long UNKNOWN = -1L;

  /** Poses that are told apart by the bits of a number; ten shapes turned every way. */
  private static final int MOST_POSES = Long.SIZE - 1;

  private final SiteMap sites;
  private final PlacementJudge judge;
  private final PlaceCost cost;
  private final PlaceCost stackedCost;
  private final int supportPermille;
  private final Strangers strangers;
  private final IdentityHashMap<Item, long[]> admitted = new IdentityHashMap<>();

  /**
   * What became of one thing.
   *
   * @param place where it stands, if anywhere
   * @param barredBy the rule that barred its best place where it has none
   */
  public record Found(Optional<PlacedItem> place, RuleId barredBy) {}

  /** A decoder for a rig. */
  public Decoder(Rig rig) {
    this(rig, SiteMap.of(rig));
  }

  /** A decoder for a rig whose spaces are already numbered. */
  public Decoder(Rig rig, SiteMap sites) {
    this.sites = sites;
    this.judge = new PlacementJudge(rig);
    this.strangers = new Strangers();
    this.cost = new PlaceCost(rig.scenario().ute().wheelbaseMm(), /* stacked= */ false);
    this.stackedCost = new PlaceCost(rig.scenario().ute().wheelbaseMm(), /* stacked= */ true);
    this.supportPermille = rig.scenario().settings().supportPermille();
  }

  /** Whether a rule of reach may keep a thing out of a space whole, wherever in it it stands. */
  public static boolean keepsOut(RuleId reach) {
    return PlacementJudge.REACH_OF_SPACES.contains(reach);
  }

  /** The spaces this decoder fills. */
  public SiteMap sites() {
    return sites;
  }

  /** What a place costs; the lower the better. */
  public double cost(BoxMm box, Space space) {
    return cost.of(box.minXMm(), box.maxXMm(), box.minYMm(), box.minZMm(), space.box());
  }

  /** Whether a unit can stand in an empty space at all, in any pose. */
  public boolean mayHold(Wanted wanted, int site) {
    return admittedPoses(wanted, site) != 0L;
  }

  /** The poses in which a unit can stand in an empty space, by their index. */
  public List<Integer> posesIn(Wanted wanted, int site) {
    List<Integer> poses = new ArrayList<>();
    long admits = admittedPoses(wanted, site);
    for (int pose = 0; pose < wanted.poses().size(); pose++) {
      if (has(admits, pose)) {
        poses.add(pose);
      }
    }
    return poses;
  }

  /** A place in a space that holds nothing else. */
  public Found alone(Wanted wanted, Space space) {
    return find(wanted, sites.indexOf(space.id()), new Ground(sites));
  }

  /** A place in a space with other things where they are. */
  public Found among(Collection<PlacedItem> others, Wanted wanted, Space space) {
    Ground ground = new Ground(sites);
    for (PlacedItem other : others) {
      ground.add(other, sites.indexOf(other.space().id()), /* kind= */ 0);
    }
    return find(wanted, sites.indexOf(space.id()), ground);
  }

  /** The best place of a unit in a space as it is. */
  public Found find(Wanted wanted, int site, Ground ground) {
    Site at = sites.site(site);
    long poses = admittedPoses(wanted, site);
    if (poses == 0L) {
      return new Found(Optional.empty(), barredAnyway(wanted, at));
    }
    if (ground.filledMm3(site) + leastVolumeMm3(wanted.item()) > at.room().volumeMm3()) {
      return new Found(Optional.empty(), RuleId.NO_OVERLAP);
    }
    Scene scene = ground.scene(site);
    if (meetsStranger(wanted.item(), at, scene)) {
      return new Found(Optional.empty(), RuleId.FORBIDDEN_PAIR);
    }
    Corners corners = new Corners(scene, wanted.stacked() ? stackedCost : cost, supportPermille);
    if (has(poses, wanted.firstPose())) {
      if (wanted.place().isPresent()) {
        corners.addPlace(wanted, wanted.place().get());
        Found found = best(wanted, at, scene, corners);
        if (found.place().isPresent()) {
          return found;
        }
        corners.forget();
      }
      corners.add(wanted, wanted.firstPose());
      Found found = best(wanted, at, scene, corners);
      if (found.place().isPresent()) {
        return found;
      }
      corners.forget();
    }
    for (int pose = 0; pose < wanted.poses().size(); pose++) {
      if (has(poses, pose)) {
        corners.add(wanted, pose);
      }
    }
    return corners.count() > 0
        ? best(wanted, at, scene, corners)
        : new Found(Optional.empty(), corners.barredBy());
  }

  private boolean meetsStranger(Item item, Site at, Scene scene) {
    for (PlacedItem other : scene.inSpace()) {
      if (strangers.test(item, other.item())) {
        return true;
      }
    }
    for (PlacedItem other : scene.fromElsewhere()) {
      if (at.hasAirOf(other.space()) && Company.hardPairByAir(item, other.item())) {
        return true;
      }
    }
    return false;
  }

  private Found best(Wanted wanted, Site site, Scene scene, Corners corners) {
    RuleId barredBy = RuleId.NO_OVERLAP;
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      int next = corners.takeCheapest();
      if (next < 0) {
        break;
      }
      PlacedItem item = placed(wanted, site.space(), corners.pose(next), corners.corner(next));
      Optional<RuleId> broken = judge.breaks(item, scene);
      if (!broken.isPresent()) {
        return new Found(Optional.of(item), barredBy);
      }
      if (tries == 0) {
        barredBy = broken.get();
      }
    }
    return new Found(Optional.empty(), barredBy);
  }

  /** A unit as it stands at a corner. */
  public static PlacedItem placed(Wanted wanted, Space space, int pose, PointMm at) {
    Pose stands = wanted.poses().get(pose);
    return new PlacedItem(
        wanted.item(),
        wanted.unit(),
        wanted.key(),
        space,
        new Placement(
            wanted.item().id(),
            wanted.unit(),
            space.id(),
            stands.shape(),
            stands.turn(),
            space.cornerOf(at)),
        BoxMm.at(at, stands.size()));
  }

  private static long leastVolumeMm3(Item item) {
    long least = Long.MAX_VALUE;
    for (SizeMm shape : item.shapes()) {
      least = Math.min(least, shape.volumeMm3());
    }
    return least;
  }

  /** The poses in which a unit may stand in a space, by bit. */
  private long admittedPoses(Wanted wanted, int site) {
    long[] bySite =
        admitted.computeIfAbsent(
            wanted.item(),
            item -> {
              long[] unknown = new long[sites.size()];
              Arrays.fill(unknown, UNKNOWN);
              return unknown;
            });
    if (bySite[site] == UNKNOWN) {
      long bits = 0L;
      int poses = Math.min(wanted.poses().size(), MOST_POSES);
      for (int pose = 0; pose < poses; pose++) {
        Pose one = wanted.poses().get(pose);
        if (!judge.bars(wanted, sites.space(site), one).isPresent()) {
          bits |= 1L << pose;
        }
      }
      bySite[site] = bits;
    }
    return bySite[site];
  }

  /** Whether a pose is among those told by bits; none and those past the last bit never are. */
  private static boolean has(long bits, int pose) {
    return pose >= 0 && pose < MOST_POSES && (bits >> pose & 1L) != 0L;
  }

  private RuleId barredAnyway(Wanted wanted, Site site) {
    RuleId barredBy = RuleId.INSIDE_SPACE;
    for (Pose pose : wanted.poses()) {
      barredBy = judge.bars(wanted, site.space(), pose).orElse(barredBy);
    }
    return barredBy;
  }
}
