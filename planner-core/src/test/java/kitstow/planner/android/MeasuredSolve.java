package kitstow.planner.android;

import com.sun.management.GarbageCollectionNotificationInfo;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryUsage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.atomic.AtomicLong;
import javax.management.NotificationEmitter;
import javax.management.openmbean.CompositeData;
import kitstow.planner.json.PlanWriter;
import kitstow.planner.solver.PlanSearch;

/** One search in a virtual machine of its own, measured from inside. */
final class MeasuredSolve {
  private final Map<Long, Long> allocatedByThread = new HashMap<>();
  private final AtomicLong afterCollection = new AtomicLong();
  private final AtomicLong beforeCollection = new AtomicLong();

  private MeasuredSolve() {}

  /**
   * Searches and writes what it found and took.
   *
   * @param args seed, steps or 0, seconds or 0, file to write to
   */
  public static void main(String[] args) throws IOException {
    Properties figures =
        new MeasuredSolve()
            .solve(
                new PlanSearch.Request(
                    OneSolve.scenario(Texts.catalogue(), Texts.scenario("remote-fortnight")),
                    Long.parseLong(args[0]),
                    Long.parseLong(args[1]),
                    Double.parseDouble(args[2]),
                    /* threads= */ 1));
    try (OutputStream out = Files.newOutputStream(Path.of(args[3]))) {
      figures.store(out, null);
    }
  }

  private Properties solve(PlanSearch.Request request) {
    watchCollections();
    long start = System.nanoTime();
    PlanSearch.Best best = PlanSearch.solve(request, better -> {}, this::lookAtThreads);
    double seconds = (System.nanoTime() - start) * 1.0e-9;
    lookAtThreads();
    Properties figures = new Properties();
    figures.setProperty("plan", PlanWriter.write(best.plan()));
    figures.setProperty("momentNm", Double.toString(best.momentNm()));
    figures.setProperty("unitsHome", Integer.toString(best.unitsHome()));
    figures.setProperty("seconds", Double.toString(seconds));
    figures.setProperty("afterCollection", Long.toString(afterCollection.get()));
    figures.setProperty("beforeCollection", Long.toString(beforeCollection.get()));
    long allocated = allocatedByThread.values().stream().mapToLong(Long::longValue).sum();
    figures.setProperty("allocated", Long.toString(allocated));
    return figures;
  }

  /**
   * Asked many times while searching; so what a thread that has ended allocated is known nearly.
   */
  private boolean lookAtThreads() {
    com.sun.management.ThreadMXBean threads =
        (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    long[] ids = threads.getAllThreadIds();
    long[] bytes = threads.getThreadAllocatedBytes(ids);
    for (int i = 0; i < ids.length; i++) {
      allocatedByThread.merge(ids[i], bytes[i], Math::max);
    }
    return false;
  }

  private void watchCollections() {
    for (GarbageCollectorMXBean collector : ManagementFactory.getGarbageCollectorMXBeans()) {
      ((NotificationEmitter) collector)
          .addNotificationListener(
              (notification, handback) -> {
                var memory =
                    GarbageCollectionNotificationInfo.from(
                            (CompositeData) notification.getUserData())
                        .getGcInfo();
                beforeCollection.accumulateAndGet(heap(memory.getMemoryUsageBeforeGc()), Math::max);
                afterCollection.accumulateAndGet(heap(memory.getMemoryUsageAfterGc()), Math::max);
              },
              null,
              null);
    }
  }

  private static long heap(Map<String, MemoryUsage> usageByPool) {
    long used = 0L;
    for (Map.Entry<String, MemoryUsage> pool : usageByPool.entrySet()) {
      boolean ofHeap =
          !pool.getKey().startsWith("Code")
              && !pool.getKey().contains("etaspace")
              && !pool.getKey().contains("Compressed Class");
      used += ofHeap ? pool.getValue().getUsed() : 0L;
    }
    return used;
  }
}
