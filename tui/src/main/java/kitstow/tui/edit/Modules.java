package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Bay;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;
import kitstow.planner.model.Pin;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Trip;
import kitstow.planner.model.Zone;

/** The fit-out with a module more, less, or elsewhere. */
public final class Modules {
  /** What leaving out a module that must be there costs, as files are read. */
  private static final int MUST_VALUE = 100;

  /** Where a module is tried first: most belong in a canopy, few on a roof. */
  private static final List<Zone> LIKELY =
      List.of(
          Zone.CANOPY,
          Zone.TRAY,
          Zone.UNDER_TRAY,
          Zone.REAR_CARRIER,
          Zone.CANOPY_ROOF,
          Zone.CAB_ROOF,
          Zone.CAB);

  /** Bays so far above a deck without a canopy are on a rack; no headboard is as high. */
  private static final int HIGH_MM = 950;

  private Modules() {}

  /**
   * With a module of the catalogue in the likeliest free bay that takes it, never with a slide on a
   * roof or rack; its tanks are full and used up last.
   *
   * @return nothing where no free bay takes it
   */
  public static Optional<Design> with(Design design, FitOutModule entry) {
    Scenario scenario = design.scenario();
    Bays bays = new Bays(design);
    List<Bay> taking = bays.taking(entry).stream().filter(bays::isFree).toList();
    int roofZMm =
        taking.stream()
            .filter(bay -> bay.zone() == Zone.CANOPY_ROOF)
            .mapToInt(bay -> bay.box().minZMm())
            .min()
            .orElse(
                scenario.tray().map(tray -> tray.deckZMm() + HIGH_MM).orElse(Integer.MAX_VALUE));
    boolean slides = entry.moving().massG() > 0L;
    Optional<Bay> free =
        taking.stream()
            .filter(bay -> !(slides && isHigh(bay, roofZMm)))
            .min(Comparator.comparingInt(bay -> rank(bay, roofZMm)));
    return free.map(
        bay -> {
          String id = Ids.free(scenario, entry.id());
          List<Tank> tanks = new ArrayList<>();
          Trip trip = scenario.trip();
          for (Tank tank : entry.tanks()) {
            Tank own = tank.renamed(id + "/" + tank.id());
            tanks.add(own);
            trip = Supplies.with(trip, own.kind(), own.id());
          }
          List<ModuleChoice> modules = new ArrayList<>(scenario.modules());
          modules.add(
              new ModuleChoice(
                  entry.renamed(id, entry.title()).withTanks(tanks),
                  List.of(bay.id()),
                  Need.MUST,
                  MUST_VALUE));
          Map<String, String> planned = new LinkedHashMap<>(design.plan().moduleBays());
          planned.put(id, bay.id());
          return Tidy.plan(
              design, scenario.withModules(modules).withTrip(scenario.trailers(), trip), planned);
        });
  }

  /** The lower the likelier; a rack over the deck is no likelier than the roof it is as high as. */
  private static int rank(Bay bay, int roofZMm) {
    boolean rack = isRack(bay, roofZMm);
    return 2 * LIKELY.indexOf(rack ? Zone.CANOPY_ROOF : bay.zone()) + (rack ? 1 : 0);
  }

  private static boolean isRack(Bay bay, int roofZMm) {
    return bay.zone() == Zone.TRAY && bay.box().minZMm() >= roofZMm;
  }

  private static boolean isHigh(Bay bay, int roofZMm) {
    return bay.zone() == Zone.CANOPY_ROOF || bay.zone() == Zone.CAB_ROOF || isRack(bay, roofZMm);
  }

  /** Without a module; what was in it is at home, pins to it are off, its tanks are not used. */
  public static Design without(Design design, ModuleChoice gone) {
    String inside = gone.module().id() + "/";
    Scenario scenario = design.scenario();
    List<ModuleChoice> modules = new ArrayList<>();
    for (ModuleChoice choice : scenario.modules()) {
      if (!choice.module().id().equals(gone.module().id())) {
        List<String> left =
            choice.bayIds().stream().filter(bay -> !bay.startsWith(inside)).toList();
        modules.add(choice.withBays(left));
      }
    }
    List<Item> items = new ArrayList<>();
    for (Item item : scenario.items()) {
      boolean pinned = item.pin().map(Pin::spaceId).filter(id -> id.startsWith(inside)).isPresent();
      items.add(pinned ? item.pinned(Optional.empty()) : item);
    }
    Trip trip = Supplies.without(scenario.trip(), name -> name.startsWith(inside));
    return Tidy.plan(
        design,
        scenario.withModules(modules).withItems(items).withTrip(scenario.trailers(), trip),
        design.plan().moduleBays());
  }

  /** Why a module cannot be taken out. */
  public static Optional<String> needed(Scenario scenario, ModuleChoice gone) {
    String inside = gone.module().id() + "/";
    for (ModuleChoice choice : scenario.modules()) {
      if (choice.bayIds().stream().allMatch(bay -> bay.startsWith(inside))) {
        return Optional.of(choice.module().title() + " can stand on it only; take that out first");
      }
    }
    return Optional.empty();
  }
}
