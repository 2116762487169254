package kitstow.planner.solver;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Scanner;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Environment;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.OtherSettings;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How full the search packs one container with boxes of a few kinds, every base fully supported:
 * the first instances of thpack1 to 4 (Bischoff and Ratcliff 1995) and thpack8 (Loh and Nee 1992),
 * OR-Library (Beasley 1990). Give the folder that holds them with {@code -Dkitstow.data=DIR}.
 */
@Tag("thpack")
class ThpackBench {
  private static final int[] CLASSES = {1, 2, 3, 4, 8};
  private static final int INSTANCES = 10;
  private static final double[] SECONDS = {1.0, 10.0};
  private static final int MM_PER_CM = 10;

  private record Kind(SizeMm sizeCm, Set<Turn> turns, int count) {}

  private record Instance(SizeMm containerCm, List<Kind> kinds) {}

  @Test
  void containersAreFilled() throws IOException {
    String folder = System.getProperty("kitstow.data", "");
    if (folder.isEmpty()) {
      System.out.println("thpack skipped: give the folder of the data with -Dkitstow.data=DIR");
    }
    assumeThat(folder).isNotEmpty();

    System.out.println("| Class | instances | 1 s: mean % | worst | 10 s: mean % | worst |");
    System.out.println("|---|---|---|---|---|---|");
    double sum = 0.0;
    for (int number : CLASSES) {
      List<double[]> filled = new ArrayList<>();
      for (Instance instance : read(Path.of(folder), number)) {
        filled.add(solve(instance));
      }
      StringBuilder row = new StringBuilder("| thpack" + number + " | " + filled.size());
      for (int i = 0; i < SECONDS.length; i++) {
        int at = i;
        double mean = filled.stream().mapToDouble(one -> one[at]).average().orElse(0.0);
        double worst = filled.stream().mapToDouble(one -> one[at]).min().orElse(0.0);
        row.append(String.format(Locale.ROOT, " | %.1f | %.1f", mean, worst));
        sum += at == SECONDS.length - 1 ? mean : 0.0;
      }
      System.out.println(row + " |");
      assertThat(filled).hasSize(INSTANCES).allMatch(one -> one[SECONDS.length - 1] > 0.0);
    }
    System.out.printf(Locale.ROOT, "thpack mean %.1f %%%n", sum / CLASSES.length);
  }

  private static double[] solve(Instance instance) {
    Scenario scenario = scenario(instance);
    TimedSearch search = TimedSearch.of(scenario, /* seed= */ 1L, SECONDS[SECONDS.length - 1]);
    double[] percent = new double[SECONDS.length];
    for (int i = 0; i < percent.length; i++) {
      percent[i] =
          search.at(SECONDS[i]).map(plan -> percentFilled(instance, scenario, plan)).orElse(0.0);
    }
    return percent;
  }

  /** Volume of what is in the container, as a share of the container; the plan is audited. */
  private static double percentFilled(Instance instance, Scenario scenario, LoadPlan plan) {
    AssertedSearch.judged(scenario, plan);
    double volume = 0.0;
    for (PlacedItem item : Loading.of(scenario, plan).placed().values()) {
      volume += (double) item.box().lengthMm() * item.box().widthMm() * item.box().heightMm();
    }
    SizeMm room = mm(instance.containerCm());
    return 100.0 * volume / ((double) room.lengthMm() * room.widthMm() * room.heightMm());
  }

  /** A space high above a very long ute, so that neither axles nor the canopy matter. */
  private static Scenario scenario(Instance instance) {
    RigBuilder rig =
        RigBuilder.aBareDualCab()
            .settings(OtherSettings.withSupportPermille(1000))
            .ute(ute -> ute.wheelbaseMm(20_000))
            .uteSpace(
                aSpace("container", 0, 0, 3000, mm(instance.containerCm()))
                    .zone(Zone.CAB)
                    .environment(Environment.OPEN_AIR));
    int number = 0;
    for (Kind kind : instance.kinds()) {
      SizeMm size = mm(kind.sizeCm());
      Turn[] turns = kind.turns().toArray(new Turn[0]);
      rig.items(
          anItem("kind-" + number++)
              .size(size.lengthMm(), size.widthMm(), size.heightMm())
              .massG(1L)
              .bearsG(Masses.kg(10))
              .turns(turns[0], turns)
              .quantity(kind.count())
              .value((int) kind.sizeCm().volumeMm3()));
    }
    return rig.scenario();
  }

  private static SizeMm mm(SizeMm cm) {
    return new SizeMm(
        MM_PER_CM * cm.lengthMm(), MM_PER_CM * cm.widthMm(), MM_PER_CM * cm.heightMm());
  }

  /** Format: OR-Library, page "Container loading"; thpack8 has no seed beside the number. */
  private static List<Instance> read(Path folder, int number) throws IOException {
    String name = "thpack" + number + ".txt";
    Path nested = folder.resolve("thpack").resolve(name);
    Path file = Files.exists(nested) ? nested : folder.resolve(name);
    List<Instance> instances = new ArrayList<>();
    try (Scanner in = new Scanner(Files.readString(file))) {
      in.nextInt();
      while (instances.size() < INSTANCES) {
        in.nextInt();
        if (number != 8) {
          in.nextInt();
        }
        SizeMm container = new SizeMm(in.nextInt(), in.nextInt(), in.nextInt());
        int kinds = in.nextInt();
        List<Kind> list = new ArrayList<>();
        for (int i = 0; i < kinds; i++) {
          list.add(kind(in));
        }
        instances.add(new Instance(container, list));
      }
    }
    return instances;
  }

  /** A flag of 1 says that the dimension before it may stand upright. */
  private static Kind kind(Scanner in) {
    in.nextInt();
    int length = in.nextInt();
    boolean lengthUp = in.nextInt() == 1;
    int width = in.nextInt();
    boolean widthUp = in.nextInt() == 1;
    int height = in.nextInt();
    boolean heightUp = in.nextInt() == 1;
    Set<Turn> turns = EnumSet.noneOf(Turn.class);
    if (lengthUp) {
      Collections.addAll(turns, Turn.WHL, Turn.HWL);
    }
    if (widthUp) {
      Collections.addAll(turns, Turn.LHW, Turn.HLW);
    }
    if (heightUp) {
      Collections.addAll(turns, Turn.LWH, Turn.WLH);
    }
    return new Kind(new SizeMm(length, width, height), new TreeSet<>(turns), in.nextInt());
  }
}
