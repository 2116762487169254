package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Need;

/** Gear and modules that stay home. */
public final class HomeText {
  private HomeText() {}

  /** Units at home in one sentence, what must come along first. */
  public static String inWords(Loading loading) {
    List<String> must = new ArrayList<>();
    List<String> rest = new ArrayList<>();
    for (Item item : loading.scenario().items()) {
      int units = unitsHome(loading, item);
      if (units > 0) {
        String what = (units > 1 ? units + " x " : "") + item.title();
        boolean needed = item.need() == Need.MUST;
        (needed ? must : rest).add(what + (needed ? " (MUST)" : ""));
      }
    }
    must.addAll(rest);
    return String.join("; ", must) + ".";
  }

  /** Units of an item at home. */
  static int unitsHome(Loading loading, Item item) {
    int units = 0;
    for (int unit = 1; unit <= item.quantity(); unit++) {
      units += loading.home().contains(item.keyOf(unit)) ? 1 : 0;
    }
    return units;
  }

  /** Modules that are not fitted. */
  static List<ModuleChoice> modulesLeftOut(Loading loading) {
    return loading.scenario().modules().stream()
        .filter(choice -> !loading.rig().modules().containsKey(choice.module().id()))
        .toList();
  }

  /** A row for each. */
  public static List<String> lines(Loading loading, Subjects subjects, Page page) {
    Table table = new Table().rest("What").words("Need").figures("kg each").figures("Units");
    for (Item item : loading.scenario().items()) {
      int units = unitsHome(loading, item);
      if (units > 0) {
        table.row(
            item.title(),
            need(item.need()),
            Figures.loadKg(item.mass().massG() / 1000.0),
            units + " of " + item.quantity());
      }
    }
    for (ModuleChoice choice : modulesLeftOut(loading)) {
      long massG = choice.module().fixed().massG() + choice.module().moving().massG();
      table.row(
          subjects.any(choice.module().id()) + " (module)",
          need(choice.need()),
          Figures.loadKg(massG / 1000.0),
          "1 of 1");
    }
    return table.isEmpty() ? List.of("Nothing.") : table.lines(page);
  }

  private static String need(Need need) {
    return need == Need.MUST ? "MUST" : need.name().toLowerCase(Locale.ROOT);
  }
}
