package kitstow.planner.advice;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Finding;
import kitstow.planner.report.Mend;
import kitstow.planner.rules.Situation;

/** What would put each broken rule of a plan right, tried before it is told. */
public final class Mends {
  private Mends() {}

  /** A mend for every finding of a broken rule, in the order of the findings. */
  public static List<Mend> of(CheckReport report) {
    Situation situation = report.situation();
    List<Mend> mends = new ArrayList<>();
    List<Finding> broken = report.brokenFindings();
    if (!broken.isEmpty()) {
      Ledger before = Ledger.of(situation);
      for (Finding finding : broken) {
        mends.add(new MendSearch(situation, before, finding).find());
      }
    }
    return mends;
  }
}
