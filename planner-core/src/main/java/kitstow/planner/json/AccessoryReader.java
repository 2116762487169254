package kitstow.planner.json;

import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.KnownMass;

/** Reads the accessories of a catalogue; they lie at the origin until they are fitted. */
final class AccessoryReader {
  private final Figures figures;

  AccessoryReader(Figures figures) {
    this.figures = figures;
  }

  Accessory entry(Fields fields) {
    String id = fields.id("id");
    String title = fields.text("title", "name it as it shall be shown");
    String source = fields.text("source", "name where the figures come from");
    KnownMass mass = figures.mass(fields, Measure.MASS);
    SizeMm size = BoxFields.size(fields, "sizeMm");
    fields.done();
    BoxMm box = BoxMm.at(new PointMm(0, 0, 0), size);
    return new Accessory(
        id, title, /* entryId= */ id, source, mass, box, /* roof= */ Optional.empty());
  }
}
