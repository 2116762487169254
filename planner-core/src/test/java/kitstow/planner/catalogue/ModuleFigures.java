package kitstow.planner.catalogue;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.Ratings;
import kitstow.planner.model.RoofBars;
import kitstow.planner.model.Slide;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Tank;

/** The figures of a module as the ranges name them; depth, across and height in this order. */
final class ModuleFigures {
  private static final double PERCENT = 100.0;
  private static final double ML_PER_L = 1000.0;

  private ModuleFigures() {}

  static List<Figure> of(FitOutModule module) {
    List<Figure> figures = new ArrayList<>();
    addSize("", module.size(), figures);
    figures.add(Figure.kg("ownKg", ownG(module)));
    module.rating().ifPresent(ratings -> addRatings("", ratings, figures));
    module.slide().ifPresent(slide -> addSlide(module, slide, figures));
    for (SpaceSpec space : module.spaces()) {
      addSize("in " + space.id() + " ", space.box().size(), figures);
      space.ratings().ifPresent(ratings -> addRatings("in " + space.id() + " ", ratings, figures));
      space.bars().ifPresent(bars -> addBars(bars, figures));
    }
    for (BaySpec bay : module.bays()) {
      addSize("bay " + bay.id() + " ", bay.box().size(), figures);
      bay.ratings().ifPresent(ratings -> addRatings("bay " + bay.id() + " ", ratings, figures));
    }
    for (Tank tank : module.tanks()) {
      figures.add(Figure.kg("tankL", tank.capacityMl()));
      figures.add(Figure.kg("tankEmptyKg", tank.empty().massG()));
      figures.add(
          new Figure(
              "tankBoxOverCapacity",
              UteFigures.volumeL(tank.box().size()) * ML_PER_L / tank.capacityMl()));
    }
    return figures;
  }

  /** Fixed and moving mass and its empty tanks. */
  static long ownG(FitOutModule module) {
    return module.fixed().massG()
        + module.moving().massG()
        + module.tanks().stream().mapToLong(tank -> tank.empty().massG()).sum();
  }

  private static void addSize(String prefix, SizeMm size, List<Figure> figures) {
    figures.add(new Figure(prefix + "depthMm", size.lengthMm()));
    figures.add(new Figure(prefix + "acrossMm", size.widthMm()));
    figures.add(new Figure(prefix + "heightMm", size.heightMm()));
  }

  /** Ratings that were derived from the static one are not figures of the entry. */
  private static void addRatings(String prefix, Ratings ratings, List<Figure> figures) {
    figures.add(Figure.kg(prefix + "staticKg", ratings.staticG()));
    if (!ratings.derived()) {
      figures.add(Figure.kg(prefix + "roadKg", ratings.roadG()));
      figures.add(Figure.kg(prefix + "offRoadKg", ratings.offRoadG()));
    }
  }

  private static void addSlide(FitOutModule module, Slide slide, List<Figure> figures) {
    addRatings("slide ", slide.ratings(), figures);
    figures.add(
        new Figure("extensionPercent", slide.extensionMm() * PERCENT / module.size().lengthMm()));
    figures.add(new Figure("locksInAndOut", slide.lockIn() && slide.lockOut() ? 1 : 0));
  }

  private static void addBars(RoofBars bars, List<Figure> figures) {
    figures.add(new Figure("bars", bars.bars().size()));
    figures.add(new Figure("floor", bars.platformFloor() ? 1 : 0));
    for (RoofBars.Bar bar : bars.bars()) {
      figures.add(Figure.kg("barStaticKg", bar.ratings().staticG()));
    }
    figures.add(new Figure("projectionMm", bars.projectionFrontMm()));
    figures.add(new Figure("projectionMm", bars.projectionRearMm()));
    figures.add(new Figure("projectionMm", bars.projectionSideMm()));
  }
}
