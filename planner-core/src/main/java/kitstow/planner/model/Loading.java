package kitstow.planner.model;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A scenario with a plan carried out: every body with mass in its place, everything closed and all
 * tanks full. What each weighs and where it has moved in a moment of the trip is a {@link
 * LoadState}.
 */
public final class Loading {
  /** Key of the empty ute's mass at the front axle line. */
  public static final String UTE_FRONT = "ute-front";

  /** Key of the empty ute's mass at the rear axle line. */
  public static final String UTE_REAR = "ute-rear";

  /** Key of the ball mass. */
  public static final String BALL = "ball";

  /** What is added to a module's id for its moving part. */
  public static final String MOVING = "-moving";

  /** What is added to a tank's id for its liquid. */
  public static final String LIQUID = "-liquid";

  /** What an empty seat's body key starts with; it weighs something in certification only. */
  public static final String SEAT = "seat-";

  private final Scenario scenario;
  private final LoadPlan plan;
  private final Rig rig;
  private final GearPlaces gear;
  private final BodyList bodies = new BodyList();

  private Loading(Scenario scenario, LoadPlan plan) {
    this.scenario = scenario;
    this.plan = plan;
    this.rig = Rig.of(scenario, plan.moduleBays());
    this.gear = GearPlaces.of(scenario, plan, rig);
  }

  /**
   * Carries out a plan.
   *
   * @throws IllegalArgumentException if the plan names a space, item, unit, shape, module or bay
   *     that does not exist, or places a unit twice
   */
  public static Loading of(Scenario scenario, LoadPlan plan) {
    Loading loading = new Loading(scenario, plan);
    VehicleBodies vehicle = new VehicleBodies(scenario, loading.bodies);
    vehicle.addVehicle();
    new FitOutBodies(loading.rig, loading.bodies).addModulesAndTanks();
    loading.gear.addTo(loading.bodies);
    vehicle.addPeopleAndBall();
    return loading;
  }

  /** The scenario. */
  public Scenario scenario() {
    return scenario;
  }

  /** The plan. */
  public LoadPlan plan() {
    return plan;
  }

  /** The rig under the plan's module bays. */
  public Rig rig() {
    return rig;
  }

  /** All bodies; their order is that of the masses in a {@link LoadState}. */
  public List<Body> bodies() {
    return bodies.all();
  }

  /**
   * Tolerance of a body's own mass, grams. That of a body which was on the ute when it was weighed
   * counts only where the ute does not, on a roof or the tray.
   */
  public long ownToleranceG(int body) {
    return bodies.ownToleranceG(body);
  }

  /** Number of the entry whose error a body shares, counted from 0: one for each tolerance key. */
  public int entryOf(int body) {
    return bodies.entryOf(body);
  }

  /** How many entries have errors of their own. */
  public int entries() {
    return bodies.entries();
  }

  /** Index of a body, or -1. */
  public int indexOf(String key) {
    return bodies.indexOf(key);
  }

  /** Placed items by body key, in the order of the plan. */
  public Map<String, PlacedItem> placed() {
    return Collections.unmodifiableMap(gear.placed);
  }

  /** Items in a space, in the order of the plan. */
  public List<PlacedItem> in(String spaceId) {
    return Collections.unmodifiableList(gear.bySpace.getOrDefault(spaceId, List.of()));
  }

  /** Body keys of units that stay home. */
  public Set<String> home() {
    return Collections.unmodifiableSet(gear.home);
  }
}
