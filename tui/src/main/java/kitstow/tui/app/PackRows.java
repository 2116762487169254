package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.advice.PackList;

/** The things of the pack list in the order of its rows. */
public final class PackRows {
  private PackRows() {}

  /** Body keys; none while the list is being made. */
  public static List<String> keys(Work work) {
    List<String> keys = new ArrayList<>();
    work.advice().map(Advice::pack).ifPresent(pack -> add(pack, keys));
    return keys;
  }

  private static void add(PackList pack, List<String> keys) {
    for (PackList.Stop stop : pack.stops()) {
      for (PackList.Filled filled : stop.spaces()) {
        for (PackList.Step step : filled.steps()) {
          keys.add(step.item().key());
        }
      }
    }
  }
}
