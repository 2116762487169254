package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.BiConsumer;
import java.util.function.Function;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.MassSource;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.Tank;

/** Reads tanks; they are full until a scenario says what they start with. */
final class TankReader {
  private final Figures figures;
  private final BiConsumer<String, Place> claim;

  /**
   * A reader for the tanks of one host.
   *
   * @param claim takes the id of a tank
   */
  TankReader(Figures figures, BiConsumer<String, Place> claim) {
    this.figures = figures;
    this.claim = claim;
  }

  /**
   * Reads the tanks of a host.
   *
   * @param box reads a tank's box in the frame of the host
   */
  List<Tank> tanks(List<Fields> listed, Function<Fields, LocalBoxMm> box) {
    List<Tank> tanks = new ArrayList<>();
    for (Fields fields : listed) {
      String id = fields.id("id");
      claim.accept(id, fields.place("id"));
      String title = fields.text("title", "name it as it shall be shown");
      SupplyKind kind = fields.word("kind", Words.TANK);
      long capacityMl = fields.number("capacityL", Measure.CAPACITY);
      long densityGPerL = fields.number("densityKgPerL", Measure.DENSITY);
      KnownMass empty = empty(fields);
      tanks.add(
          new Tank(
              id, title, kind, capacityMl, densityGPerL, empty, box.apply(fields), capacityMl));
      fields.done();
    }
    return tanks;
  }

  /** Without a mass of its own the tank belongs to its host's. */
  private KnownMass empty(Fields fields) {
    long emptyG = fields.numberOr("emptyKg", Measure.MASS_OR_ZERO, 0L);
    OptionalLong toleranceG = Figures.tolerance(fields, "emptyToleranceKg");
    MassSource source =
        emptyG > 0L
            ? Figures.source(fields)
            : fields.wordOr("massSource", Words.MASS_SOURCE, KnownMass.NONE.source());
    return figures.known(emptyG, source, toleranceG);
  }
}
