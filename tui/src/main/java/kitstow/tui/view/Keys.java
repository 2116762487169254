package kitstow.tui.view;

import java.util.LinkedHashMap;
import java.util.Map;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Space;

/** The sign of every thing in the drawings: letters for modules, numbers for gear. */
public final class Keys {
  private static final int LETTERS = 26;

  private final Map<String, String> modules = new LinkedHashMap<>();
  private final Map<String, String> items = new LinkedHashMap<>();

  private Keys() {}

  /** Keys of a loading: modules as listed, gear by the order of spaces. */
  public static Keys of(Loading loading) {
    Keys keys = new Keys();
    for (FittedModule module : loading.rig().modules().values()) {
      keys.modules.put(module.module().id(), letter(keys.modules.size()));
    }
    for (Space space : loading.rig().spaces().values()) {
      for (PlacedItem item : loading.in(space.id())) {
        keys.items.put(item.key(), String.valueOf(keys.items.size() + 1));
      }
    }
    return keys;
  }

  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }

  /** Key by module id. */
  public Map<String, String> modules() {
    return modules;
  }

  /** Key by the body key of a unit of gear, in the order of the legend. */
  public Map<String, String> items() {
    return items;
  }
}
