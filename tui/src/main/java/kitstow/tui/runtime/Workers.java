package kitstow.tui.runtime;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import kitstow.planner.LoadPlanner;
import kitstow.planner.model.Item;
import kitstow.planner.report.CheckReport;
import kitstow.planner.statics.Bound;
import kitstow.tui.app.Advice;
import kitstow.tui.app.Effect;
import kitstow.tui.app.Floor;
import kitstow.tui.app.Msg;
import kitstow.tui.app.Source;
import kitstow.tui.edit.Design;

/** Does what updates ask for, each kind on a thread of its own, and tells what came of it. */
final class Workers implements Effect.Doer, AutoCloseable {
  /** A search brings new loads faster than floors can be found: a passing one gets none. */
  private static final Duration CALM = Duration.ofMillis(600);

  private final Consumer<Msg> tell;
  private final Consumer<Throwable> fault;
  private final ScenarioFiles files;
  private final Runnable end;
  private final Latest<Design> judge;
  private final Latest<CheckReport> advise;
  private final Latest<CheckReport> floor;
  private final Latest<Path> lister;
  private final Latest<Path> opener;
  private final Latest<Runnable> reader;
  private final Latest<Runnable> keeper;
  private final Searcher searcher;

  Workers(ScenarioFiles files, Consumer<Msg> tell, Consumer<Throwable> fault, Runnable end) {
    this.files = files;
    this.tell = tell;
    this.fault = fault;
    this.end = end;
    this.judge = new Latest<>("judge", guarded(this::judgeNow));
    this.advise = new Latest<>("advise", guarded(this::adviseNow));
    this.floor = new Latest<>("floor", guarded(this::floorNow), CALM);
    this.lister = new Latest<>("list", guarded(this::listNow));
    this.opener = new Latest<>("open", guarded(this::openNow));
    this.reader = new Latest<>("read", guarded(Runnable::run));
    this.keeper = new Latest<>("keep", guarded(Runnable::run));
    this.searcher = new Searcher(tell, fault);
  }

  /** Faults of ours on a worker's thread must not get lost. */
  private <T> Consumer<T> guarded(Consumer<T> work) {
    return what -> {
      try {
        work.accept(what);
      } catch (RuntimeException | Error e) {
        fault.accept(e);
      }
    };
  }

  private void judgeNow(Design design) {
    tell.accept(new Msg.Judged(design, LoadPlanner.check(design.scenario(), design.plan())));
  }

  private void adviseNow(CheckReport report) {
    Advice advice =
        new Advice(
            report,
            LoadPlanner.packList(report),
            LoadPlanner.homeReasons(report),
            LoadPlanner.roomLeft(report),
            LoadPlanner.figures(report),
            Optional.empty(),
            Optional.empty());
    tell.accept(new Msg.Advised(advice));
    Advice mended = advice.withMends(LoadPlanner.mends(report));
    tell.accept(new Msg.Advised(mended));
    tell.accept(new Msg.Advised(mended.withLevers(LoadPlanner.levers(report))));
  }

  private void listNow(Path folder) {
    tell.accept(new Msg.Listed(ScenarioFiles.list(folder)));
  }

  private void openNow(Path file) {
    tell.accept(files.open(file));
  }

  @Override
  public void list(Path folder) {
    lister.ask(folder);
  }

  @Override
  public void open(Path file) {
    opener.ask(file);
  }

  @Override
  public void catalogue(Path folder) {
    reader.ask(() -> tell.accept(files.catalogue(folder)));
  }

  @Override
  public void gear(String file, Source source, List<Item> known) {
    reader.ask(() -> tell.accept(ScenarioFiles.gear(file, source, known)));
  }

  @Override
  public void judge(Design design) {
    judge.ask(design);
  }

  @Override
  public void advise(CheckReport report) {
    advise.ask(report);
  }

  @Override
  public void keepColumn(CheckReport report) {
    reader.ask(() -> tell.accept(new Msg.Kept(LoadPlanner.figures(report))));
  }

  @Override
  public void floor(CheckReport report) {
    floor.ask(report);
  }

  private void floorNow(CheckReport report) {
    Optional<Bound> bound = LoadPlanner.bound(report);
    OptionalDouble momentNm =
        bound.map(one -> OptionalDouble.of(one.floorNm())).orElse(OptionalDouble.empty());
    tell.accept(new Msg.FloorFound(Floor.of(report.situation().loading(), momentNm)));
  }

  @Override
  public void search(int number, Design design, double seconds, boolean fromNothing) {
    searcher.search(number, design, seconds, fromNothing);
  }

  @Override
  public void stopSearch() {
    searcher.stop();
  }

  @Override
  public void save(Source source, Design design, boolean scenarioChanged) {
    tell.accept(DesignFiles.save(source, design, scenarioChanged));
  }

  @Override
  public void keepSafe(Source source, Design design) {
    keeper.ask(() -> Recovery.keep(source, design));
  }

  @Override
  public void forget(Source source) {
    keeper.finish();
    Recovery.forget(source);
  }

  @Override
  public void end() {
    end.run();
  }

  @Override
  public void close() {
    judge.close();
    advise.close();
    floor.close();
    lister.close();
    opener.close();
    reader.close();
    keeper.close();
    searcher.close();
  }
}
