package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Door;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.Tray;
import kitstow.planner.model.TyreSet;
import kitstow.planner.model.Ute;
import kitstow.planner.model.UteLimits;

/** Writes ute, tray, canopy and accessories as entries. */
final class VehicleWriter {
  private final Output out;
  private final RegionWriter regions;

  VehicleWriter(Output out, RegionWriter regions) {
    this.out = out;
    this.regions = regions;
  }

  void ute(Ute ute) {
    out.text("id", ute.id());
    out.text("title", ute.title());
    out.text("source", ute.source());
    out.whole("wheelbaseMm", ute.wheelbaseMm());
    out.whole("frontTrackMm", ute.frontTrackMm());
    out.whole("rearTrackMm", ute.rearTrackMm());
    out.object("empty", fields -> empty(ute.empty()));
    out.whole("emptyHeightMm", ute.emptyHeightMm());
    out.text("emptyHeightSource", ute.emptyHeightSource());
    out.object("limits", fields -> limits(ute.limits()));
    tyres("frontTyres", ute.frontTyres());
    tyres("rearTyres", ute.rearTyres());
    out.listAlways(
        "seats",
        ute.seats(),
        seat -> {
          out.text("id", seat.id());
          out.text("title", seat.title());
          out.point("placeMm", seat.place().xMm(), seat.place().yMm(), seat.place().zMm());
        });
    new ModuleWriter(out, regions).tanks("fuelTanks", ute.fuelTanks(), regions::hostBox);
    ute.ball().ifPresent(ball -> out.point("ballMm", ball.xMm(), ball.yMm(), ball.zMm()));
    out.list(
        "parts",
        ute.parts(),
        part -> {
          out.text("id", part.id());
          out.text("title", part.title());
          out.mass(part.mass());
          BoxMm box = part.box();
          out.point("cornerMm", box.minXMm(), box.minYMm(), box.minZMm());
          out.size("sizeMm", sizeOf(box));
        });
    ute.springHangers()
        .ifPresent(
            hangers ->
                out.object(
                    "springHangers",
                    fields -> {
                      fields.whole("frontXMm", hangers.frontXMm());
                      fields.whole("rearXMm", hangers.rearXMm());
                    }));
    ute.foremostXMm().ifPresent(foremost -> out.whole("foremostXMm", foremost));
    out.whole("rearmostXMm", ute.rearmostXMm());
    out.whole("cabRoofZMm", ute.cabRoofZMm());
    regions.hostBays(ute.bays());
    regions.hostSpaces(ute.spaces());
  }

  static SizeMm sizeOf(BoxMm box) {
    return new SizeMm(
        box.maxXMm() - box.minXMm(), box.maxYMm() - box.minYMm(), box.maxZMm() - box.minZMm());
  }

  private void empty(EmptyAxleLoads empty) {
    out.milli("frontKg", empty.front().massG());
    out.milli("rearKg", empty.rear().massG());
    out.word("massSource", empty.front().source());
    out.milli("frontToleranceKg", empty.front().toleranceG());
    out.milli("rearToleranceKg", empty.rear().toleranceG());
    out.millis("fuelL", empty.fuelMl());
    out.listAlways(
        "people",
        empty.people(),
        person -> {
          out.text("seat", person.seatId());
          out.milli("massKg", person.massG());
        });
    List<String> fitted = new ArrayList<>(empty.fitted());
    fitted.sort(null);
    out.textsAlways("fitted", fitted);
    out.text("source", empty.source());
    out.text("date", empty.date());
  }

  private void limits(UteLimits limits) {
    out.milli("gvmKg", limits.gvmG());
    out.milli("frontAxleKg", limits.frontAxleG());
    out.milli("rearAxleKg", limits.rearAxleG());
    out.number("gcmKg", limits.gcmG(), 3);
    out.number("brakedTowingKg", limits.brakedTowingG(), 3);
    out.number("unbrakedTowingKg", limits.unbrakedTowingG(), 3);
    out.number("ballKg", limits.ballG(), 3);
    regions.roof("cabRoof", limits.cabRoof());
  }

  private void tyres(String key, TyreSet tyres) {
    out.object(
        key,
        fields -> {
          fields.whole("loadIndex", tyres.loadIndex());
          fields.whole("count", tyres.count());
        });
  }

  void tray(Tray tray) {
    out.text("id", tray.id());
    out.text("title", tray.title());
    out.text("source", tray.source());
    out.size("sizeMm", tray.size());
    out.mass(tray.mass());
    regions.ratings(tray.rating());
    out.whole("headboardHeightMm", tray.headboardHeightMm());
    regions.hostBays(tray.bays());
    regions.hostSpaces(tray.spaces());
  }

  void canopy(Canopy canopy) {
    out.text("id", canopy.id());
    out.text("title", canopy.title());
    out.text("source", canopy.source());
    out.size("sizeMm", canopy.size());
    out.mass(canopy.mass());
    out.object("inside", fields -> regions.hostBox(canopy.inside()));
    out.listAlways("doors", canopy.doors(), this::door);
    regions.roof("roof", canopy.roof());
    out.flag("liftOffLegs", canopy.liftOffLegs());
    regions.hostBays(canopy.bays());
    regions.hostSpaces(canopy.spaces());
  }

  private void door(Door door) {
    out.text("id", door.id());
    out.text("title", door.title());
    out.word("side", door.side());
    out.whole("fromMm", door.fromMm());
    out.whole("toMm", door.toMm());
    out.whole("sillZMm", door.sillZMm());
    out.whole("headZMm", door.headZMm());
    out.list(
        "struts",
        door.struts(),
        strut -> {
          out.whole("fromMm", strut.fromMm());
          out.whole("toMm", strut.toMm());
          out.whole("lowerZMm", strut.lowerZMm());
          out.whole("upperZMm", strut.upperZMm());
        });
  }

  void accessory(Accessory accessory) {
    out.text("id", accessory.entryId());
    out.text("title", accessory.title());
    out.text("source", accessory.source());
    out.mass(accessory.mass());
    out.size("sizeMm", sizeOf(accessory.box()));
  }
}
