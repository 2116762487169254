package kitstow.tui.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kitstow.planner.model.Bay;
import kitstow.planner.model.FittedDoor;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.FittedTank;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.model.Stop;
import kitstow.planner.model.Trailer;

/** Plain names of what rules are about, in place of their ids. */
public final class Subjects {
  private final Map<String, String> items = new LinkedHashMap<>();
  private final Map<String, String> modules = new LinkedHashMap<>();
  private final Map<String, String> others = new LinkedHashMap<>();
  private final boolean pinned;

  /** Names of all that a loading and its scenario hold. */
  public Subjects(Loading loading) {
    this.pinned = loading.scenario().items().stream().anyMatch(item -> item.pin().isPresent());
    Map<String, Integer> uses = new TreeMap<>();
    for (ModuleChoice choice : loading.scenario().modules()) {
      uses.merge(choice.module().title(), 1, Integer::sum);
    }
    for (ModuleChoice choice : loading.scenario().modules()) {
      String id = choice.module().id();
      String title = choice.module().title();
      modules.put(id, uses.getOrDefault(title, 0) > 1 ? title + " (" + id + ")" : title);
    }
    for (Item item : loading.scenario().items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        items.put(item.keyOf(unit), item.title() + (item.quantity() > 1 ? " " + unit : ""));
      }
    }
    for (Trailer trailer : loading.scenario().trailers()) {
      others.put(trailer.id(), trailer.title());
    }
    for (Stop stop : loading.scenario().stops()) {
      others.put(stop.id(), stop.title());
    }
    for (FittedDoor door : loading.rig().doors().values()) {
      others.put(door.door().id(), door.door().title());
    }
    for (Bay bay : loading.rig().bays().values()) {
      others.put(bay.id(), inHost(bay.hostId(), bay.title()));
    }
    for (Space space : loading.rig().spaces().values()) {
      others.put(space.id(), inHost(space.hostId(), space.title()));
    }
    for (FittedTank tank : loading.rig().tanks().values()) {
      others.put(tank.tank().id(), inHost(tank.moduleId().orElse(""), tank.tank().title()));
    }
    others.put("ute", "ute");
    others.put("tray", "tray");
    others.put("rear-axle", "rear axle");
    others.put("front-axle", "front axle");
  }

  private String inHost(String hostId, String title) {
    String host = modules.get(hostId);
    return host == null ? title : host + ": " + title;
  }

  /** Whether any gear must stand where it is. */
  boolean pinned() {
    return pinned;
  }

  /** Name of a module, with its id where several have that title. */
  public String module(FittedModule module) {
    return modules.getOrDefault(module.module().id(), module.module().title());
  }

  /** Name of a space, with the module it is in. */
  public String space(Space space) {
    return others.getOrDefault(space.id(), space.title());
  }

  /** Name of a unit of gear by its body key. */
  public String item(String key) {
    return items.getOrDefault(key, key);
  }

  /** Name of anything a rule may be about. */
  public String any(String id) {
    String item = items.get(id);
    String module = modules.get(id);
    return item != null ? item : module != null ? module : others.getOrDefault(id, id);
  }

  /** Names of several, as they come in a sentence. */
  String all(List<String> ids) {
    List<String> names = new ArrayList<>();
    ids.forEach(id -> names.add(any(id)));
    return String.join(", ", names);
  }

  /** What a limit limits, in the words of the trade. */
  public String limit(RuleId rule, String subjectId) {
    return switch (rule) {
      case GVM_LIMIT -> "Total mass (GVM)";
      case REAR_AXLE_LIMIT -> "Rear axle";
      case FRONT_AXLE_LIMIT -> "Front axle";
      case REAR_TYRE_LIMIT -> "Rear tyres, by load index";
      case FRONT_TYRE_LIMIT -> "Front tyres, by load index";
      case GCM_LIMIT -> "Ute with trailer (GCM)";
      case TOWING_LIMIT -> "Towing: " + any(subjectId);
      case BALL_LIMIT -> "Tow ball mass: " + any(subjectId);
      case CAB_ROOF_LIMIT -> "Cab roof";
      case CANOPY_ROOF_LIMIT -> "Canopy roof";
      case BAR_LIMIT -> "Bar " + bar(subjectId);
      case SPACE_RATING -> "In " + any(subjectId);
      case SLIDE_RATING -> "Slide of " + any(subjectId);
      case MODULE_RATING -> "Carried by " + any(subjectId);
      case BAY_RATING -> "In bay " + any(subjectId);
      case TRAY_RATING -> "Tray";
      default -> any(subjectId);
    };
  }

  private String bar(String subjectId) {
    int mark = subjectId.lastIndexOf(':');
    return mark < 0
        ? subjectId
        : subjectId.substring(mark + 1) + " of " + any(subjectId.substring(0, mark));
  }
}
