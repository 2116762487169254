package kitstow.tui.view;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import kitstow.planner.model.Leg;
import kitstow.planner.model.Loading;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.trip.Shortfall;
import kitstow.planner.trip.Stock;

/** What is left of each supply, how long it lasts, and what runs out on the trip as driven. */
public final class SuppliesText {
  private SuppliesText() {}

  /** A paragraph for each leg on which a supply runs out, or for which none is named. */
  public static List<String> lines(Loading loading, List<Shortfall> shortfalls, Page page) {
    List<String> lines = new ArrayList<>();
    for (Shortfall one : shortfalls) {
      boolean litres = one.kind() == SupplyKind.FUEL || one.kind() == SupplyKind.WATER;
      String kind = one.kind().name().toLowerCase(Locale.ROOT);
      String leg = title(loading, one.legId());
      String missing = Figures.loadKg(one.missingMlOrG() / 1000.0) + (litres ? " L" : " kg");
      lines.addAll(
          isNamed(loading, one.kind())
              ? page.paragraph(
                  "RUNS OUT: ",
                  kind
                      + " on "
                      + leg
                      + ", "
                      + Figures.near(one.from().km(), 0)
                      + " km and "
                      + Figures.near(one.from().days(), 1)
                      + " days after departure; the leg takes "
                      + missing
                      + " more.")
              : page.paragraph(
                  "NO SUPPLY: ",
                  leg
                      + " takes "
                      + missing
                      + " of "
                      + kind
                      + ", and the supplies of the trip name nothing that holds any."));
    }
    return lines;
  }

  /** Whether the trip names what a supply comes from. */
  static boolean isNamed(Loading loading, SupplyKind kind) {
    return loading.scenario().trip().orders().stream().anyMatch(order -> order.kind() == kind);
  }

  /** For each supply the leg that ends with least left, and the last one. */
  static List<String> left(Loading loading, List<Stock> stocks, Page page) {
    Map<SupplyKind, Stock> least = new EnumMap<>(SupplyKind.class);
    Map<SupplyKind, Stock> last = new EnumMap<>(SupplyKind.class);
    for (Stock stock : stocks) {
      if (stock.usedMlOrG() > 0L) {
        least.merge(
            stock.kind(), stock, (old, now) -> now.leftMlOrG() < old.leftMlOrG() ? now : old);
        last.put(stock.kind(), stock);
      }
    }
    Table table =
        new Table()
            .rest("Supply")
            .figures("used")
            .figures("left")
            .figures("lasts")
            .rest("At the end of");
    least.forEach(
        (kind, stock) -> {
          row(table, loading, stock, " (least of all legs)");
          Stock end = last.get(kind);
          if (end != null && !end.equals(stock)) {
            row(table, loading, end, "");
          }
        });
    if (table.isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>(table.lines(page));
    lines.add("");
    lines.addAll(
        page.paragraph(
            "",
            "Used on that leg and left when it ends, before anything is filled up; lasts: at the"
                + " rate of that leg, cans counted. Nothing is kept back: the reserve is what is"
                + " left."));
    return lines;
  }

  private static void row(Table table, Loading loading, Stock stock, String after) {
    boolean litres = stock.kind() == SupplyKind.FUEL || stock.kind() == SupplyKind.WATER;
    String unit = litres ? " L" : " kg";
    String lasts = "-";
    if (stock.daysLeft().isPresent()) {
      lasts = Figures.marginKg(stock.daysLeft().getAsDouble()) + " days";
    } else if (stock.kmLeft().isPresent()) {
      lasts = Figures.near(Math.floor(stock.kmLeft().getAsDouble()), 0) + " km";
    }
    table.row(
        stock.kind().name().toLowerCase(Locale.ROOT),
        Figures.loadKg(stock.usedMlOrG() / 1000.0) + unit,
        Figures.marginKg(stock.leftMlOrG() / 1000.0) + unit,
        lasts,
        title(loading, stock.legId()) + after);
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
