package kitstow.tui.app;

import java.util.List;
import java.util.Optional;
import kitstow.planner.advice.PackList;
import kitstow.planner.advice.PlanFigures;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.HomeReason;
import kitstow.planner.report.Lever;
import kitstow.planner.report.Mend;
import kitstow.planner.report.SpaceRoom;

/**
 * What follows from a report.
 *
 * @param report the report
 * @param pack pack list
 * @param home reasons for what stays home
 * @param room room left
 * @param figures figures to set beside others
 * @param mends what would put right what is broken; none until it has been tried out
 * @param levers what would take load off the tightest limit; none until it has been tried out
 */
public record Advice(
    CheckReport report,
    PackList pack,
    List<HomeReason> home,
    List<SpaceRoom> room,
    PlanFigures figures,
    Optional<List<Mend>> mends,
    Optional<List<Lever>> levers) {
  /** Copies its collections. */
  public Advice {
    home = List.copyOf(home);
    room = List.copyOf(room);
    mends = mends.map(List::copyOf);
    levers = levers.map(List::copyOf);
  }

  /** With what would put things right. */
  public Advice withMends(List<Mend> found) {
    return new Advice(report, pack, home, room, figures, Optional.of(found), levers);
  }

  /** With what would take load off the tightest limit. */
  public Advice withLevers(List<Lever> found) {
    return new Advice(report, pack, home, room, figures, mends, Optional.of(found));
  }
}
