package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Loading;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.trip.Shortfall;

/** Supplies that run out on the trip as driven. */
final class SuppliesText {
  private SuppliesText() {}

  static List<String> lines(Loading loading, List<Shortfall> shortfalls, Page page) {
    List<String> lines = new ArrayList<>();
    for (Shortfall one : shortfalls) {
      boolean litres = one.kind() == SupplyKind.FUEL || one.kind() == SupplyKind.WATER;
      lines.addAll(
          page.paragraph(
              "RUNS OUT: ",
              one.kind().name().toLowerCase(Locale.ROOT)
                  + " on "
                  + title(loading, one.legId())
                  + ", "
                  + Figures.near(one.from().km(), 0)
                  + " km and "
                  + Figures.near(one.from().days(), 1)
                  + " days after departure; the leg takes "
                  + Figures.loadKg(one.missingMlOrG() / 1000.0)
                  + (litres ? " L" : " kg")
                  + " more."));
    }
    return lines;
  }

  private static String title(Loading loading, String legId) {
    for (Leg leg : loading.scenario().trip().legs()) {
      if (leg.id().equals(legId)) {
        return leg.title();
      }
    }
    return legId;
  }
}
