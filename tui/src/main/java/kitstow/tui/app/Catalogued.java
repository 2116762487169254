package kitstow.tui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;

/** Things of the catalogue by their names. */
public final class Catalogued {
  private Catalogued() {}

  /**
   * A thing to pick.
   *
   * @param id its entry
   * @param title its name
   * @param massG its mass in grams
   * @param size its outside size
   */
  public record Entry(String id, String title, long massG, SizeMm size) {}

  /** Things whose name holds what was typed. */
  public static List<Entry> found(AppState state, Overlay.Pick pick) {
    String wanted = pick.typed().toLowerCase(Locale.ROOT).strip();
    Catalogue catalogue = state.work().map(Work::catalogue).orElse(Catalogue.EMPTY);
    List<Entry> found = new ArrayList<>();
    for (Entry entry : all(catalogue, pick.what())) {
      if (entry.title().toLowerCase(Locale.ROOT).contains(wanted)) {
        found.add(entry);
      }
    }
    return found;
  }

  private static List<Entry> all(Catalogue catalogue, Picked what) {
    List<Entry> all = new ArrayList<>();
    switch (what) {
      case GEAR -> {
        for (Item item : catalogue.gear()) {
          all.add(new Entry(item.id(), item.title(), item.mass().massG(), item.shapes().get(0)));
        }
      }
      case MODULE -> {
        for (FitOutModule module : catalogue.modules()) {
          long massG = module.fixed().massG() + module.moving().massG();
          all.add(new Entry(module.id(), module.title(), massG, module.size()));
        }
      }
      case ACCESSORY -> {
        for (Accessory one : catalogue.accessories()) {
          BoxMm box = one.box();
          SizeMm size = new SizeMm(box.lengthMm(), box.widthMm(), box.heightMm());
          all.add(new Entry(one.id(), one.title(), one.mass().massG(), size));
        }
      }
    }
    return all;
  }
}
