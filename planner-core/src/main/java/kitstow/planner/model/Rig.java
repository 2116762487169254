package kitstow.planner.model;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * A scenario with its modules in their bays: every bay, module, space, door and tank in its place
 * on the vehicle, everything closed. Depends on the modules' bays only, never on where gear stands.
 *
 * <p>In its bay a module stands at the forward lower corner with its face flush with the door side;
 * on a roof it stands at the forward end. A module's space that is described higher than the module
 * itself (on top of a slide) ends at the top of the bay.
 */
public final class Rig {
  /** Host id of the ute. */
  public static final String UTE = "ute";

  /** Host id of the tray. */
  public static final String TRAY = "tray";

  /** Host id of the canopy. */
  public static final String CANOPY = "canopy";

  private final Scenario scenario;
  private final Map<String, Bay> bays;
  private final Map<String, FittedModule> modules;
  private final Map<String, Space> spaces;
  private final Map<String, FittedDoor> doors;
  private final Map<String, FittedTank> tanks;

  private Rig(Scenario scenario, RigParts parts) {
    this.scenario = scenario;
    this.bays = Collections.unmodifiableMap(parts.bays);
    this.modules = Collections.unmodifiableMap(parts.modules);
    this.spaces = Collections.unmodifiableMap(parts.spaces);
    this.doors = Collections.unmodifiableMap(parts.doors);
    this.tanks = Collections.unmodifiableMap(parts.tanks);
  }

  /**
   * Resolves a scenario.
   *
   * @param moduleBays bay by module id; modules that are not named are left out
   * @throws IllegalArgumentException if a module or bay is unknown, a bay is taken twice, or
   *     modules stand in each other
   */
  public static Rig of(Scenario scenario, Map<String, String> moduleBays) {
    RigParts parts = new RigParts();
    new FixedHosts(scenario, parts).addFixedHosts();
    new Mounting(scenario, parts).addModules(moduleBays);
    new EmptyBays(parts, scenario.canopyBody()).addSpaces();
    return new Rig(scenario, parts);
  }

  /** Ids of the spaces there are, and of the bays that are spaces of their own when left empty. */
  public Set<String> possibleSpaceIds() {
    Set<String> ids = new LinkedHashSet<>(spaces.keySet());
    for (Bay bay : bays.values()) {
      if (bay.spaceWhenEmpty()) {
        ids.add(bay.id());
      }
    }
    return ids;
  }

  /** The scenario this rig was made of. */
  public Scenario scenario() {
    return scenario;
  }

  /** All bays by id, hosts before the bays on modules. */
  public Map<String, Bay> bays() {
    return bays;
  }

  /** Modules that are fitted, by id. */
  public Map<String, FittedModule> modules() {
    return modules;
  }

  /** Whether a bay is on a module, or on one that stands in it. */
  public boolean standsOn(Bay bay, String moduleId) {
    FittedModule host = modules.get(bay.hostId());
    return host != null
        && (host.module().id().equals(moduleId) || host.inModules().contains(moduleId));
  }

  /** All spaces by id. */
  public Map<String, Space> spaces() {
    return spaces;
  }

  /** Canopy doors by id. */
  public Map<String, FittedDoor> doors() {
    return doors;
  }

  /** Tanks by id. */
  public Map<String, FittedTank> tanks() {
    return tanks;
  }
}
