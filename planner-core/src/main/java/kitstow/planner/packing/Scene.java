package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Reach;
import org.jspecify.annotations.Nullable;

/**
 * What a newcomer to one space finds there: everything that can matter to where it may stand, as
 * lists for the rules and as plain numbers for the quick tests. Things in the newcomer's own space
 * come first.
 */
final class Scene {
  /** Things that may come to the own space before anything must grow. */
  private static final int SPARE = 8;

  private final Site site;
  private final Ground ground;
  private final List<PlacedItem> inSpace;
  private final List<PlacedItem> near;
  private final List<PlacedItem> demanding = new ArrayList<>();
  private final BoxTable boxes;
  private int[] bearsNothing;
  private int own;
  private boolean slides;
  private boolean emergency;
  private List<Contacts> contacts = new ArrayList<>();
  private boolean contactsKnown;
  private @Nullable Anchors anchors;

  Scene(Site site, Ground ground) {
    this.site = site;
    this.ground = ground;
    this.inSpace = ground.in(site.index());
    this.near = new ArrayList<>(inSpace);
    near.addAll(ground.reaching(site.index()));
    this.boxes = new BoxTable(near.size() + SPARE);
    this.bearsNothing = new int[inSpace.size() + SPARE];
    for (int i = 0; i < near.size(); i++) {
      meet(near.get(i), i < inSpace.size());
    }
  }

  /** Takes in something that has just come to the newcomer's own space. */
  void add(PlacedItem item) {
    near.add(own, item);
    meet(item, /* inOwn= */ true);
    Anchors known = anchors;
    if (known != null) {
      known.add(own - 1);
    }
    if (contactsKnown) {
      for (int i = 0; i < contacts.size(); i++) {
        PlacedItem upper = contacts.get(i).item();
        if (upper.box().minZMm() == item.box().maxZMm()) {
          contacts.set(i, Contacts.of(upper, site.space(), inSpace));
        }
      }
      contacts.add(Contacts.of(item, site.space(), inSpace));
    }
  }

  private void meet(PlacedItem item, boolean inOwn) {
    slides |= !item.space().movesWith().isEmpty();
    if (!item.item().keepClear().isEmpty()) {
      demanding.add(item);
    }
    if (inOwn) {
      emergency |= item.item().reach() == Reach.EMERGENCY;
      if (own == bearsNothing.length) {
        bearsNothing = Arrays.copyOf(bearsNothing, 2 * own);
      }
      bearsNothing[own] = item.item().bearsG() > 0L ? 0 : -1;
    }
    if (inOwn || Boxes.overlap(item.box(), site.room())) {
      boxes.insert(inOwn ? own : boxes.count(), item.box());
    }
    own += inOwn ? 1 : 0;
  }

  Site site() {
    return site;
  }

  /** Things in the newcomer's own space. */
  List<PlacedItem> inSpace() {
    return inSpace;
  }

  /** Things of other spaces that can matter here. */
  List<PlacedItem> fromElsewhere() {
    return ground.reaching(site.index());
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

  /** Corners a newcomer can be set into. */
  Anchors anchors() {
    Anchors known = anchors;
    if (known == null) {
      known = new Anchors(this);
      anchors = known;
    }
    return known;
  }

  /** Number of things in the own space. */
  int ownCount() {
    return own;
  }

  /** All that reaches into the room as plain numbers, things in the own space first. */
  BoxTable boxes() {
    return boxes;
  }

  /** Whether anything near shares volume with a box. */
  boolean taken(int x0, int y0, int z0, int x1, int y1, int z1) {
    return boxes.overlaps(x0, y0, z0, x1, y1, z1);
  }

  /** Whether a thing stands under or over another of its space of which the lower bears nothing. */
  boolean columnTaken(int x0, int y0, int z0, int x1, int y1, boolean bearsItself, boolean bare) {
    return boxes.columnTaken(
        x0, y0, z0, x1, y1, own, bearsNothing, bearsItself ? 0 : -1, bare ? -1 : 0);
  }

  /** Contact of a base with the floor of the space and with the tops of what stands in it. */
  long contactMm2(int x0, int y0, int z, int x1, int y1) {
    BoxMm floor = site.space().box();
    long area =
        z == floor.minZMm()
            ? shared(x0, y0, x1, y1, floor.minXMm(), floor.minYMm(), floor.maxXMm(), floor.maxYMm())
            : 0L;
    return area + boxes.contactMm2(x0, y0, z, x1, y1, own);
  }

  private static long shared(
      int ax0, int ay0, int ax1, int ay1, int bx0, int by0, int bx1, int by1) {
    int x = Math.min(ax1, bx1) - Math.max(ax0, bx0);
    int y = Math.min(ay1, by1) - Math.max(ay0, by0);
    return x > 0 && y > 0 ? (long) x * y : 0L;
  }

  /** How far forward a box can be moved until it meets something near or the front of the room. */
  int forwardFrom(int x0, int y0, int z0, int y1, int z1) {
    return boxes.forwardFrom(x0, y0, z0, y1, z1, site.room().minXMm());
  }

  @Override
  public String toString() {
    return site.space().id() + " " + boxes;
  }
}
