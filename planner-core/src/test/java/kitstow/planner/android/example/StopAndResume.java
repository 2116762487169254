package kitstow.planner.android.example;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import kitstow.planner.json.CatalogueReader;
import kitstow.planner.json.NamedText;
import kitstow.planner.json.Outcome;
import kitstow.planner.json.PlanWriter;
import kitstow.planner.json.ScenarioReader;
import kitstow.planner.model.Scenario;
import kitstow.planner.report.CheckReport;

/** A short life of an app: it plans, is stopped, loses everything but a text, and goes on. */
public final class StopAndResume {
  private static final double HOURS = 7200.0;

  private StopAndResume() {}

  /**
   * Plans in two lives.
   *
   * @return the text kept at the end of the first life, and the plan at the end of the second
   */
  public static String[] run(String[] catalogue, String scenarioText, double seconds)
      throws InterruptedException {
    ExecutorService mainThread = Executors.newSingleThreadExecutor();
    BlockingQueue<String> events = new LinkedBlockingQueue<>();

    TripPlanning first = new TripPlanning(read(catalogue, scenarioText), mainThread);
    first.start(HOURS, better -> events.add("better"), report -> events.add("ended"));
    take(events);
    String kept = first.toKeep();
    first.close();

    TripPlanning second = new TripPlanning(read(catalogue, scenarioText), mainThread);
    second.resumeFrom(kept);
    BlockingQueue<CheckReport> reports = new LinkedBlockingQueue<>();
    second.start(seconds, better -> {}, reports::add);
    CheckReport report = take(reports);
    second.close();
    mainThread.shutdown();
    return new String[] {kept, PlanWriter.write(report.situation().loading().plan())};
  }

  private static <T> T take(BlockingQueue<T> queue) throws InterruptedException {
    T first = queue.poll(5, TimeUnit.MINUTES);
    if (first == null) {
      throw new IllegalStateException("nothing happened for five minutes");
    }
    return first;
  }

  private static Scenario read(String[] catalogue, String scenarioText) {
    List<NamedText> files = new ArrayList<>();
    for (String text : catalogue) {
      files.add(new NamedText("catalogue " + files.size(), text));
    }
    return CatalogueReader.read(files)
        .match(
            entries -> ScenarioReader.read(scenarioText, entries.value()),
            refused -> new Outcome.Refused<Scenario>(refused.report()))
        .match(
            Outcome.Read::value,
            refused -> {
              throw new IllegalArgumentException(refused.report().text());
            });
  }
}
