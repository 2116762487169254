package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Reach;

/**
 * What a newcomer to one space finds there: everything that can matter to where it may stand, as
 * lists for the rules and as plain numbers for the quick tests. Things in the newcomer's own space
 * come first.
 */
final class Scene {
  private static final int STRIDE = 6;

  private final Site site;
  private final Ground ground;
  private final List<PlacedItem> inSpace;
  private final List<PlacedItem> near;
  private final List<PlacedItem> demanding = new ArrayList<>();
  private final int[] boxes;
  private final boolean[] bears;
  private boolean slides;
  private boolean emergency;
  private List<Contacts> contacts = List.of();
  private boolean contactsKnown;

  Scene(Site site, Ground ground) {
    this.site = site;
    this.ground = ground;
    this.inSpace = ground.in(site.index());
    this.near = new ArrayList<>(inSpace);
    near.addAll(ground.reaching(site.index()));
    for (PlacedItem item : near) {
      slides |= !item.space().movesWith().isEmpty();
      if (!item.item().keepClear().isEmpty()) {
        demanding.add(item);
      }
    }
    this.boxes = boxesIn(site.room());
    this.bears = new boolean[inSpace.size()];
    for (int i = 0; i < bears.length; i++) {
      bears[i] = inSpace.get(i).item().bearsG() > 0L;
      emergency |= inSpace.get(i).item().reach() == Reach.EMERGENCY;
    }
  }

  /** Those of the near things that reach into a room, as plain numbers. */
  private int[] boxesIn(BoxMm room) {
    int[] found = new int[near.size() * STRIDE];
    int at = 0;
    for (int i = 0; i < near.size(); i++) {
      BoxMm box = near.get(i).box();
      if (i < inSpace.size() || Boxes.overlap(box, room)) {
        found[at] = box.minXMm();
        found[at + 1] = box.minYMm();
        found[at + 2] = box.minZMm();
        found[at + 3] = box.maxXMm();
        found[at + 4] = box.maxYMm();
        found[at + 5] = box.maxZMm();
        at += STRIDE;
      }
    }
    return at == found.length ? found : Arrays.copyOf(found, at);
  }

  Site site() {
    return site;
  }

  /** Things in the newcomer's own space. */
  List<PlacedItem> inSpace() {
    return inSpace;
  }

  /** Things it could run into. */
  List<PlacedItem> near() {
    return near;
  }

  /** Things that count for room kept clear near it. */
  List<PlacedItem> around() {
    List<PlacedItem> around = new ArrayList<>();
    for (int i = 0; i < site.aroundCount(); i++) {
      around.addAll(ground.in(site.around(i)));
    }
    return around;
  }

  /** Everything near that wants room kept clear. */
  List<PlacedItem> demanding() {
    return demanding;
  }

  /** Whether anything near rides on a slide. */
  boolean anythingSlides() {
    return slides;
  }

  /** Whether something in the own space must be at hand in an emergency. */
  boolean anythingForEmergency() {
    return emergency;
  }

  /** What everything in the own space stands on. */
  List<Contacts> contacts() {
    if (!contactsKnown) {
      List<Contacts> found = new ArrayList<>(inSpace.size());
      for (PlacedItem item : inSpace) {
        found.add(Contacts.of(item, site.space(), inSpace));
      }
      contacts = found;
      contactsKnown = true;
    }
    return contacts;
  }

  /** Number of things in the own space. */
  int ownCount() {
    return bears.length;
  }

  /** Number of things that reach into the room, those in the own space first. */
  int boxCount() {
    return boxes.length / STRIDE;
  }

  int minX(int i) {
    return boxes[i * STRIDE];
  }

  int minY(int i) {
    return boxes[i * STRIDE + 1];
  }

  int minZ(int i) {
    return boxes[i * STRIDE + 2];
  }

  int maxX(int i) {
    return boxes[i * STRIDE + 3];
  }

  int maxY(int i) {
    return boxes[i * STRIDE + 4];
  }

  int maxZ(int i) {
    return boxes[i * STRIDE + 5];
  }

  /** Whether anything near shares volume with a box. */
  boolean taken(int x0, int y0, int z0, int x1, int y1, int z1) {
    int[] b = boxes;
    for (int at = 0; at < b.length; at += STRIDE) {
      if (x0 < b[at + 3]
          && b[at] < x1
          && y0 < b[at + 4]
          && b[at + 1] < y1
          && z0 < b[at + 5]
          && b[at + 2] < z1) {
        return true;
      }
    }
    return false;
  }

  /** Whether a thing stands under or over another of its space of which the lower bears nothing. */
  boolean columnTaken(int x0, int y0, int z0, int x1, int y1, boolean bearsItself, boolean bare) {
    for (int i = 0; i < bears.length; i++) {
      int at = i * STRIDE;
      boolean over =
          x0 < boxes[at + 3] && boxes[at] < x1 && y0 < boxes[at + 4] && boxes[at + 1] < y1;
      if (over) {
        boolean lowerBears = z0 >= boxes[at + 5] ? bears[i] : bearsItself;
        if (bare || !lowerBears) {
          return true;
        }
      }
    }
    return false;
  }

  /** Contact of a base with the floor of the space and with the tops of what stands in it. */
  long contactMm2(int x0, int y0, int z, int x1, int y1) {
    BoxMm floor = site.space().box();
    long area =
        z == floor.minZMm()
            ? shared(x0, y0, x1, y1, floor.minXMm(), floor.minYMm(), floor.maxXMm(), floor.maxYMm())
            : 0L;
    for (int i = 0; i < bears.length; i++) {
      int at = i * STRIDE;
      if (boxes[at + 5] == z) {
        area += shared(x0, y0, x1, y1, boxes[at], boxes[at + 1], boxes[at + 3], boxes[at + 4]);
      }
    }
    return area;
  }

  private static long shared(
      int ax0, int ay0, int ax1, int ay1, int bx0, int by0, int bx1, int by1) {
    int x = Math.min(ax1, bx1) - Math.max(ax0, bx0);
    int y = Math.min(ay1, by1) - Math.max(ay0, by0);
    return x > 0 && y > 0 ? (long) x * y : 0L;
  }

  /** How far forward a box can be moved until it meets something near or the front of the room. */
  int forwardFrom(int x0, int y0, int z0, int y1, int z1) {
    int front = site.room().minXMm();
    int[] b = boxes;
    for (int at = 0; at < b.length; at += STRIDE) {
      if (b[at + 3] <= x0
          && b[at + 3] > front
          && y0 < b[at + 4]
          && b[at + 1] < y1
          && z0 < b[at + 5]
          && b[at + 2] < z1) {
        front = b[at + 3];
      }
    }
    return front;
  }

  @Override
  public String toString() {
    return site.space().id() + " " + Arrays.toString(boxes);
  }
}
