package kitstow.tui.app;

import java.util.List;
import kitstow.planner.advice.PackList;
import kitstow.planner.advice.PlanFigures;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.HomeReason;
import kitstow.planner.report.SpaceRoom;

/**
 * What follows from a report.
 *
 * @param report the report
 * @param pack pack list
 * @param home reasons for what stays home
 * @param room room left
 * @param figures figures to set beside others
 */
public record Advice(
    CheckReport report,
    PackList pack,
    List<HomeReason> home,
    List<SpaceRoom> room,
    PlanFigures figures) {
  /** Copies its collections. */
  public Advice {
    home = List.copyOf(home);
    room = List.copyOf(room);
  }
}
