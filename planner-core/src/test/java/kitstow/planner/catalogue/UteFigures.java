package kitstow.planner.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.EmptyAxleLoads;
import kitstow.planner.model.RemovablePart;
import kitstow.planner.model.Seat;
import kitstow.planner.model.SpaceSpec;
import kitstow.planner.model.Tank;
import kitstow.planner.model.TyreSet;
import kitstow.planner.model.Ute;
import kitstow.planner.model.UteLimits;

/** The figures of a ute as the ranges name them. */
final class UteFigures {
  /** Kilograms one single tyre may carry by load index: UN Regulation 54, annex of load indices. */
  private static final Map<Integer, Integer> TYRE_KG = Map.of(113, 1150, 121, 1450);

  private static final double G_PER_KG = 1000.0;
  private static final double PERCENT = 100.0;
  private static final double CUBIC_MM_PER_L = 1e6;

  private UteFigures() {}

  static List<Figure> of(Ute ute) {
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure("wheelbaseMm", ute.wheelbaseMm()));
    figures.add(new Figure("trackMm", ute.frontTrackMm()));
    figures.add(new Figure("trackMm", ute.rearTrackMm()));
    figures.add(new Figure("emptyHeightMm", ute.emptyHeightMm()));
    figures.add(new Figure("cabRoofZMm", ute.cabRoofZMm()));
    ute.foremostXMm().ifPresent(x -> figures.add(new Figure("foremostAheadOfFrontAxleMm", -x)));
    figures.add(new Figure("rearmostBehindRearAxleMm", ute.rearmostXMm() - ute.wheelbaseMm()));
    addKerb(ute, figures);
    addLimits(ute, figures);
    for (Seat seat : ute.seats()) {
      boolean front = seat.id().equals("driver") || seat.id().startsWith("front");
      figures.add(new Figure(front ? "frontRowXMm" : "rearRowXMm", seat.place().xMm()));
      figures.add(new Figure("seatZMm", seat.place().zMm()));
      if (!seat.id().equals("rear-middle")) {
        figures.add(new Figure("seatAsideMm", Math.abs(seat.place().yMm())));
      }
    }
    for (Tank tank : ute.fuelTanks()) {
      double litres = tank.capacityMl() / G_PER_KG;
      figures.add(new Figure("fuelL", litres));
      figures.add(new Figure("fuelKgPerL", tank.densityGPerL() / G_PER_KG));
      figures.add(new Figure("fuelTankBoxOverCapacity", volumeL(tank.box().size()) / litres));
    }
    for (RemovablePart part : ute.parts()) {
      figures.add(Figure.kg("part " + part.id() + " Kg", part.mass().massG()));
    }
    for (BaySpec bay : ute.bays()) {
      figures.add(new Figure("cabRoofBayLengthMm", bay.box().size().lengthMm()));
      figures.add(new Figure("cabRoofBayWidthMm", bay.box().size().widthMm()));
      figures.add(new Figure("cabRoofBayHeightMm", bay.box().size().heightMm()));
    }
    for (SpaceSpec space : ute.spaces()) {
      space.ratings().ifPresent(r -> figures.add(Figure.kg("cabSpaceKg", r.staticG())));
    }
    ute.ball()
        .ifPresent(
            ball -> {
              figures.add(new Figure("ballBehindRearAxleMm", ball.xMm() - ute.wheelbaseMm()));
              figures.add(new Figure("ballZMm", ball.zMm()));
            });
    ute.springHangers()
        .ifPresent(
            hangers -> {
              figures.add(
                  new Figure("springHangerAheadOfAxleMm", ute.wheelbaseMm() - hangers.frontXMm()));
              figures.add(
                  new Figure("springHangerBehindAxleMm", hangers.rearXMm() - ute.wheelbaseMm()));
            });
    return figures;
  }

  static double volumeL(SizeMm size) {
    return (double) size.lengthMm() * size.widthMm() * size.heightMm() / CUBIC_MM_PER_L;
  }

  /** Nobody aboard, tanks full, and with and without the tub. */
  private static void addKerb(Ute ute, List<Figure> figures) {
    EmptyAxleLoads empty = ute.empty();
    figures.add(Figure.kg("emptyAxleToleranceKg", empty.front().toleranceG()));
    figures.add(Figure.kg("emptyAxleToleranceKg", empty.rear().toleranceG()));
    Kerb kerb = new Kerb(ute.wheelbaseMm());
    kerb.add(empty.front().massG(), 0.0);
    kerb.add(empty.rear().massG(), ute.wheelbaseMm());
    for (EmptyAxleLoads.PersonAboard person : empty.people()) {
      Seat seat =
          ute.seats().stream()
              .filter(s -> s.id().equals(person.seatId()))
              .findFirst()
              .orElseThrow();
      kerb.add(-person.massG(), seat.place().xMm());
    }
    for (Tank tank : ute.fuelTanks()) {
      long missingMl = tank.capacityMl() - empty.fuelMl().getOrDefault(tank.id(), 0L);
      kerb.add(tank.massOfG(missingMl), middleX(tank.box().aMm(), tank.box().size()));
    }
    for (RemovablePart part : ute.parts()) {
      if (part.id().equals("tub")) {
        figures.add(Figure.kg("kerbAsPickUpKg", kerb.massG));
        kerb.add(-part.mass().massG(), (part.box().minXMm() + part.box().maxXMm()) / 2.0);
      }
    }
    figures.add(Figure.kg("kerbAsCabChassisKg", kerb.massG));
    figures.add(new Figure("frontShareWithoutBodyPercent", kerb.frontShare() * PERCENT));
  }

  private static double middleX(int frontMm, SizeMm size) {
    return frontMm + size.lengthMm() / 2.0;
  }

  private static void addLimits(Ute ute, List<Figure> figures) {
    UteLimits limits = ute.limits();
    figures.add(Figure.kg("gvmKg", limits.gvmG()));
    figures.add(Figure.kg("frontAxleKg", limits.frontAxleG()));
    figures.add(Figure.kg("rearAxleKg", limits.rearAxleG()));
    figures.add(
        Figure.kg("axleSumAboveGvmKg", limits.frontAxleG() + limits.rearAxleG() - limits.gvmG()));
    figures.add(Figure.kg("gcmKg", limits.gcmG().orElseThrow()));
    figures.add(Figure.kg("brakedTowingKg", limits.brakedTowingG().orElseThrow()));
    figures.add(Figure.kg("unbrakedTowingKg", limits.unbrakedTowingG().orElseThrow()));
    figures.add(Figure.kg("ballKg", limits.ballG().orElseThrow()));
    limits
        .cabRoof()
        .ifPresent(
            roof -> {
              figures.add(Figure.kg("cabRoofMovingKg", roof.movingG()));
              figures.add(
                  new Figure("cabRoofParkedOverMoving", (double) roof.parkedG() / roof.movingG()));
            });
    figures.add(new Figure("tyresAboveAxleLimitKg", spare(ute.frontTyres(), limits.frontAxleG())));
    figures.add(new Figure("tyresAboveAxleLimitKg", spare(ute.rearTyres(), limits.rearAxleG())));
  }

  private static double spare(TyreSet tyres, long limitG) {
    return tyres.count() * TYRE_KG.getOrDefault(tyres.loadIndex(), 0) - limitG / G_PER_KG;
  }

  /** Axle loads as masses go in and out. */
  private static final class Kerb {
    private final double wheelbaseMm;
    private long massG;
    private double momentGMm;

    Kerb(double wheelbaseMm) {
      this.wheelbaseMm = wheelbaseMm;
    }

    void add(long addedG, double xMm) {
      massG += addedG;
      momentGMm += addedG * xMm;
    }

    double frontShare() {
      return 1.0 - momentGMm / (wheelbaseMm * (double) massG);
    }
  }
}
