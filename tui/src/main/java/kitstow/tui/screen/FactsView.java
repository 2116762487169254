package kitstow.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.KeepClear;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.report.Finding;
import kitstow.planner.report.LimitReading;
import kitstow.planner.statics.Margin;
import kitstow.tui.app.Things;
import kitstow.tui.app.Work;
import kitstow.tui.edit.ReachWords;
import kitstow.tui.view.Figures;
import kitstow.tui.view.FindingsText;
import kitstow.tui.view.Keys;
import kitstow.tui.view.Page;
import kitstow.tui.view.PlaceInSpace;
import kitstow.tui.view.Standing;
import kitstow.tui.view.Subjects;
import kitstow.tui.widget.Area;
import kitstow.tui.widget.Frame;
import kitstow.tui.widget.Gauge;
import kitstow.tui.widget.Ink;
import org.jspecify.annotations.Nullable;

/** What is known of the chosen thing. */
final class FactsView {
  private record Fact(String text, Ink ink) {}

  private FactsView() {}

  /** Draws the facts and returns the rows they take. */
  static int draw(Frame frame, Area area, Work work) {
    String key = work.looking().chosen();
    Optional<Item> item = Things.item(work.loading(), key);
    if (item.isEmpty()) {
      frame.text(area, 0, 0, "Nothing is chosen.", Ink.STRONG);
      frame.text(area, 0, 1, "Tab or an arrow chooses, / finds.", Ink.PLAIN);
      return 2;
    }
    List<Fact> facts = facts(work, item.get(), key);
    int row = 0;
    for (Fact fact : facts) {
      for (String line : Page.wrapped(fact.text(), Math.max(10, area.columns()))) {
        if (row < area.rows()) {
          frame.text(area, 0, row, line, fact.ink());
          row++;
        }
      }
    }
    return row;
  }

  private static List<Fact> facts(Work work, Item item, String key) {
    Subjects subjects = new Subjects(work.loading());
    List<Fact> facts = new ArrayList<>();
    String number = Keys.of(work.loading()).items().getOrDefault(key, "");
    facts.add(
        new Fact(
            (number.isEmpty() ? "" : number + "  ") + Things.name(work.loading(), key),
            Ink.STRONG));
    SizeMm size = item.shapes().get(0);
    facts.add(
        new Fact(
            Figures.near(item.mass().massG() / 1000.0, 1)
                + " kg ±"
                + Figures.loadKg(item.mass().toleranceG() / 1000.0)
                + ", "
                + size.lengthMm()
                + " x "
                + size.widthMm()
                + " x "
                + size.heightMm()
                + " mm",
            Ink.PLAIN));
    PlacedItem placed = work.loading().placed().get(key);
    if (placed == null) {
      facts.add(new Fact("at home", Ink.STRONG));
    } else {
      String where = PlaceInSpace.inWords(placed, /* onOthers= */ false);
      facts.add(
          new Fact(
              subjects.space(placed.space()) + (where.isEmpty() ? "" : "; " + where), Ink.PLAIN));
      facts.add(new Fact(Standing.inWords(placed), Ink.PLAIN));
    }
    facts.add(new Fact(wishes(item), Ink.PLAIN));
    if (work.carrying().isPresent()) {
      facts.add(legality(work, placed, key));
    }
    if (placed != null && work.judged()) {
      tightest(work, placed, subjects).ifPresent(facts::add);
      facts.addAll(findings(work, key, subjects));
    }
    return facts;
  }

  /** Whether what is carried may stand where it is held. */
  private static Fact legality(Work work, @Nullable PlacedItem placed, String key) {
    if (placed == null || !work.judged()) {
      return new Fact("carried; judging ...", Ink.STRONG);
    }
    boolean broken = false;
    for (Finding finding : work.report().get().brokenFindings()) {
      broken |= finding.subjectIds().contains(key);
    }
    if (broken) {
      return new Fact("carried; it may NOT stand here", Ink.BROKEN);
    }
    boolean heavy =
        tightest(work, placed)
            .filter(reading -> reading.margin().verdict() == Margin.Verdict.OVER)
            .isPresent();
    return heavy
        ? new Fact("carried; too heavy here", Ink.BROKEN)
        : new Fact("carried; it may stand here", Ink.WITHIN);
  }

  private static String wishes(Item item) {
    List<String> words = new ArrayList<>();
    words.add(item.need() == Need.MUST ? "MUST" : word(item.need()));
    words.add(ReachWords.of(item.reach()));
    for (KeepClear clear : item.keepClear()) {
      words.add(word(clear.kind()) + " " + clear.clearMm() + " mm");
    }
    words.add(
        item.bearsG() == 0L
            ? "nothing on top"
            : "bears " + Figures.near(item.bearsG() / 1000.0, 0) + " kg");
    item.pin().ifPresent(pin -> words.add("PINNED"));
    return String.join(", ", words);
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The tightest limit of those that this thing loads and others do not. */
  private static Optional<LimitReading> tightest(Work work, PlacedItem placed) {
    LimitReading tightest = null;
    for (LimitReading reading : work.report().get().tightest()) {
      boolean own =
          reading.subjectId().startsWith(placed.space().id())
              || placed.space().inModules().contains(reading.subjectId());
      if (own
          && (tightest == null || reading.margin().usedRatio() > tightest.margin().usedRatio())) {
        tightest = reading;
      }
    }
    return Optional.ofNullable(tightest);
  }

  private static Optional<Fact> tightest(Work work, PlacedItem placed, Subjects subjects) {
    return tightest(work, placed)
        .map(
            reading ->
                new Fact(
                    subjects.limit(reading.rule(), reading.subjectId())
                        + ": "
                        + Figures.marginKg(reading.margin().marginKg())
                        + " kg left"
                        + (reading.margin().verdict() == Margin.Verdict.ON_PAPER_ONLY
                            ? ", on paper"
                            : ""),
                    Gauge.ink(reading.margin().verdict())));
  }

  private static List<Fact> findings(Work work, String key, Subjects subjects) {
    List<Fact> facts = new ArrayList<>();
    for (Finding finding : work.report().get().findings()) {
      if (finding.subjectIds().contains(key)) {
        boolean broken = finding.severity() == Finding.Severity.BROKEN;
        facts.add(
            new Fact(
                (broken ? "BROKEN: " : "note: ") + FindingsText.sentence(finding, subjects),
                broken ? Ink.BROKEN : Ink.PLAIN));
      }
    }
    return facts;
  }
}
