package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Zone;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.SpaceRoom;
import kitstow.planner.report.StateFigures;

/**
 * The figures by which one plan is set beside another.
 *
 * @param report the report they are taken from
 * @param mustHome titles of what must come along and stays home
 * @param usedMl volume of the gear aboard, millilitres
 * @param freeMl volume left in all spaces, millilitres
 * @param largestGap the largest empty box in a space under cover or on the tray, with the space
 * @param most the space that takes most more mass, if any takes any
 * @param gvm tightest reading of the total mass, if it is limited
 * @param worst the moving state with the largest rear axle load
 */
public record PlanFigures(
    CheckReport report,
    List<String> mustHome,
    long usedMl,
    long freeMl,
    Optional<SpaceRoom> largestGap,
    Optional<SpaceRoom> most,
    Optional<LimitReading> gvm,
    Optional<StateFigures> worst) {
  /** Copies its collections. */
  public PlanFigures {
    mustHome = List.copyOf(mustHome);
  }

  /** Takes the figures of a report. */
  public static PlanFigures of(CheckReport report) {
    Loading loading = report.situation().loading();
    long usedMl = 0L;
    for (PlacedItem item : loading.placed().values()) {
      usedMl += Gaps.volumeMm3(item.box()) / 1000L;
    }
    long freeMl = 0L;
    SpaceRoom gap = null;
    SpaceRoom most = null;
    for (SpaceRoom room : RoomLeft.of(report.situation())) {
      freeMl += room.freeMl();
      if (inside(room) && (gap == null || gapMm3(room) > gapMm3(gap))) {
        gap = room;
      }
      if (leftKg(room) > 0.0 && (most == null || leftKg(room) > leftKg(most))) {
        most = room;
      }
    }
    LimitReading gvm = null;
    for (LimitReading reading : report.tightest()) {
      gvm = reading.rule() == RuleId.GVM_LIMIT ? reading : gvm;
    }
    StateFigures worst = null;
    for (StateFigures figures : report.states()) {
      if (figures.moving()
          && (worst == null || figures.axles().rearKg() > worst.axles().rearKg())) {
        worst = figures;
      }
    }
    return new PlanFigures(
        report,
        mustHome(loading),
        usedMl,
        freeMl,
        Optional.ofNullable(gap),
        Optional.ofNullable(most),
        Optional.ofNullable(gvm),
        Optional.ofNullable(worst));
  }

  /** The same scenario with nothing on the tow ball. */
  public static Scenario withoutTrailer(Scenario scenario) {
    return WithoutTrailer.of(scenario);
  }

  /** The same rig on a day at work. */
  public static Scenario workDay(Scenario scenario) {
    return WorkDay.scenario(scenario);
  }

  /** What is aboard on a day at work. */
  public static LoadPlan workDay(Loading loading) {
    return WorkDay.plan(loading);
  }

  private static List<String> mustHome(Loading loading) {
    List<String> must = new ArrayList<>();
    for (Item item : loading.scenario().items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        if (item.need() == Need.MUST && loading.home().contains(item.keyOf(unit))) {
          must.add(item.title() + (item.quantity() > 1 ? " " + unit : ""));
        }
      }
    }
    return must;
  }

  private static boolean inside(SpaceRoom room) {
    Zone zone = room.space().zone();
    return switch (zone) {
      case CAB, CAB_ROOF, CANOPY_ROOF -> false;
      case TRAY, UNDER_TRAY, CANOPY, REAR_CARRIER -> room.largestGap().isPresent();
    };
  }

  private static long gapMm3(SpaceRoom room) {
    return room.largestGap().map((BoxMm box) -> Gaps.volumeMm3(box)).orElse(0L);
  }

  private static double leftKg(SpaceRoom room) {
    return room.left().map(SpaceRoom.Left::kg).orElse(0.0);
  }
}
