package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import kitstow.planner.advice.PlanFigures;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Canopy;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.RuleId;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;
import kitstow.planner.report.SpaceRoom;
import kitstow.planner.report.StateFigures;
import kitstow.planner.statics.Margin;

/** Plans side by side, a column for each. */
public final class CompareText {
  /** Columns that fit a page. */
  public static final int MOST_COLUMNS = 4;

  private static final int MOST_TITLES = 6;

  /** Beside the best figure of a row. */
  private static final String MARK = " <<";

  /** Figures nearer than this are alike; they are shown with one decimal at most. */
  private static final double ALIKE = 0.05;

  /** Stands for a figure that there is none of. */
  private static final double UNKNOWN = -1.0e12;

  private final List<Column> columns;
  private final Page page;

  /**
   * A plan in a column.
   *
   * @param title heading of the column
   * @param figures its figures
   * @param kind what the column is beside columns of another kind, "" for a trip as it is; only
   *     columns of one kind can be better than each other
   */
  public record Column(String title, PlanFigures figures, String kind) {
    /** A trip as it is. */
    public Column(String title, PlanFigures figures) {
      this(title, figures, "");
    }

    private boolean isLike(Column other) {
      return kind.equals(other.kind);
    }

    private Subjects subjects() {
      return new Subjects(loading());
    }

    Loading loading() {
      return figures.report().situation().loading();
    }
  }

  /** Columns on a page. */
  public CompareText(List<Column> columns, Page page) {
    this.columns = List.copyOf(columns);
    this.page = page;
  }

  /** The whole comparison, one line for each line of text. */
  public List<String> lines() {
    Table table = new Table().rest("");
    for (Column column : columns) {
      table.rest(column.title());
    }
    row(table, "Canopy", CompareText::canopy);
    best(
        table,
        "Answer",
        column -> Answer.inBrief(column.figures().report()),
        column -> answer(column.figures().report()));
    row(table, "Tightest limit", CompareText::tightest);
    row(table, "Runs out", CompareText::runsOut);
    row(table, "Modules", CompareText::modules);
    best(
        table,
        "Units aboard",
        column -> String.valueOf(column.loading().placed().size()),
        column -> column.loading().placed().size());
    best(
        table,
        "Units at home",
        column -> String.valueOf(column.loading().home().size()),
        column -> -column.loading().home().size());
    row(table, "Stays home", CompareText::home);
    row(
        table,
        "Must, at home",
        column -> {
          List<String> must = column.figures().mustHome();
          return must.isEmpty() ? "none" : String.join("; ", must);
        });
    row(table, "Gear, litres", column -> litres(column.figures().usedMl()));
    best(
        table,
        "Free, litres",
        column -> litres(column.figures().freeMl()),
        column -> column.figures().freeMl());
    row(table, "Largest gap", CompareText::gap);
    best(
        table,
        "kg left to the GVM",
        column ->
            column
                .figures()
                .gvm()
                .map(reading -> Figures.marginKg(reading.margin().marginKg()))
                .orElse("not rated"),
        column ->
            column.figures().gvm().map(reading -> reading.margin().marginKg()).orElse(UNKNOWN));
    best(
        table,
        "Most kg more in one space",
        CompareText::most,
        column ->
            column
                .figures()
                .most()
                .flatMap(room -> room.left().map(SpaceRoom.Left::kg))
                .orElse(UNKNOWN));
    row(
        table,
        "Total, kg *",
        column -> worst(column, one -> (double) one.axles().totalG() / 1000.0));
    row(table, "Front axle, kg *", column -> worst(column, one -> one.axles().frontKg()));
    best(
        table,
        "Rear axle, kg *",
        column -> worst(column, one -> one.axles().rearKg()),
        column -> column.figures().worst().map(one -> -one.axles().rearKg()).orElse(UNKNOWN));
    best(
        table,
        "Rear overhang moment, N·m",
        column ->
            column
                .figures()
                .report()
                .worstMoment()
                .map(one -> Figures.near(Math.ceil(one.moment().newtonMetres()), 0))
                .orElse("-"),
        column ->
            column
                .figures()
                .report()
                .worstMoment()
                .map(one -> -one.moment().newtonMetres())
                .orElse(UNKNOWN));
    List<String> lines = new ArrayList<>(table.lines(page));
    lines.add("");
    if (columns.size() > 1) {
      lines.addAll(
          page.paragraph(
              MARK.strip() + " ", "the best of its row, where columns of one kind are not alike."));
    }
    lines.addAll(
        page.paragraph(
            "* ",
            "in the moving state with the largest rear axle load. Loads rounded up, what is left"
                + " down. Largest gap: along x across x up, mm, roofs and cab left out. The moment"
                + " is that of the worst moving state: an index to compare plans with."));
    return lines;
  }

  /** A row in which the best is marked, where the columns are not alike. */
  private void best(
      Table table, String title, Function<Column, String> cell, ToDoubleFunction<Column> good) {
    row(table, title, column -> cell.apply(column) + (isBest(column, good) ? MARK : ""));
  }

  private boolean isBest(Column column, ToDoubleFunction<Column> good) {
    List<Column> alike = columns.stream().filter(column::isLike).toList();
    double best = alike.stream().mapToDouble(good).max().orElse(UNKNOWN);
    double worst = alike.stream().mapToDouble(good).min().orElse(UNKNOWN);
    return best - worst > ALIKE && best - good.applyAsDouble(column) <= ALIKE;
  }

  /** Higher is better. */
  private static double answer(CheckReport report) {
    if (report.broken()) {
      return 0.0;
    }
    return report.verdict().kind() == Margin.Verdict.WITHIN ? 2.0 : 1.0;
  }

  private void row(Table table, String title, Function<Column, String> cell) {
    List<String> cells = new ArrayList<>(List.of(title));
    columns.forEach(column -> cells.add(cell.apply(column)));
    table.row(cells.toArray(new String[0]));
  }

  private static String tightest(Column column) {
    List<LimitReading> tightest = column.figures().report().tightest();
    if (tightest.isEmpty()) {
      return "none applies";
    }
    LimitReading first = tightest.get(0);
    return column.subjects().limit(first.rule(), first.subjectId())
        + ": "
        + Figures.marginKg(first.margin().marginKg())
        + " kg of "
        + Figures.near(first.margin().limitKg(), 1);
  }

  private static String runsOut(Column column) {
    String out = Answer.shortOf(column.figures().report());
    return out.isEmpty() ? "nothing" : out;
  }

  /** How many modules are fitted, and which are left out. */
  private static String modules(Column column) {
    Subjects subjects = column.subjects();
    List<String> left = new ArrayList<>();
    for (ModuleChoice choice : HomeText.modulesLeftOut(column.loading())) {
      left.add(subjects.any(choice.module().id()));
    }
    int all = column.loading().scenario().modules().size();
    return (all - left.size())
        + " of "
        + all
        + (left.isEmpty() ? "" : "; left out: " + String.join("; ", left));
  }

  private static String litres(long ml) {
    return Figures.near(Math.floor(ml / 1000.0), 0);
  }

  private static String gap(Column column) {
    return column
        .figures()
        .largestGap()
        .map(room -> room.largestGap().map(CompareText::size).orElse("none") + in(column, room))
        .orElse("none");
  }

  private static String size(BoxMm box) {
    return box.lengthMm() + " x " + box.widthMm() + " x " + box.heightMm();
  }

  private static String in(Column column, SpaceRoom room) {
    return ", " + column.subjects().space(room.space());
  }

  private static String most(Column column) {
    return column
        .figures()
        .most()
        .flatMap(room -> room.left().map(left -> most(column, room, left)))
        .orElse("none");
  }

  private static String most(Column column, SpaceRoom room, SpaceRoom.Left left) {
    boolean own = left.rule() == RuleId.SPACE_RATING && left.subjectId().equals(room.space().id());
    return Figures.marginKg(left.kg())
        + in(column, room)
        + ", before "
        + (own ? "its rating" : column.subjects().limit(left.rule(), left.subjectId()));
  }

  private static String canopy(Column column) {
    return column.loading().scenario().canopy().map(Canopy::title).orElse("none");
  }

  private static String home(Column column) {
    List<String> titles = new ArrayList<>();
    Loading loading = column.loading();
    for (Item item : loading.scenario().items()) {
      int units = HomeText.unitsHome(loading, item);
      if (units > 0) {
        titles.add((units > 1 ? units + " x " : "") + item.title());
      }
    }
    if (titles.size() > MOST_TITLES) {
      int more = titles.size() - MOST_TITLES;
      return String.join("; ", titles.subList(0, MOST_TITLES)) + " and " + more + " more";
    }
    return titles.isEmpty() ? "nothing" : String.join("; ", titles);
  }

  private static String worst(Column column, Function<StateFigures, Double> figure) {
    return column.figures().worst().map(one -> Figures.loadKg(figure.apply(one))).orElse("-");
  }
}
