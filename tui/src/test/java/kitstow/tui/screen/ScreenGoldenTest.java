package kitstow.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitstow.planner.LoadPlanner;
import kitstow.planner.advice.PlanFigures;
import kitstow.planner.report.CheckReport;
import kitstow.tui.Golden;
import kitstow.tui.Shipped;
import kitstow.tui.app.Advice;
import kitstow.tui.app.AppState;
import kitstow.tui.app.Floor;
import kitstow.tui.app.Msg;
import kitstow.tui.app.Sheet;
import kitstow.tui.app.Shelf;
import kitstow.tui.app.Size;
import kitstow.tui.app.Update;
import kitstow.tui.app.Work;
import kitstow.tui.edit.Design;
import kitstow.tui.keys.KeyName;
import kitstow.tui.keys.KeyPress;
import kitstow.tui.view.Eye;
import kitstow.tui.widget.Frame;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every page from the saved plan of the README, in three sizes, with Unicode and in ASCII. */
class ScreenGoldenTest {
  private static final KeyPress TAB = KeyPress.of(KeyName.TAB);
  private static final KeyPress ENTER = KeyPress.of(KeyName.ENTER);
  private static final PlanFigures FIGURES = LoadPlanner.figures(Shipped.REMOTE.report());

  private final List<String> lines = new ArrayList<>();

  @ParameterizedTest
  @CsvSource({
    "80, 24, false", "120, 40, false", "200, 60, false",
    "80, 24, true", "120, 40, true", "200, 60, true"
  })
  void everyPageLooksAsItDid(int columns, int rows, boolean ascii) {
    Size size = new Size(columns, rows);
    add("Shelf", shelf(size, ascii));
    AppState open = Shipped.REMOTE.opened(size, ascii);
    AppState chosen = typed(pressed(open, KeyPress.sign('/')), "fridge");
    add("Find", chosen);
    AppState begun =
        Update.apply(shelf(size, ascii), new Msg.CatalogueRead(Shipped.CATALOGUE)).state();
    add("A new scenario", typed(pressed(begun, TAB), "m"));
    AppState state = pressed(chosen, KeyPress.of(KeyName.ENTER));
    for (Eye eye : Eye.values()) {
      add(eye.title(), state);
      state = pressed(state, KeyPress.sign('v'));
    }
    add("Nearer", pressed(pressed(state, KeyPress.sign('+')), KeyPress.sign('+')));
    add("Another moment", pressed(state, KeyPress.sign(',')));
    for (Sheet sheet : Sheet.values()) {
      add(sheet.title(), pressed(state, KeyPress.sign('0' + sheet.number())));
    }
    AppState trip = pressed(state, KeyPress.sign('9'));
    add("A person", typed(pressed(pressed(trip, KeyPress.of(KeyName.ENTER)), TAB), "heavy"));
    AppState ute = pressed(state, KeyPress.sign('0'));
    AppState body = pressed(pressed(ute, KeyPress.of(KeyName.ENTER)), TAB);
    add("Tray and canopy", pressed(body, KeyPress.of(KeyName.LEFT)));
    AppState module = pressed(pressed(ute, KeyPress.of(KeyName.DOWN)), KeyPress.of(KeyName.ENTER));
    add("A module", pressed(pressed(module, TAB), TAB));
    add("From the catalogue", typed(pressed(ute, KeyPress.sign('n')), "drawer"));
    add("Beside another", compared(size, ascii));
    add("Searching", searching(open));
    add(
        "Gear from a table",
        typed(pressed(pressed(state, KeyPress.sign('8')), KeyPress.sign('i')), "gear.csv"));
    add("Keys", pressed(state, KeyPress.sign('?')));
    Golden.assertSame("screens/" + columns + "x" + rows + (ascii ? "-ascii" : "") + ".txt", lines);
  }

  private static AppState shelf(Size size, boolean ascii) {
    AppState start = AppState.start(size, ascii, Path.of("scenarios"));
    List<Shelf.Entry> entries = new ArrayList<>();
    for (int i = 1; i <= 30; i++) {
      entries.add(
          new Shelf.Entry(
              Path.of("scenarios", "trip-" + i + ".json"),
              "Trip " + i,
              "Invented. A trip to show the list with.",
              i % 3 == 0));
    }
    return pressed(
        Update.apply(start, new Msg.Listed(entries)).state(), KeyPress.of(KeyName.PAGE_DOWN));
  }

  /** The plan beside another of the same scenario, with less aboard. */
  private static AppState compared(Size size, boolean ascii) {
    AppState kept = Update.apply(Shipped.REMOTE.opened(size, ascii), new Msg.Kept(FIGURES)).state();
    AppState less = typed(pressed(typed(kept, "/fridge"), ENTER), "h");
    less = pressed(pressed(typed(pressed(typed(less, "/first-aid"), ENTER), "m"), TAB), ENTER);
    less = pressed(less, KeyPress.sign('7'));
    Design design = less.work().orElseThrow().design();
    CheckReport report = LoadPlanner.check(design.scenario(), design.plan());
    Advice advice =
        new Advice(
            report,
            LoadPlanner.packList(report),
            List.of(),
            List.of(),
            LoadPlanner.figures(report),
            Optional.empty(),
            Optional.empty());
    less = Update.apply(less, new Msg.Judged(design, report)).state();
    return Update.apply(less, new Msg.Advised(advice)).state();
  }

  /** A search that has found something, with the floor of it. */
  private static AppState searching(AppState open) {
    AppState state = pressed(open, KeyPress.sign('s'));
    int number = state.work().flatMap(Work::searching).orElseThrow().number();
    Design design = Shipped.REMOTE.design();
    state = Update.apply(state, new Msg.Better(number, design.plan(), 5_648.3, 1)).state();
    state = Update.apply(state, new Msg.Judged(design, Shipped.REMOTE.report())).state();
    state = Update.apply(state, new Msg.Ticked(number, 7.2)).state();
    return Update.apply(
            state,
            new Msg.FloorFound(
                Floor.of(state.work().orElseThrow().loading(), OptionalDouble.of(4_321.9))))
        .state();
  }

  private static AppState typed(AppState state, String text) {
    AppState now = state;
    for (int i = 0; i < text.length(); i++) {
      now = pressed(now, KeyPress.sign(text.charAt(i)));
    }
    return now;
  }

  private static AppState pressed(AppState state, KeyPress key) {
    return Update.apply(state, new Msg.Pressed(key)).state();
  }

  private void add(String title, AppState state) {
    Frame frame = View.draw(state);
    List<String> drawn = frame.lines();
    assertThat(drawn).as(title).hasSize(state.size().rows());
    for (String line : drawn) {
      assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(state.size().columns());
      if (state.ascii()) {
        assertThat(line).as(title).matches("[ -~]*");
      }
    }
    lines.add("=== " + title);
    lines.addAll(drawn);
  }
}
