package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.advice.Lift;
import kitstow.planner.model.Loading;

/** Units that are more than one person should lift to their places. */
final class LiftText {
  private static final int MOST = 8;

  private LiftText() {}

  static List<String> lines(Loading loading, Subjects subjects, Page page, boolean all) {
    List<Lift> lifts = Lift.tooHeavy(loading);
    if (lifts.isEmpty()) {
      return List.of();
    }
    Table table =
        new Table()
            .rest("What")
            .figures("kg")
            .figures("to place")
            .figures("to edge")
            .figures("height mm")
            .figures("reach mm")
            .rest("Where");
    List<Lift> shown = all || lifts.size() <= MOST ? lifts : lifts.subList(0, MOST);
    for (Lift lift : shown) {
      table.row(
          subjects.item(lift.unit().key()),
          Figures.loadKg(lift.unit().item().mass().massG() / 1000.0),
          lift.placeKg() > 0.0 ? Figures.marginKg(lift.placeKg()) : "-",
          lift.edgeKg() > 0.0 ? Figures.marginKg(lift.edgeKg()) : "-",
          Figures.near(lift.heightMm(), 0),
          Figures.near(lift.reachMm(), 0),
          subjects.space(lift.unit().space()));
    }
    List<String> lines = new ArrayList<>(table.lines(page));
    if (lifts.size() > shown.size()) {
      lines.addAll(
          page.paragraph(
              "", "and " + (lifts.size() - shown.size()) + " more (check --all lists them)"));
    }
    lines.add("");
    lines.addAll(
        page.paragraph(
            "",
            "What the revised lifting equation of 1991 recommends for one person from the ground to"
                + " that place, or to the edge at that height to slide it in: feet 200 mm outside"
                + " the edge, slides pulled out, a good grip; - out of reach. Guidance, not law."
                + " Things of 10 kg or more that are heavier than that even to the edge."));
    return lines;
  }
}
