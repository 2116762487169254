package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;
import kitstow.planner.model.MassSource;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.MassTrust;
import kitstow.planner.report.StateFigures;
import kitstow.planner.report.WeighFirst;

/** How far the masses can be trusted, and what to weigh first. */
final class TrustText {
  private static final int MOST_DOUBTS = 5;

  private TrustText() {}

  static List<String> lines(CheckReport report, StateNames names, Page page) {
    Optional<StateFigures> heaviest = heaviestMoving(report);
    if (heaviest.isEmpty()) {
      return List.of();
    }
    LoadState state = heaviest.get().state();
    double totalKg = heaviest.get().axles().totalKg();
    MassTrust trust = MassTrust.of(report.situation().loading(), state);
    List<String> parts = new ArrayList<>();
    for (MassSource source : MassSource.values()) {
      long massG = trust.gramsBySource().getOrDefault(source, 0L);
      parts.add(part(word(source), massG, totalKg));
    }
    parts.add(part("in tanks, by volume", trust.byVolumeG(), totalKg));
    List<String> lines =
        new ArrayList<>(
            page.paragraph(
                "",
                "Of the "
                    + Figures.loadKg(totalKg)
                    + " kg moving in "
                    + names.named(state.id())
                    + ": "
                    + String.join("; ", parts)
                    + "."));
    List<String> doubts = new ArrayList<>();
    for (MassTrust.Doubt doubt : trust.doubts()) {
      if (doubts.size() < MOST_DOUBTS && doubt.kg() > 0.0) {
        doubts.add(
            doubt.title()
                + (doubt.bodies() > 1 ? " (" + doubt.bodies() + ")" : "")
                + " ±"
                + Figures.loadKg(doubt.kg()));
      }
    }
    if (!doubts.isEmpty()) {
      lines.addAll(page.paragraph("Weigh first: ", String.join("; ", doubts) + " kg."));
    }
    report.verdict().tightest().ifPresent(reading -> lines.addAll(tightest(report, reading, page)));
    return lines;
  }

  private static List<String> tightest(CheckReport report, LimitReading reading, Page page) {
    Loading loading = report.situation().loading();
    String limit = new Subjects(loading).limit(reading.rule(), reading.subjectId());
    return WeighFirst.of(loading, reading)
        .map(
            one ->
                page.paragraph(
                    "",
                    "The tightest margin, "
                        + limit
                        + " with "
                        + Figures.marginKg(reading.margin().marginKg())
                        + " kg, narrows most by one weighing of "
                        + one.title()
                        + (one.bodyKeys().size() > 1 ? " (" + one.bodyKeys().size() + ")" : "")
                        + ": from ±"
                        + Figures.loadKg(one.bandKg())
                        + " to ±"
                        + Figures.loadKg(one.thenKg())
                        + " kg, if the scale is right to 1 %."))
        .orElse(List.of());
  }

  /** The moving state with the largest total. */
  static Optional<StateFigures> heaviestMoving(CheckReport report) {
    StateFigures heaviest = null;
    for (StateFigures figures : report.states()) {
      if (figures.moving()
          && (heaviest == null || figures.axles().totalG() > heaviest.axles().totalG())) {
        heaviest = figures;
      }
    }
    return Optional.ofNullable(heaviest);
  }

  private static String part(String word, long massG, double totalKg) {
    double kg = massG / 1000.0;
    double percent = totalKg > 0.0 ? kg / totalKg * 100.0 : 0.0;
    return word + " " + Figures.near(kg, 1) + " kg (" + Figures.near(percent, 0) + " %)";
  }

  private static String word(MassSource source) {
    return source.name().toLowerCase(Locale.ROOT);
  }
}
