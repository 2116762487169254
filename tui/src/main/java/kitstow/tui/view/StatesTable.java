package kitstow.tui.view;

import java.util.List;
import kitstow.planner.report.StateFigures;

/** Figures of every state in whole kilograms and newton metres. */
final class StatesTable {
  private StatesTable() {}

  static List<String> lines(List<StateFigures> states, StateNames names, Page page) {
    Table table =
        new Table()
            .figures("No")
            .rest("State")
            .words("Kind")
            .figures("Total")
            .figures("Front")
            .figures("Rear")
            .figures("N·m")
            .figures("Front%")
            .figures("Side");
    for (StateFigures figures : states) {
      table.row(
          names.number(figures.state()),
          figures.state().title(),
          StateNames.kind(figures.state()),
          Figures.wholeLoadKg(figures.axles().totalKg()),
          Figures.wholeLoadKg(figures.axles().frontKg()),
          Figures.wholeLoadKg(figures.axles().rearKg()),
          Figures.near(Math.ceil(figures.moment().newtonMetres()), 0),
          Figures.near(figures.axles().frontShareRatio() * 100.0, 1),
          side(figures.sides().differenceKg()));
    }
    return table.lines(page);
  }

  /** By how much one side is heavier. */
  private static String side(double rightLessLeftKg) {
    String amount = Figures.wholeLoadKg(Math.abs(rightLessLeftKg));
    return amount.equals("0") ? "0" : (rightLessLeftKg > 0.0 ? "R " : "L ") + amount;
  }
}
