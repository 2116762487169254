package kitstow.planner.planted;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Environment;
import kitstow.planner.model.Growth;
import kitstow.planner.model.Item;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Mark;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Reach;
import kitstow.planner.model.Space;
import kitstow.planner.model.Stop;
import kitstow.planner.model.Zone;

/** Faults of the gear list: the place stays, the item turns out to be another. */
final class ItemFaults {
  private ItemFaults() {}

  /** The lower of two boxes may carry one gram less than it does. */
  static List<Planted> bearing(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    Loading loading = plan.loading();
    for (PlacedItem below : loading.placed().values()) {
      List<PlacedItem> onTop = standingOn(loading, below);
      if (onTop.size() != 1 || bareBars(below.space())) {
        continue;
      }
      PlacedItem top = onTop.get(0);
      boolean wholly =
          top.box().minXMm() >= below.box().minXMm()
              && top.box().maxXMm() <= below.box().maxXMm()
              && top.box().minYMm() >= below.box().minYMm()
              && top.box().maxYMm() <= below.box().maxYMm();
      if (wholly && standingOn(loading, top).isEmpty()) {
        long carriedG = top.item().mass().massG();
        planted.add(
            new Planted(
                plan.with(
                    Edit.item(
                        plan.scenario(), below.item().id(), item -> bears(item, carriedG - 1L))),
                Set.of("BEARING " + below.key())));
      }
    }
    return planted;
  }

  /** The lid of a thing on a slide needs one millimetre more than there is below the ceiling. */
  static List<Planted> lid(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    Loading loading = plan.loading();
    for (PlacedItem item : loading.placed().values()) {
      boolean fixed = item.space().movesWith().isEmpty() && item.space().doorIds().isEmpty();
      boolean top = standingOn(loading, item).isEmpty() && nothingAbove(loading, item);
      if (!top || bareBars(item.space()) || !item.space().id().equals("box") || !fixed) {
        continue;
      }
      int room = item.space().box().maxZMm() - item.box().maxZMm();
      planted.add(
          new Planted(
              plan.with(Edit.item(plan.scenario(), item.item().id(), old -> lid(old, room + 1))),
              Set.of("LID_CLEARANCE " + item.key())));
    }
    PlacedItem fridge = loading.placed().get("fridge");
    if (fridge != null && fridge.space().id().endsWith("/top")) {
      // The 700 mm pull-out brings no lid past the jamb at depth 0: the closed place counts too.
      boolean pastJamb = fridge.placement().corner().yMm() + fridge.box().widthMm() > 700 + 100;
      int room = fridge.space().box().maxZMm() - fridge.box().maxZMm();
      if (!pastJamb && fridge.box().minYMm() < 150) {
        planted.add(
            new Planted(
                plan.with(Edit.item(plan.scenario(), "fridge", old -> lid(old, room + 1))),
                Set.of("LID_CLEARANCE fridge")));
      }
    }
    return planted;
  }

  /** The item may stand any way but the one it stands. */
  static List<Planted> turn(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    for (PlacedItem item : plan.loading().placed().values()) {
      EnumSet<Turn> others = EnumSet.complementOf(EnumSet.of(item.placement().turn()));
      planted.add(
          new Planted(
              plan.with(Edit.item(plan.scenario(), item.item().id(), old -> turns(old, others))),
              Set.of("TURN_ALLOWED " + item.key())));
    }
    return planted;
  }

  /** Two boxes turn out to be things that may not share a space, or the air of the canopy. */
  static List<Planted> pair(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    List<PlacedItem> items = new ArrayList<>(plan.loading().placed().values());
    for (int i = 0; i < items.size(); i++) {
      for (int j = i + 1; j < items.size(); j++) {
        PlacedItem a = items.get(i);
        PlacedItem b = items.get(j);
        if (!a.item().marks().isEmpty() || !b.item().marks().isEmpty()) {
          continue;
        }
        if (a.space().id().equals(b.space().id())) {
          planted.add(marked(plan, a, Mark.FOOD, b, Mark.OIL, false));
        } else if (a.space().airId().equals("air:canopy")
            && b.space().airId().equals("air:canopy")) {
          planted.add(marked(plan, a, Mark.FUEL, b, Mark.ELECTRIC, true));
        }
      }
    }
    return planted;
  }

  private static Planted marked(
      SoundPlan plan, PlacedItem a, Mark one, PlacedItem b, Mark other, boolean fuel) {
    Set<String> expected = new HashSet<>();
    expected.add("FORBIDDEN_PAIR " + PlaceFaults.pair(a.key(), b.key()));
    if (fuel) {
      // Entailed: fuel has no place in the air of the canopy at all.
      expected.add("FUEL_OUTSIDE " + a.key() + " " + a.space().id());
    }
    return new Planted(
        plan.with(
            Edit.item(
                Edit.item(plan.scenario(), a.item().id(), item -> marks(item, one)),
                b.item().id(),
                item -> marks(item, other))),
        expected);
  }

  /** A thing in the open turns out to be one that must stay dry. */
  static List<Planted> rainedOn(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    for (PlacedItem item : plan.loading().placed().values()) {
      boolean open = item.space().environment().contains(Environment.OPEN_AIR);
      if (open && item.item().marks().isEmpty()) {
        planted.add(
            new Planted(
                plan.with(
                    Edit.item(plan.scenario(), item.item().id(), old -> marks(old, Mark.DRY))),
                Set.of("UNDER_COVER " + item.key() + " " + item.space().id())));
      }
    }
    return planted;
  }

  /** A thing on a roof would soak up rain to one gram more than may be up there; no leg is wet. */
  static List<Planted> heavyOnRoof(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    long mostG = plan.scenario().settings().roofGearG();
    for (PlacedItem item : plan.loading().placed().values()) {
      Zone zone = item.space().zone();
      boolean roof = zone == Zone.CAB_ROOF || zone == Zone.CANOPY_ROOF;
      if (roof && item.item().marks().isEmpty()) {
        long rainG = mostG + 1L - item.item().mass().massG();
        planted.add(
            new Planted(
                plan.with(Edit.item(plan.scenario(), item.item().id(), old -> soaking(old, rainG))),
                Set.of("ROOF_GEAR " + item.key() + " " + item.space().id())));
      }
    }
    return planted;
  }

  /** A box with another on it must come out without moving anything. */
  static List<Planted> buried(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    Loading loading = plan.loading();
    for (PlacedItem item : loading.placed().values()) {
      if (!standingOn(loading, item).isEmpty()) {
        planted.add(
            new Planted(
                plan.with(
                    Edit.item(
                        plan.scenario(), item.item().id(), old -> reach(old, Reach.EMERGENCY))),
                Set.of("EMERGENCY_REACH " + item.key())));
      }
    }
    return planted;
  }

  /** A thing turns out to be one that must be at hand from a seat; there is no space in the cab. */
  static List<Planted> outsideTheCab(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    for (PlacedItem item : plan.loading().placed().values()) {
      if (item.item().marks().isEmpty()) {
        planted.add(
            new Planted(
                plan.with(
                    Edit.item(plan.scenario(), item.item().id(), old -> marks(old, Mark.CAB))),
                Set.of("CAB_REACH " + item.key() + " " + item.space().id())));
      }
    }
    return planted;
  }

  /** The ute may sink in by one millimetre more than what lets the recovery bag out allows. */
  static List<Planted> shutIn(SoundPlan plan, Random random) {
    List<Planted> planted = new ArrayList<>();
    PlacedItem bag = plan.loading().placed().get("recovery-bag");
    if (bag == null) {
      return planted;
    }
    int lowestMm = Integer.MAX_VALUE;
    for (String id : bag.space().movesWith()) {
      String bayDoor = plan.loading().rig().modules().get(id).bay().doorIds().get(0);
      lowestMm = Math.min(lowestMm, plan.loading().rig().doors().get(bayDoor).sillZMm());
    }
    if (bag.space().id().equals("shelf")) {
      lowestMm = plan.loading().rig().doors().get("left-door").sillZMm();
    }
    if (lowestMm < Integer.MAX_VALUE) {
      planted.add(
          new Planted(
              plan.with(
                  plan.scenario()
                      .withStops(
                          List.of(
                              new Stop("kept", "kept", Set.of(), lowestMm, List.of()),
                              new Stop("bog", "bogged", Set.of(), lowestMm + 1, List.of())))),
              Set.of("STOP_REACH recovery-bag bog")));
    }
    return planted;
  }

  private static boolean bareBars(Space space) {
    return space.bars().isPresent() && !space.bars().get().platformFloor();
  }

  private static boolean nothingAbove(Loading loading, PlacedItem item) {
    for (PlacedItem other : loading.in(item.space().id())) {
      if (other.box().minZMm() >= item.box().maxZMm() && Edit.over(other.box(), item.box())) {
        return false;
      }
    }
    return true;
  }

  private static List<PlacedItem> standingOn(Loading loading, PlacedItem item) {
    List<PlacedItem> onTop = new ArrayList<>();
    for (PlacedItem other : loading.in(item.space().id())) {
      if (other.box().minZMm() == item.box().maxZMm() && Edit.over(other.box(), item.box())) {
        onTop.add(other);
      }
    }
    return onTop;
  }

  private static Item bears(Item i, long bearsG) {
    return copy(i, i.turns(), bearsG, i.keepClear(), i.marks(), i.reach(), i.growth());
  }

  private static Item lid(Item i, int clearMm) {
    List<KeepClear> keep = new ArrayList<>(i.keepClear());
    keep.removeIf(old -> old.kind() == KeepClear.Kind.LID);
    keep.add(new KeepClear(KeepClear.Face.TOP, clearMm, KeepClear.Kind.LID));
    return copy(i, i.turns(), i.bearsG(), keep, i.marks(), i.reach(), i.growth());
  }

  private static Item turns(Item i, Set<Turn> turns) {
    return copy(i, turns, i.bearsG(), i.keepClear(), i.marks(), i.reach(), i.growth());
  }

  private static Item marks(Item i, Mark mark) {
    return copy(i, i.turns(), i.bearsG(), i.keepClear(), Set.of(mark), i.reach(), i.growth());
  }

  private static Item reach(Item i, Reach reach) {
    return copy(i, i.turns(), i.bearsG(), i.keepClear(), i.marks(), reach, i.growth());
  }

  private static Item soaking(Item i, long wetG) {
    Growth rain = new Growth(/* perPersonDayG= */ 0L, /* upToG= */ 0L, wetG);
    return copy(i, i.turns(), i.bearsG(), i.keepClear(), i.marks(), i.reach(), Optional.of(rain));
  }

  private static Item copy(
      Item i,
      Set<Turn> turns,
      long bearsG,
      List<KeepClear> keep,
      Set<Mark> marks,
      Reach reach,
      Optional<Growth> growth) {
    return new Item(
        i.id(),
        i.title(),
        i.entryId(),
        i.source(),
        i.shapes(),
        i.mass(),
        i.content(),
        turns,
        bearsG,
        keep,
        marks,
        reach,
        i.group(),
        i.need(),
        i.value(),
        i.quantity(),
        growth,
        i.pin());
  }
}
