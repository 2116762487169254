package kitstow.planner.generated;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Environment;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Zone;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;

/**
 * A rig with a very good plan that is known because it came first: all room before a plane across
 * the vehicle is cut into boxes, the densest lie foremost, and limits leave room to spare. All
 * invented.
 *
 * @param scenario the rig and the boxes as gear
 * @param plan the boxes where they were cut
 */
public record PlantedRig(Scenario scenario, LoadPlan plan) {
  private static final int LEAST_EDGE_MM = 90;
  private static final double TOTAL_KG = 180.0;
  private static final Turn[] ALL = EnumSet.allOf(Turn.class).toArray(new Turn[0]);

  /** A space: its foremost, left, lowest corner in the frame of the ute, and its size. */
  private record Bin(String id, int xMm, int yMm, int zMm, SizeMm size) {}

  /** A box that was cut out, within its space. */
  private record Piece(Bin bin, int xMm, int yMm, int zMm, SizeMm size) {
    int doubledCentreXMm() {
      return 2 * (bin.xMm() + xMm) + size.lengthMm();
    }

    double litres() {
      return size.volumeMm3() / 1.0e6;
    }
  }

  /** Four of them across the rear axle line, which lies 3000 mm back; the last above the others. */
  private static final List<Bin> BINS =
      List.of(
          new Bin("left", 2600, -900, 2000, new SizeMm(1400, 600, 700)),
          new Bin("middle", 2650, -300, 2000, new SizeMm(1350, 600, 600)),
          new Bin("right", 2800, 300, 2000, new SizeMm(1200, 600, 800)),
          new Bin("upper", 2700, -900, 2800, new SizeMm(1300, 1800, 350)));

  private static final int FOREMOST_MM = 2600;
  private static final int LENGTH_MM = 1400;

  /**
   * A planted rig.
   *
   * @param boxes number of boxes in all, a multiple of four
   * @param fill how far back the plane lies before which all room is cut into boxes, as a share of
   *     the longest space
   */
  public static PlantedRig of(int boxes, double fill, long seed) {
    Random random = new Random(seed);
    List<Piece> pieces = new ArrayList<>();
    for (Bin bin : BINS) {
      pieces.addAll(cut(bin, boxes / BINS.size(), fill, random));
    }
    pieces.sort(Comparator.comparingInt(Piece::doubledCentreXMm));
    List<Double> densities = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      densities.add(0.1 + random.nextDouble());
    }
    densities.sort(Comparator.reverseOrder());
    double sum = 0.0;
    for (int i = 0; i < pieces.size(); i++) {
      sum += densities.get(i) * pieces.get(i).litres();
    }
    RigBuilder rig =
        RigBuilder.aBareDualCab().person("driver", Masses.kg(80), "driver").roadDay(10.0);
    for (Bin bin : BINS) {
      rig.uteSpace(
          aSpace(bin.id(), bin.xMm(), bin.yMm(), bin.zMm(), bin.size())
              .zone(Zone.CAB)
              .environment(Environment.OPEN_AIR));
    }
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      double kg = densities.get(i) * piece.litres() / sum * TOTAL_KG;
      rig.items(
          anItem("box-" + i)
              .size(piece.size().lengthMm(), piece.size().widthMm(), piece.size().heightMm())
              .turns(ALL[0], ALL)
              .massG(Math.max(1L, Math.round(kg * 1000.0)))
              .bearsG(Masses.kg(500)));
      rig.put("box-" + i, piece.bin().id(), piece.xMm(), piece.yMm(), piece.zMm());
    }
    return new PlantedRig(rig.scenario(), rig.plan());
  }

  /** The front of a space, cut in two, and the largest piece cut in two, until there are enough. */
  private static List<Piece> cut(Bin bin, int boxes, double fill, Random random) {
    int depth = FOREMOST_MM + (int) Math.round(LENGTH_MM * fill) - bin.xMm();
    List<Piece> pieces = new ArrayList<>();
    pieces.add(
        new Piece(bin, 0, 0, 0, new SizeMm(depth, bin.size().widthMm(), bin.size().heightMm())));
    while (pieces.size() < boxes) {
      pieces.sort(Comparator.comparingDouble(Piece::litres).reversed());
      Piece largest = pieces.remove(0);
      pieces.addAll(halves(largest, random));
    }
    return pieces;
  }

  private static List<Piece> halves(Piece piece, Random random) {
    SizeMm size = piece.size();
    double share = 0.3 + 0.4 * random.nextDouble();
    int along = random.nextInt(size.lengthMm() + size.widthMm() + size.heightMm());
    if (along < size.lengthMm() && size.lengthMm() >= 2 * LEAST_EDGE_MM) {
      int first = edge(size.lengthMm(), share);
      return List.of(
          new Piece(
              piece.bin(),
              piece.xMm(),
              piece.yMm(),
              piece.zMm(),
              new SizeMm(first, size.widthMm(), size.heightMm())),
          new Piece(
              piece.bin(),
              piece.xMm() + first,
              piece.yMm(),
              piece.zMm(),
              new SizeMm(size.lengthMm() - first, size.widthMm(), size.heightMm())));
    }
    if (along < size.lengthMm() + size.widthMm() && size.widthMm() >= 2 * LEAST_EDGE_MM) {
      int first = edge(size.widthMm(), share);
      return List.of(
          new Piece(
              piece.bin(),
              piece.xMm(),
              piece.yMm(),
              piece.zMm(),
              new SizeMm(size.lengthMm(), first, size.heightMm())),
          new Piece(
              piece.bin(),
              piece.xMm(),
              piece.yMm() + first,
              piece.zMm(),
              new SizeMm(size.lengthMm(), size.widthMm() - first, size.heightMm())));
    }
    int first = edge(size.heightMm(), share);
    return List.of(
        new Piece(
            piece.bin(),
            piece.xMm(),
            piece.yMm(),
            piece.zMm(),
            new SizeMm(size.lengthMm(), size.widthMm(), first)),
        new Piece(
            piece.bin(),
            piece.xMm(),
            piece.yMm(),
            piece.zMm() + first,
            new SizeMm(size.lengthMm(), size.widthMm(), size.heightMm() - first)));
  }

  private static int edge(int whole, double share) {
    int first = (int) Math.round(whole * share);
    return Math.max(LEAST_EDGE_MM, Math.min(whole - LEAST_EDGE_MM, first));
  }
}
