package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Bay;
import kitstow.planner.model.Facing;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Rig;

/** The bays there are, what stands in them, and which of them take a module. */
public final class Bays {
  private final Rig rig;
  private final Map<String, String> names = new LinkedHashMap<>();

  /** The bays of a design with its modules where its plan has them. */
  public Bays(Design design) {
    this.rig = Rig.of(design.scenario(), design.plan().moduleBays());
    Map<String, Integer> uses = new TreeMap<>();
    rig.bays().values().forEach(bay -> uses.merge(title(bay), 1, Integer::sum));
    for (Bay bay : rig.bays().values()) {
      boolean twice = uses.getOrDefault(title(bay), 0) > 1;
      names.put(bay.id(), title(bay) + (twice ? " (" + bay.id() + ")" : ""));
    }
  }

  private String title(Bay bay) {
    FittedModule host = rig.modules().get(bay.hostId());
    return host == null ? bay.title() : host.module().title() + ": " + bay.title();
  }

  /** Name of a bay; its id where it is not there as modules stand. */
  public String name(String bayId) {
    return names.getOrDefault(bayId, bayId);
  }

  /** The module in a bay. */
  public Optional<FittedModule> in(String bayId) {
    return rig.modules().values().stream()
        .filter(fitted -> fitted.bay().id().equals(bayId))
        .findFirst();
  }

  /**
   * Whether nothing stands in a bay, nor reaches into it from another one, nor a canopy over it.
   */
  public boolean isFree(Bay bay) {
    return reachingInto(bay).isEmpty() && !isBuiltOver(bay);
  }

  /** The modules that stand in a bay or reach into it from another one. */
  List<FittedModule> reachingInto(Bay bay) {
    return rig.modules().values().stream()
        .filter(
            fitted ->
                Boxes.overlap(fitted.box(), bay.box()) && !rig.standsOn(bay, fitted.module().id()))
        .toList();
  }

  /** The bay of a module, if it stands in one. */
  public Optional<Bay> of(FitOutModule module) {
    return Optional.ofNullable(rig.modules().get(module.id())).map(FittedModule::bay);
  }

  /**
   * Bays that are large enough for a module, not on itself and not where a canopy stands, taken or
   * not.
   */
  public List<Bay> taking(FitOutModule module) {
    List<Bay> taking = new ArrayList<>();
    for (Bay bay : rig.bays().values()) {
      if (takes(bay, module.size()) && !rig.standsOn(bay, module.id()) && !isBuiltOver(bay)) {
        taking.add(bay);
      }
    }
    return taking;
  }

  /** Whether a canopy is in the forward half of a bay of the deck, where a module would stand. */
  private boolean isBuiltOver(Bay bay) {
    BoxMm box = bay.box();
    int middleXMm = (box.minXMm() + box.maxXMm()) / 2;
    return bay.hostId().equals(Rig.TRAY)
        && rig.scenario()
            .canopyBody()
            .filter(body -> Boxes.overlap(body, box) && body.minXMm() < middleXMm)
            .isPresent();
  }

  /** Whether a module fits: its depth lies along the way the bay opens. */
  private static boolean takes(Bay bay, SizeMm size) {
    BoxMm box = bay.box();
    boolean rear = bay.facing() == Facing.REAR;
    int depth = rear ? box.lengthMm() : box.widthMm();
    int across = rear ? box.widthMm() : box.lengthMm();
    return size.lengthMm() <= depth
        && size.widthMm() <= across
        && size.heightMm() <= box.heightMm();
  }
}
