package kitstow.planner.json;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.Environment;
import kitstow.planner.model.LocalBoxMm;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.RoofLimits;
import kitstow.planner.model.Settings;
import kitstow.planner.model.SpaceSpec;

/** Writes bays and spaces with their ratings and bars. */
final class RegionWriter {
  private final Output out;
  private final Settings settings;

  RegionWriter(Output out, Settings settings) {
    this.out = out;
    this.settings = settings;
  }

  void ratings(Optional<Ratings> ratings) {
    ratings.ifPresent(this::ratings);
  }

  /** Writes ratings; what the settings derive from the static one is left out. */
  void ratings(Ratings ratings) {
    Ratings derated = settings.derated(ratings.staticG());
    boolean derived = ratings.derived();
    out.object(
        "ratings",
        fields -> {
          fields.milli("staticKg", ratings.staticG());
          if (!derived || ratings.roadG() != derated.roadG()) {
            fields.milli("roadKg", ratings.roadG());
          }
          if (!derived || ratings.offRoadG() != derated.offRoadG()) {
            fields.milli("offRoadKg", ratings.offRoadG());
          }
        });
  }

  void roof(String key, Optional<RoofLimits> limits) {
    limits.ifPresent(
        given ->
            out.object(
                key,
                fields -> {
                  fields.milli("movingKg", given.movingG());
                  fields.milli("parkedKg", given.parkedG());
                }));
  }

  /** A box in the frame of a ute, tray or canopy. */
  void hostBox(LocalBoxMm box) {
    out.point("cornerMm", box.aMm(), box.bMm(), box.cMm());
    out.size("sizeMm", box.size());
  }

  /** A box in the frame of a module. */
  void moduleBox(LocalBoxMm box) {
    out.object(
        "cornerMm",
        fields -> {
          fields.whole("depth", box.aMm());
          fields.whole("across", box.bMm());
          fields.whole("up", box.cMm());
        });
    moduleSize(box);
  }

  private void moduleSize(LocalBoxMm box) {
    ModuleWriter.size(out, box.size());
  }

  private void named(String id, String title) {
    out.text("id", id);
    out.text("title", title);
  }

  private void air(Set<Environment> environment, boolean ownAir) {
    out.words("environment", environment);
    out.flagIfSet("ownAir", ownAir);
  }

  void hostBays(List<BaySpec> bays) {
    out.list(
        "bays",
        bays,
        bay -> {
          named(bay.id(), bay.title());
          hostBox(bay.box());
          out.word("facing", bay.facing());
          out.texts("doors", bay.doorIds());
          ratings(bay.ratings());
          out.word("zone", bay.zone());
          air(bay.environment(), bay.ownAir());
          out.flagIfSet("spaceWhenEmpty", bay.spaceWhenEmpty());
        });
  }

  void hostSpaces(List<SpaceSpec> spaces) {
    out.list(
        "spaces",
        spaces,
        space -> {
          named(space.id(), space.title());
          hostBox(space.box());
          ratings(space.ratings());
          out.word("access", space.access());
          out.texts("doors", space.doorIds());
          out.word("zone", space.zone());
          air(space.environment(), space.ownAir());
          space.bars().ifPresent(this::bars);
        });
  }

  void moduleBays(List<BaySpec> bays) {
    out.list(
        "bays",
        bays,
        bay -> {
          named(bay.id(), bay.title());
          moduleBox(bay.box());
          ratings(bay.ratings());
          out.flagIfSet("moves", bay.moves());
          air(bay.environment(), bay.ownAir());
          out.flagIfSet("spaceWhenEmpty", bay.spaceWhenEmpty());
        });
  }

  void moduleSpaces(List<SpaceSpec> spaces) {
    out.list(
        "spaces",
        spaces,
        space -> {
          named(space.id(), space.title());
          moduleBox(space.box());
          ratings(space.ratings());
          out.word("access", space.access());
          out.flagIfSet("moves", space.moves());
          air(space.environment(), space.ownAir());
          space.bars().ifPresent(this::bars);
        });
  }

  private void bars(RoofBars bars) {
    out.object(
        "bars",
        fields -> {
          fields.listAlways(
              "bars",
              bars.bars(),
              bar -> {
                fields.text("id", bar.id());
                fields.whole("fromFrontMm", bar.fromFrontMm());
                ratings(bar.ratings());
              });
          fields.flag("platformFloor", bars.platformFloor());
          fields.whole("projectionFrontMm", bars.projectionFrontMm());
          fields.whole("projectionRearMm", bars.projectionRearMm());
          fields.whole("projectionSideMm", bars.projectionSideMm());
        });
  }
}
