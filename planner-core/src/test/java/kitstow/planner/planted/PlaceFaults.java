package kitstow.planner.planted;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Reach;
import kitstow.planner.model.Space;
import kitstow.planner.model.SpacePointMm;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Zone;

/** Faults of place: an item is moved by a little. */
final class PlaceFaults {
  private static final int[][] SIDES = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};

  private PlaceFaults() {}

  /** Moves an item 1 mm into the neighbour it touches. */
  static List<Planted> overlap(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    Loading loading = plan.loading();
    for (PlacedItem item : loading.placed().values()) {
      if (!plain(loading, item) || item.box().minZMm() != item.space().box().minZMm()) {
        continue;
      }
      for (int[] side : SIDES) {
        BoxMm moved = shifted(item.box(), side[0], side[1]);
        List<PlacedItem> hit = new ArrayList<>();
        for (PlacedItem other : loading.placed().values()) {
          if (!other.is(item) && Edit.share(moved, other.box())) {
            hit.add(other);
          }
        }
        if (hit.size() == 1 && inside(moved, item.space())) {
          planted.add(
              new Planted(
                  plan.moved(item, to(item, side[0], side[1], 0)),
                  Set.of("NO_OVERLAP " + pair(item.key(), hit.get(0).key()))));
        }
      }
    }
    return planted;
  }

  /** Moves an item 1 mm out of its space. */
  static List<Planted> outside(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    Loading loading = plan.loading();
    for (PlacedItem item : loading.placed().values()) {
      boolean onBars = item.space().bars().isPresent();
      if (!plain(loading, item) || onBars || item.box().minZMm() != item.space().box().minZMm()) {
        continue;
      }
      for (int[] side : SIDES) {
        BoxMm moved = shifted(item.box(), side[0], side[1]);
        if (!inside(moved, item.space()) && hitsNothing(loading, item, moved)) {
          planted.add(
              new Planted(
                  plan.moved(item, to(item, side[0], side[1], 0)), outsideOf(plan, item, moved)));
        }
      }
    }
    return planted;
  }

  /** Out of its space; entailed where the canopy's wall is next to it: into the canopy's body. */
  private static Set<String> outsideOf(SoundPlan plan, PlacedItem item, BoxMm moved) {
    Set<String> expected = new HashSet<>();
    expected.add("INSIDE_SPACE " + item.key() + " " + item.space().id());
    Tray tray = plan.scenario().tray().orElseThrow();
    Canopy canopy = plan.scenario().canopy().orElseThrow();
    int frontX = tray.frontXMm() + canopy.fromTrayFrontMm();
    int half = canopy.size().widthMm() / 2;
    BoxMm body =
        new BoxMm(
            frontX,
            -half,
            tray.deckZMm(),
            frontX + canopy.size().lengthMm(),
            half,
            tray.deckZMm() + canopy.size().heightMm());
    if (item.space().zone() != Zone.CANOPY && Edit.share(moved, body)) {
      expected.add("CANOPY_CLASH " + item.key());
    }
    return expected;
  }

  /** Pushes an item over the edge of the one it stands on until 79 % of its base is left. */
  static List<Planted> support(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    Loading loading = plan.loading();
    for (PlacedItem item : loading.placed().values()) {
      List<PlacedItem> below = directlyBelow(loading, item);
      if (!plain(loading, item) || below.size() != 1) {
        continue;
      }
      BoxMm under = below.get(0).box();
      for (int[] side : SIDES) {
        BoxMm box = item.box();
        int extent = side[0] != 0 ? box.lengthMm() : box.widthMm();
        int kept = extent * 79 / 100;
        int push =
            side[0] > 0
                ? under.maxXMm() - kept - box.minXMm()
                : side[0] < 0
                    ? box.maxXMm() - (under.minXMm() + kept)
                    : side[1] > 0
                        ? under.maxYMm() - kept - box.minYMm()
                        : box.maxYMm() - (under.minYMm() + kept);
        BoxMm moved = shifted(box, side[0] * push, side[1] * push);
        boolean acrossHeld =
            side[0] != 0
                ? moved.minYMm() >= under.minYMm() && moved.maxYMm() <= under.maxYMm()
                : moved.minXMm() >= under.minXMm() && moved.maxXMm() <= under.maxXMm();
        if (push > 0
            && acrossHeld
            && inside(moved, item.space())
            && hitsNothing(loading, item, moved)
            && touchesOnly(loading, item, moved, below.get(0))
            && nothingToClear(loading, item, moved)) {
          planted.add(
              new Planted(
                  plan.moved(item, to(item, side[0] * push, side[1] * push, 0)),
                  Set.of("SUPPORT " + item.key())));
        }
      }
    }
    return planted;
  }

  /** A thing without demands, with nothing on it, in a space where nothing else has demands. */
  private static boolean plain(Loading loading, PlacedItem item) {
    if (!item.item().keepClear().isEmpty()
        || item.item().reach() == Reach.EMERGENCY
        || !item.item().id().startsWith("box-")) {
      return false;
    }
    for (PlacedItem other : loading.in(item.space().id())) {
      boolean onTop =
          !other.is(item)
              && other.box().minZMm() == item.box().maxZMm()
              && Edit.over(other.box(), item.box());
      boolean demands =
          !other.item().keepClear().isEmpty() || other.item().reach() == Reach.EMERGENCY;
      if (onTop || demands) {
        return false;
      }
    }
    return item.item().bearsG() > 0L || nothingOver(loading, item, 1);
  }

  /** Whether no thing of the space lies over a footprint that is a little larger. */
  private static boolean nothingOver(Loading loading, PlacedItem item, int slackMm) {
    BoxMm b = item.box();
    BoxMm wide =
        new BoxMm(
            b.minXMm() - slackMm,
            b.minYMm() - slackMm,
            b.minZMm(),
            b.maxXMm() + slackMm,
            b.maxYMm() + slackMm,
            b.maxZMm());
    for (PlacedItem other : loading.in(item.space().id())) {
      if (!other.is(item) && other.box().minZMm() >= b.maxZMm() && Edit.over(wide, other.box())) {
        return false;
      }
    }
    return true;
  }

  /** Whether an item in its new place stands over nothing that must stay clear, nor under it. */
  private static boolean nothingToClear(Loading loading, PlacedItem item, BoxMm moved) {
    for (PlacedItem other : loading.in(item.space().id())) {
      if (other.is(item) || !Edit.over(moved, other.box())) {
        continue;
      }
      boolean overClear = other.item().bearsG() == 0L && moved.minZMm() >= other.box().maxZMm();
      boolean underThing = item.item().bearsG() == 0L && other.box().minZMm() >= moved.maxZMm();
      if (overClear || underThing) {
        return false;
      }
    }
    return true;
  }

  private static List<PlacedItem> directlyBelow(Loading loading, PlacedItem item) {
    List<PlacedItem> below = new ArrayList<>();
    for (PlacedItem other : loading.in(item.space().id())) {
      if (other.box().maxZMm() == item.box().minZMm() && Edit.over(other.box(), item.box())) {
        below.add(other);
      }
    }
    return below;
  }

  private static boolean touchesOnly(
      Loading loading, PlacedItem item, BoxMm moved, PlacedItem support) {
    for (PlacedItem other : loading.in(item.space().id())) {
      boolean touches =
          !other.is(item)
              && !other.is(support)
              && (other.box().maxZMm() == moved.minZMm() || other.box().minZMm() == moved.maxZMm())
              && Edit.over(other.box(), moved);
      if (touches) {
        return false;
      }
    }
    return true;
  }

  private static boolean hitsNothing(Loading loading, PlacedItem item, BoxMm moved) {
    for (PlacedItem other : loading.placed().values()) {
      if (!other.is(item) && Edit.share(moved, other.box())) {
        return false;
      }
    }
    return true;
  }

  private static boolean inside(BoxMm box, Space space) {
    BoxMm room = space.box();
    return box.minXMm() >= room.minXMm()
        && box.maxXMm() <= room.maxXMm()
        && box.minYMm() >= room.minYMm()
        && box.maxYMm() <= room.maxYMm();
  }

  private static BoxMm shifted(BoxMm b, int x, int y) {
    return new BoxMm(
        b.minXMm() + x, b.minYMm() + y, b.minZMm(), b.maxXMm() + x, b.maxYMm() + y, b.maxZMm());
  }

  private static Placement to(PlacedItem item, int x, int y, int z) {
    Placement old = item.placement();
    return new Placement(
        old.itemId(),
        old.unit(),
        old.spaceId(),
        old.shape(),
        old.turn(),
        new SpacePointMm(old.corner().xMm() + x, old.corner().yMm() + y, old.corner().zMm() + z));
  }

  static String pair(String a, String b) {
    return a.compareTo(b) <= 0 ? a + " " + b : b + " " + a;
  }
}
