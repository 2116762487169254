package kitstow.planner.packing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.model.Item;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;

/** A group of spaces while it is being packed: what stands where so far, and on what. */
final class Trial {
  private final List<PlacedItem> all = new ArrayList<>();
  private final Map<String, List<PlacedItem>> bySpace = new LinkedHashMap<>();
  private final Map<String, List<Contacts>> contacts = new LinkedHashMap<>();
  private final List<PlacedItem> demanding = new ArrayList<>();
  private boolean slides;
  private final Map<String, Long> filledMm3 = new LinkedHashMap<>();

  Trial(List<Space> spaces) {
    for (Space space : spaces) {
      bySpace.put(space.id(), new ArrayList<>());
      contacts.put(space.id(), new ArrayList<>());
    }
  }

  List<PlacedItem> all() {
    return all;
  }

  List<PlacedItem> in(String spaceId) {
    return bySpace.getOrDefault(spaceId, List.of());
  }

  /** Everything that wants room kept clear, a newcomer included. */
  List<PlacedItem> demanding(PlacedItem newcomer) {
    if (newcomer.item().keepClear().isEmpty()) {
      return demanding;
    }
    List<PlacedItem> with = new ArrayList<>(demanding);
    with.add(newcomer);
    return with;
  }

  /** Whether anything placed so far rides on a slide. */
  boolean anythingSlides() {
    return slides;
  }

  /** Volume that stands in a space, cubic millimetres. */
  long filledMm3(String spaceId) {
    return filledMm3.getOrDefault(spaceId, 0L);
  }

  /** Contacts of a space with a newcomer: it may also prop up what stands above it. */
  List<Contacts> contactsWith(PlacedItem item, Contacts own) {
    List<PlacedItem> inSpace = new ArrayList<>(in(item.space().id()));
    inSpace.add(item);
    List<Contacts> with = new ArrayList<>();
    for (Contacts old : contacts.getOrDefault(item.space().id(), List.of())) {
      boolean propped =
          old.item().box().minZMm() == item.box().maxZMm()
              && Boxes.footprintOverlapMm2(old.item().box(), item.box()) > 0L;
      with.add(propped ? Contacts.of(old.item(), item.space(), inSpace) : old);
    }
    with.add(own);
    return with;
  }

  void add(PlacedItem item) {
    Contacts own = Contacts.of(item, item.space(), in(item.space().id()));
    contacts.put(item.space().id(), contactsWith(item, own));
    all.add(item);
    slides |= !item.space().movesWith().isEmpty();
    if (!item.item().keepClear().isEmpty()) {
      demanding.add(item);
    }
    long volume = (long) item.box().lengthMm() * item.box().widthMm() * item.box().heightMm();
    filledMm3.merge(item.space().id(), volume, Long::sum);
    List<PlacedItem> there = bySpace.get(item.space().id());
    if (there != null) {
      there.add(item);
    }
  }

  /** What an item weighs at its heaviest, in grams. */
  static long heaviestG(PlacedItem placed) {
    Item item = placed.item();
    return item.mass().massG()
        + item.growth().map(growth -> growth.upToG() + growth.wetG()).orElse(0L);
  }
}
