package kitstow.planner.catalogue;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Door;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Tray;
import kitstow.planner.model.Zone;

/** The figures of trays, canopies and accessories as the ranges name them. */
final class BodyFigures {
  private BodyFigures() {}

  static List<Figure> of(Tray tray) {
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure("lengthMm", tray.size().lengthMm()));
    figures.add(new Figure("widthMm", tray.size().widthMm()));
    figures.add(new Figure("deckDepthMm", tray.size().heightMm()));
    figures.add(Figure.kg("massKg", tray.mass().massG()));
    figures.add(new Figure("headboardHeightMm", tray.headboardHeightMm()));
    addBayRatings(tray.bays(), figures);
    return figures;
  }

  static List<Figure> of(Canopy canopy) {
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure("lengthMm", canopy.size().lengthMm()));
    figures.add(new Figure("widthMm", canopy.size().widthMm()));
    figures.add(new Figure("heightMm", canopy.size().heightMm()));
    figures.add(new Figure("insideLengthMm", canopy.inside().size().lengthMm()));
    figures.add(new Figure("insideWidthMm", canopy.inside().size().widthMm()));
    figures.add(new Figure("insideHeightMm", canopy.inside().size().heightMm()));
    figures.add(new Figure("insideL", UteFigures.volumeL(canopy.inside().size())));
    figures.add(Figure.kg("massKg", canopy.mass().massG()));
    figures.add(new Figure("liftOffFittings", canopy.liftOffLegs() ? 1 : 0));
    for (Door door : canopy.doors()) {
      String along = door.side() == Facing.REAR ? "rearDoorClearMm" : "sideDoorClearMm";
      figures.add(new Figure(along, door.toMm() - door.fromMm()));
      figures.add(new Figure("doorClearHeightMm", door.headZMm() - door.sillZMm()));
      for (Door.Strut strut : door.struts()) {
        figures.add(new Figure("strutWidthMm", strut.toMm() - strut.fromMm()));
        figures.add(new Figure("strutHeightMm", strut.upperZMm() - strut.lowerZMm()));
      }
    }
    canopy
        .roof()
        .ifPresent(
            roof -> {
              figures.add(Figure.kg("roofMovingKg", roof.movingG()));
              figures.add(
                  new Figure("roofParkedOverMoving", (double) roof.parkedG() / roof.movingG()));
            });
    addBayRatings(canopy.bays(), figures);
    return figures;
  }

  static List<Figure> of(Accessory accessory) {
    return List.of(
        Figure.kg("massKg", accessory.mass().massG()),
        new Figure("boxLengthMm", accessory.box().maxXMm() - accessory.box().minXMm()),
        new Figure("boxWidthMm", accessory.box().maxYMm() - accessory.box().minYMm()),
        new Figure("boxHeightMm", accessory.box().maxZMm() - accessory.box().minZMm()));
  }

  private static void addBayRatings(List<BaySpec> bays, List<Figure> figures) {
    for (BaySpec bay : bays) {
      String name = bay.zone() == Zone.TRAY ? "deckKg" : "bayKg";
      bay.ratings().ifPresent(ratings -> figures.add(Figure.kg(name, ratings.staticG())));
    }
  }
}
