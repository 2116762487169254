package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Bay;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Person;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Trip;
import kitstow.planner.model.Zone;
import org.jspecify.annotations.Nullable;

/**
 * A design on another tray or with another canopy. Modules stay in bays of the same name that still
 * take them, else go into a free one of the same part of the vehicle, else out. Gear stays in
 * spaces that are as large as they were and filled from the same side; what was in others is at
 * home. Accessories move with the tray or canopy that they are on.
 */
final class Refit {
  /** An accessory that is no farther from a canopy than this is on it. */
  private static final int BESIDE_MM = 50;

  private Refit() {}

  static Design on(Design design, Optional<Tray> tray, Optional<Canopy> canopy) {
    Scenario old = design.scenario();
    List<Accessory> accessories = accessories(old, tray, canopy);
    Scenario bodied =
        old.withUte(NewScenario.under(tray, old.ute())).withBody(tray, canopy, accessories);
    if (bodied.equals(old)) {
      return design;
    }
    Map<String, List<String>> bays = bays(old, bodied);
    Design fewer = design;
    for (ModuleChoice choice : old.modules()) {
      if (!bays.containsKey(choice.module().id())) {
        fewer = Modules.without(fewer, choice);
      }
    }
    List<ModuleChoice> modules = new ArrayList<>();
    for (ModuleChoice choice : fewer.scenario().modules()) {
      modules.add(choice.withBays(bays.getOrDefault(choice.module().id(), choice.bayIds())));
    }
    Scenario refitted =
        fewer
            .scenario()
            .withUte(bodied.ute())
            .withBody(tray, canopy, accessories)
            .withModules(modules);
    return packed(design, awake(refitted), fewer.plan());
  }

  /** Nobody sleeps on the roof of a canopy that is not there. */
  private static Scenario awake(Scenario scenario) {
    if (scenario.canopy().isPresent()) {
      return scenario;
    }
    List<Person> people = new ArrayList<>();
    for (Person one : scenario.trip().people()) {
      Optional<Zone> roof = one.sleepsOn().filter(zone -> zone != Zone.CANOPY_ROOF);
      people.add(new Person(one.id(), one.title(), one.mass(), one.seatId(), roof));
    }
    Trip trip = scenario.trip();
    return scenario.withTrip(
        scenario.trailers(), new Trip(people, trip.legs(), trip.consumption(), trip.orders()));
  }

  private static List<Accessory> accessories(
      Scenario old, Optional<Tray> tray, Optional<Canopy> canopy) {
    Optional<PointMm> oldCanopy = corner(old.tray(), old.canopy());
    Optional<PointMm> newCanopy = corner(tray, canopy);
    Optional<PointMm> oldTray = old.tray().map(Refit::corner);
    Optional<PointMm> newTray = tray.map(Refit::corner);
    List<Accessory> accessories = new ArrayList<>();
    for (Accessory one : old.accessories()) {
      if (isOnCanopy(one, old, oldCanopy)) {
        moved(one, oldCanopy, newCanopy).ifPresent(accessories::add);
      } else if (isOnTray(one, old)) {
        moved(one, oldTray, newTray).ifPresent(accessories::add);
      } else {
        accessories.add(one);
      }
    }
    return accessories;
  }

  /** The upper front of a canopy, in the middle. */
  private static Optional<PointMm> corner(Optional<Tray> tray, Optional<Canopy> canopy) {
    return tray.flatMap(
        under ->
            canopy.map(
                box ->
                    new PointMm(
                        under.frontXMm() + box.fromTrayFrontMm(),
                        0,
                        under.deckZMm() + box.size().heightMm())));
  }

  /** The front of a deck, in the middle. */
  private static PointMm corner(Tray tray) {
    return new PointMm(tray.frontXMm(), 0, tray.deckZMm());
  }

  private static boolean isOnCanopy(Accessory one, Scenario scenario, Optional<PointMm> corner) {
    boolean onRoof = one.roof().filter(roof -> roof == Zone.CANOPY_ROOF).isPresent();
    Optional<SizeMm> size = scenario.canopy().map(Canopy::size);
    return onRoof
        || (corner.isPresent()
            && size.isPresent()
            && Boxes.overlap(one.box(), around(corner.get(), size.get())));
  }

  private static BoxMm around(PointMm upperFront, SizeMm size) {
    int half = size.widthMm() / 2 + BESIDE_MM;
    return new BoxMm(
        upperFront.xMm() - BESIDE_MM,
        -half,
        upperFront.zMm() - size.heightMm(),
        upperFront.xMm() + size.lengthMm() + BESIDE_MM,
        half,
        upperFront.zMm() + BESIDE_MM);
  }

  private static boolean isOnTray(Accessory one, Scenario scenario) {
    return scenario
        .tray()
        .filter(
            tray ->
                one.box().minXMm() >= tray.frontXMm()
                    && one.box().minZMm() >= tray.deckZMm()
                    && one.box().maxXMm() <= tray.frontXMm() + tray.size().lengthMm())
        .isPresent();
  }

  private static Optional<Accessory> moved(
      Accessory one, Optional<PointMm> from, Optional<PointMm> to) {
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    PointMm by =
        new PointMm(to.get().xMm() - from.get().xMm(), 0, to.get().zMm() - from.get().zMm());
    return Optional.of(
        new Accessory(
            one.id(),
            one.title(),
            one.entryId(),
            one.source(),
            one.mass(),
            one.box().moved(by),
            one.roof()));
  }

  /** The bays that each module may still have; modules that none is left for are not there. */
  private static Map<String, List<String>> bays(Scenario old, Scenario bodied) {
    Map<String, Zone> zones = new LinkedHashMap<>();
    Rig.of(old.withModules(List.of()), Map.of())
        .bays()
        .forEach((id, bay) -> zones.put(id, bay.zone()));
    Bays bare = new Bays(Design.unpacked(bodied.withModules(List.of())));
    Map<String, List<String>> bays = new LinkedHashMap<>();
    boolean changed = true;
    while (changed) {
      changed = false;
      for (ModuleChoice choice : old.modules()) {
        if (!bays.containsKey(choice.module().id())) {
          List<String> left = left(choice, bare.taking(choice.module()), bays.keySet(), zones);
          if (!left.isEmpty()) {
            bays.put(choice.module().id(), left);
            changed = true;
          }
        }
      }
    }
    return bays;
  }

  /** The bays of a module that there still are; where there are none, others in the same zone. */
  private static List<String> left(
      ModuleChoice choice, List<Bay> taking, Set<String> hosts, Map<String, Zone> zones) {
    Set<String> own = new LinkedHashSet<>();
    Set<Zone> usual = EnumSet.noneOf(Zone.class);
    for (String id : choice.bayIds()) {
      boolean onModule = hosts.contains(id.substring(0, Math.max(0, id.indexOf('/'))));
      if (onModule || taking.stream().anyMatch(bay -> bay.id().equals(id))) {
        own.add(id);
      }
      Optional.ofNullable(zones.get(id)).ifPresent(usual::add);
    }
    return own.isEmpty()
        ? taking.stream().filter(bay -> usual.contains(bay.zone())).map(Bay::id).toList()
        : List.copyOf(own);
  }

  /** Modules in bays that are free, gear in spaces that are as they were. */
  private static Design packed(Design old, Scenario scenario, LoadPlan plan) {
    Map<String, String> bays = standing(scenario, plan);
    Map<String, Space> spaces = Rig.of(scenario, bays).spaces();
    Map<String, Space> before = Rig.of(old.scenario(), old.plan().moduleBays()).spaces();
    List<Item> items = new ArrayList<>();
    for (Item item : scenario.items()) {
      boolean lost = item.pin().filter(pin -> !isAlike(pin.spaceId(), before, spaces)).isPresent();
      items.add(lost ? item.pinned(Optional.empty()) : item);
    }
    List<Placement> kept =
        plan.placements().stream()
            .filter(placement -> isAlike(placement.spaceId(), before, spaces))
            .toList();
    return Tidy.plan(
        scenario.withItems(items),
        new LoadPlan(plan.scenarioId(), bays, kept, LoadPlan.Origin.HAND));
  }

  private static boolean isAlike(String id, Map<String, Space> before, Map<String, Space> after) {
    Space old = before.get(id);
    Space now = after.get(id);
    return old != null
        && now != null
        && old.box().lengthMm() == now.box().lengthMm()
        && old.box().widthMm() == now.box().widthMm()
        && old.box().heightMm() == now.box().heightMm()
        && old.access() == now.access();
  }

  /** The bay of each module: its old one, else the first of its bays that is free. */
  private static Map<String, String> standing(Scenario scenario, LoadPlan plan) {
    Map<String, String> standing = new LinkedHashMap<>();
    boolean changed = true;
    while (changed) {
      changed = false;
      for (ModuleChoice choice : scenario.modules()) {
        String id = choice.module().id();
        if (!standing.containsKey(id)) {
          Optional<String> bay = free(scenario, choice, plan.moduleBays().get(id), standing);
          bay.ifPresent(one -> standing.put(id, one));
          changed |= bay.isPresent();
        }
      }
    }
    return standing;
  }

  private static Optional<String> free(
      Scenario scenario, ModuleChoice choice, @Nullable String old, Map<String, String> standing) {
    Set<String> wished = new LinkedHashSet<>();
    if (old != null && choice.bayIds().contains(old)) {
      wished.add(old);
    }
    wished.addAll(choice.bayIds());
    Rig rig = Rig.of(scenario, standing);
    Bays bays =
        new Bays(
            new Design(
                scenario, new LoadPlan(scenario.id(), standing, List.of(), LoadPlan.Origin.HAND)));
    return wished.stream()
        .filter(id -> Optional.ofNullable(rig.bays().get(id)).filter(bays::isFree).isPresent())
        .findFirst();
  }
}
