package kitstow.planner.json;

import java.util.OptionalDouble;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.trip.Shortfall;
import kitstow.planner.trip.Stock;

/** Writes what each leg does to each supply, and what runs out. */
final class SupplyWriter {
  private final Output out;

  SupplyWriter(Output out) {
    this.out = out;
  }

  void stock(Stock stock) {
    out.word("kind", stock.kind());
    out.text("legId", stock.legId());
    out.text("unit", unit(stock.kind()));
    out.milli("used", stock.usedMlOrG());
    out.milli("left", stock.leftMlOrG());
    out.milli("startKg", stock.startG());
    out.milli("endKg", stock.endG());
    lasts("daysLeft", stock.daysLeft());
    lasts("kmLeft", stock.kmLeft());
  }

  private void lasts(String key, OptionalDouble value) {
    if (value.isPresent()) {
      out.down(key, value.getAsDouble(), 3);
    } else {
      out.nothing(key);
    }
  }

  void shortfall(Shortfall shortfall) {
    out.word("kind", shortfall.kind());
    out.text("legId", shortfall.legId());
    out.text("unit", unit(shortfall.kind()));
    out.milli("missing", shortfall.missingMlOrG());
    out.down("km", shortfall.from().km(), 3);
    out.down("days", shortfall.from().days(), 3);
  }

  private static String unit(SupplyKind kind) {
    return switch (kind) {
      case FUEL, WATER -> "L";
      case FOOD, GAS -> "kg";
    };
  }
}
