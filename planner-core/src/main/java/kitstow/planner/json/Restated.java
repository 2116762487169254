package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.Slide;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Tank;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Ute;

/**
 * Catalogue entries under a scenario's settings. A catalogue is read with default settings; where a
 * tolerance or a derived rating equals its default, it is set anew from the scenario's settings. A
 * figure that its file gives and that happens to equal the default cannot be told apart and is set
 * anew too.
 */
final class Restated {
  private final Figures figures;

  Restated(Figures figures) {
    this.figures = figures;
  }

  private KnownMass mass(KnownMass mass) {
    long usualG = Figures.DEFAULTS.ratios().toleranceG(mass.massG(), mass.source());
    return mass.toleranceG() != usualG
        ? mass
        : new KnownMass(
            mass.massG(), mass.source(), figures.ratios().toleranceG(mass.massG(), mass.source()));
  }

  private Ratings ratings(Ratings ratings) {
    if (!ratings.derived()) {
      return ratings;
    }
    Ratings usual = Figures.DEFAULTS.settings().derated(ratings.staticG());
    Ratings derated = figures.settings().derated(ratings.staticG());
    return new Ratings(
        ratings.staticG(),
        ratings.roadG() == usual.roadG() ? derated.roadG() : ratings.roadG(),
        ratings.offRoadG() == usual.offRoadG() ? derated.offRoadG() : ratings.offRoadG(),
        /* derived= */ true);
  }

  private Optional<Ratings> ratings(Optional<Ratings> ratings) {
    return ratings.map(this::ratings);
  }

  Ute ute(Ute ute) {
    List<RemovablePart> parts = new ArrayList<>();
    for (RemovablePart part : ute.parts()) {
      parts.add(
          new RemovablePart(
              part.id(),
              part.title(),
              mass(part.mass()),
              part.box(),
              part.state(),
              part.stowedAsItemId()));
    }
    return new Ute(
        ute.id(),
        ute.title(),
        ute.source(),
        ute.wheelbaseMm(),
        ute.frontTrackMm(),
        ute.rearTrackMm(),
        empty(ute.empty()),
        ute.emptyHeightMm(),
        ute.emptyHeightSource(),
        ute.limits(),
        ute.frontTyres(),
        ute.rearTyres(),
        ute.seats(),
        tanks(ute.fuelTanks()),
        ute.ball(),
        parts,
        ute.springHangers(),
        ute.foremostXMm(),
        ute.rearmostXMm(),
        ute.cabRoofZMm(),
        bays(ute.bays()),
        spaces(ute.spaces()));
  }

  private EmptyAxleLoads empty(EmptyAxleLoads empty) {
    return new EmptyAxleLoads(
        mass(empty.front()),
        mass(empty.rear()),
        empty.fuelMl(),
        empty.people(),
        empty.fitted(),
        empty.source(),
        empty.date());
  }

  Tray tray(Tray tray) {
    return new Tray(
        tray.id(),
        tray.title(),
        tray.source(),
        tray.size(),
        mass(tray.mass()),
        ratings(tray.rating()),
        tray.headboardHeightMm(),
        bays(tray.bays()),
        spaces(tray.spaces()),
        tray.frontXMm(),
        tray.deckZMm());
  }

  Canopy canopy(Canopy canopy) {
    return new Canopy(
        canopy.id(),
        canopy.title(),
        canopy.source(),
        canopy.size(),
        mass(canopy.mass()),
        canopy.inside(),
        canopy.doors(),
        canopy.roof(),
        canopy.liftOffLegs(),
        bays(canopy.bays()),
        spaces(canopy.spaces()),
        canopy.fromTrayFrontMm());
  }

  FitOutModule module(FitOutModule module) {
    return new FitOutModule(
        module.id(),
        module.title(),
        module.entryId(),
        module.source(),
        module.size(),
        mass(module.fixed()),
        mass(module.moving()),
        module.slide().map(this::slide),
        ratings(module.rating()),
        spaces(module.spaces()),
        bays(module.bays()),
        tanks(module.tanks()));
  }

  private Slide slide(Slide slide) {
    return new Slide(
        slide.extensionMm(),
        ratings(slide.ratings()),
        slide.contentsOnly(),
        slide.lockIn(),
        slide.lockOut());
  }

  Accessory accessory(Accessory accessory) {
    return new Accessory(
        accessory.id(),
        accessory.title(),
        accessory.entryId(),
        accessory.source(),
        mass(accessory.mass()),
        accessory.box(),
        accessory.roof());
  }

  Item item(Item item) {
    return new Item(
        item.id(),
        item.title(),
        item.entryId(),
        item.source(),
        item.shapes(),
        mass(item.mass()),
        item.content(),
        item.turns(),
        item.bearsG(),
        item.keepClear(),
        item.marks(),
        item.reach(),
        item.group(),
        item.need(),
        item.value(),
        item.quantity(),
        item.growth(),
        item.pin());
  }

  private List<Tank> tanks(List<Tank> tanks) {
    List<Tank> restated = new ArrayList<>();
    for (Tank tank : tanks) {
      restated.add(
          new Tank(
              tank.id(),
              tank.title(),
              tank.kind(),
              tank.capacityMl(),
              tank.densityGPerL(),
              mass(tank.empty()),
              tank.box(),
              tank.startMl()));
    }
    return restated;
  }

  private List<BaySpec> bays(List<BaySpec> bays) {
    List<BaySpec> restated = new ArrayList<>();
    for (BaySpec bay : bays) {
      restated.add(
          new BaySpec(
              bay.id(),
              bay.title(),
              bay.box(),
              bay.facing(),
              bay.doorIds(),
              ratings(bay.ratings()),
              bay.moves(),
              bay.zone(),
              bay.environment(),
              bay.ownAir(),
              bay.spaceWhenEmpty()));
    }
    return restated;
  }

  private List<SpaceSpec> spaces(List<SpaceSpec> spaces) {
    List<SpaceSpec> restated = new ArrayList<>();
    for (SpaceSpec space : spaces) {
      restated.add(
          new SpaceSpec(
              space.id(),
              space.title(),
              space.box(),
              ratings(space.ratings()),
              space.access(),
              space.doorIds(),
              space.moves(),
              space.zone(),
              space.environment(),
              space.ownAir(),
              space.bars().map(this::bars)));
    }
    return restated;
  }

  private RoofBars bars(RoofBars bars) {
    List<RoofBars.Bar> restated = new ArrayList<>();
    for (RoofBars.Bar bar : bars.bars()) {
      restated.add(new RoofBars.Bar(bar.id(), bar.fromFrontMm(), ratings(bar.ratings())));
    }
    return new RoofBars(
        restated,
        bars.platformFloor(),
        bars.projectionFrontMm(),
        bars.projectionRearMm(),
        bars.projectionSideMm());
  }
}
