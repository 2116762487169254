package kitstow.planner.json;

import java.util.List;
import java.util.function.Consumer;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.Tank;

/** Writes modules as entries, and tanks. */
final class ModuleWriter {
  private final Output out;
  private final RegionWriter regions;

  ModuleWriter(Output out, RegionWriter regions) {
    this.out = out;
    this.regions = regions;
  }

  void module(FitOutModule module) {
    out.text("id", module.entryId());
    out.text("title", module.title());
    out.text("source", module.source());
    size(out, module.size());
    out.milli("fixedKg", module.fixed().massG());
    boolean moves = module.moving().massG() > 0L;
    if (moves) {
      out.milli("movingKg", module.moving().massG());
    }
    out.word("massSource", module.fixed().source());
    out.milli("fixedToleranceKg", module.fixed().toleranceG());
    if (moves) {
      out.milli("movingToleranceKg", module.moving().toleranceG());
    }
    module
        .slide()
        .ifPresent(
            slide ->
                out.object(
                    "slide",
                    fields -> {
                      fields.whole("extensionMm", slide.extensionMm());
                      regions.ratings(slide.ratings());
                      fields.flagIfSet("contentsOnly", slide.contentsOnly());
                      fields.flag("lockIn", slide.lockIn());
                      fields.flag("lockOut", slide.lockOut());
                    }));
    regions.ratings(module.rating());
    regions.moduleSpaces(module.spaces());
    regions.moduleBays(module.bays());
    if (!module.tanks().isEmpty()) {
      tanks("tanks", module.tanks(), regions::moduleBox);
    }
  }

  /** Size of a module, or of something in its frame. */
  static void size(Output out, SizeMm size) {
    out.object(
        "sizeMm",
        fields -> {
          fields.whole("depth", size.lengthMm());
          fields.whole("across", size.widthMm());
          fields.whole("height", size.heightMm());
        });
  }

  /** Writes tanks under their local ids; what they start with is written elsewhere. */
  void tanks(String key, List<Tank> tanks, Consumer<LocalBoxMm> box) {
    out.listAlways(
        key,
        tanks,
        tank -> {
          out.text("id", tank.id().substring(tank.id().indexOf('/') + 1));
          out.text("title", tank.title());
          out.word("kind", tank.kind());
          out.milli("capacityL", tank.capacityMl());
          out.milli("densityKgPerL", tank.densityGPerL());
          if (!tank.empty().equals(KnownMass.NONE)) {
            out.milli("emptyKg", tank.empty().massG());
            out.word("massSource", tank.empty().source());
            out.milli("emptyToleranceKg", tank.empty().toleranceG());
          }
          box.accept(tank.box());
        });
  }
}
