package kitstow.tui.view;

import java.util.List;
import java.util.Set;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;

/** One line for every key in the drawings. */
final class Legend {
  private Legend() {}

  static List<String> lines(
      Loading loading, Keys keys, Set<String> drawn, Subjects subjects, Page page) {
    Table table = new Table().figures("Key").rest("What").figures("kg").rest("Where");
    for (FittedModule module : loading.rig().modules().values()) {
      String key = keys.modules().getOrDefault(module.module().id(), "");
      long massG = module.module().fixed().massG() + module.module().moving().massG();
      table.row(
          shown(key, drawn),
          subjects.module(module),
          Figures.loadKg(massG / 1000.0),
          "bay " + subjects.any(module.bay().id()));
    }
    keys.items()
        .forEach(
            (itemKey, key) -> {
              PlacedItem item = loading.placed().get(itemKey);
              if (item == null) {
                throw new IllegalArgumentException("no placed item: " + itemKey);
              }
              table.row(
                  shown(key, drawn),
                  subjects.item(itemKey),
                  Figures.loadKg(item.item().mass().massG() / 1000.0),
                  subjects.space(item.space()));
            });
    return table.isEmpty() ? List.of("Nothing is aboard.") : table.lines(page);
  }

  private static String shown(String key, Set<String> drawn) {
    return drawn.contains(key) ? key : key + " (no room)";
  }
}
