package kitstow.planner.packing;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.Need;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fillings of one space against plain geometry; all gear invented. */
class FillerTest {

  /** Large ones first and nothing else. */
  private static final Taste PLAIN = new Taste(1.0, 0.0, 0.0, 0.0, 0.0);

  /** A thing as it was put, and what it is. */
  private record Put(Item item, BoxMm box) {}

  @Test
  void likeBoxesThatFillTheRoomExactlyAllGoIn() {
    Bench bench = new Bench(List.of(anItem("crate").size(300, 200, 350).quantity(24)));

    List<Put> put = bench.fill(new SplittableRandom(1L), PLAIN);

    assertThat(put).hasSize(24);
    assertThat(volumeMm3(put)).isEqualTo(OneSpace.ROOM.volumeMm3());
    assertSound(put);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void everyBaseLiesWhollyOnTheFloorOrOnWhatCarriesIt(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Bench bench = new Bench(mixed(new Random(seed)));

    List<Put> roomy = bench.fill(random, Taste.roomy(random));
    List<Put> any = bench.fill(random, Taste.any(random));

    assertThat(roomy).hasSizeGreaterThan(10);
    assertThat(any).hasSizeGreaterThan(10);
    assertSound(roomy);
    assertSound(any);
    assertSound(bench.fillAhead(random, Taste.any(random)));
  }

  @Test
  void foresightIsNotWorseThanFillingOnce() {
    int better = 0;
    for (long seed = 1L; seed <= 20L; seed++) {
      Bench bench = new Bench(mixed(new Random(seed)));
      long once = volumeMm3(bench.fill(new SplittableRandom(seed), PLAIN));
      long ahead = volumeMm3(bench.fillAhead(new SplittableRandom(seed), PLAIN));
      assertThat(ahead).isGreaterThanOrEqualTo(once);
      better += ahead > once ? 1 : 0;
    }
    assertThat(better).isGreaterThan(10);
  }

  /** Three crates level with each other, and a board that lies across two of them. */
  @Test
  void whatIsLevelCarriesTogether() {
    Bench bench =
        new Bench(
            List.of(
                anItem("long").size(400, 600, 300),
                anItem("longer").size(450, 600, 300),
                anItem("last").size(350, 600, 300),
                anItem("board").size(1200, 500, 50)));

    List<Put> put = bench.fill(new SplittableRandom(1L), PLAIN);

    assertThat(put).hasSize(4);
    assertThat(put.get(3).item().id()).isEqualTo("board");
    assertThat(put.get(3).box().minZMm()).isEqualTo(2300);
    assertSound(put);
  }

  @Test
  void whatMustComeGoesFirstWhereThatIsLiked() {
    Bench bench =
        new Bench(
            List.of(
                anItem("large").size(600, 600, 700).need(Need.NICE),
                anItem("small").size(200, 200, 200).need(Need.MUST)));

    List<Put> put = bench.fill(new SplittableRandom(1L), new Taste(0.1, 0.0, 0.0, 1.5, 0.0));

    assertThat(put.get(0).item().id()).isEqualTo("small");
  }

  /** Eight unlike pieces of the room: large ones first alone would not put it together again. */
  @Test
  void piecesOfTheRoomAreJoinedAgain() {
    Bench bench = new Bench(Pieces.ofTheRoom());

    List<Put> put = bench.fill(new SplittableRandom(1L), PLAIN);

    assertThat(put).hasSize(Pieces.ofTheRoom().size());
    assertThat(volumeMm3(put)).isEqualTo(OneSpace.ROOM.volumeMm3());
    assertSound(put);
  }

  @Test
  void whatStandsThereStaysClear() {
    Bench bench = new Bench(List.of(anItem("crate").size(300, 200, 350).quantity(24)));
    BoxMm there = BoxMm.at(new PointMm(2900, -900, 2000), new SizeMm(300, 200, 350));
    bench.stand(there);

    List<Put> put = bench.fill(new SplittableRandom(1L), PLAIN);

    assertThat(put).hasSizeBetween(18, 23);
    assertThat(put).noneMatch(one -> Boxes.overlap(one.box(), there));
  }

  @Test
  void denseThingsComeToTheFrontWhereThatIsLiked() {
    Bench bench =
        new Bench(
            List.of(
                anItem("light").size(600, 600, 700).massG(Masses.kg(5)),
                anItem("heavy").size(600, 600, 700).massG(Masses.kg(50))));

    List<Put> put = bench.fill(new SplittableRandom(1L), new Taste(0.0, 1.0, 0.0, 0.0, 0.0));

    assertThat(put.get(0).item().id()).isEqualTo("heavy");
    assertThat(put.get(0).box().minXMm()).isLessThan(put.get(1).box().minXMm());
  }

  private static List<ItemBuilder> mixed(Random random) {
    return IntStream.range(0, 25)
        .mapToObj(
            i ->
                OneSpace.thing(i, random)
                    .quantity(1 + random.nextInt(3))
                    .massG(Masses.kg(1 + random.nextInt(9)))
                    .bearsG(random.nextInt(4) == 0 ? 0L : Masses.kg(20)))
        .collect(Collectors.toList());
  }

  private static void assertSound(List<Put> put) {
    for (Put one : put) {
      List<Put> under =
          put.stream()
              .filter(other -> other.box().maxZMm() == one.box().minZMm())
              .filter(other -> Boxes.footprintOverlapMm2(other.box(), one.box()) > 0L)
              .collect(Collectors.toList());
      long carriedMm2 =
          under.stream()
              .mapToLong(other -> Boxes.footprintOverlapMm2(other.box(), one.box()))
              .sum();
      assertThat(one.box().minZMm() == 2000 || carriedMm2 == baseMm2(one.box())).isTrue();
      assertThat(under).allMatch(other -> other.item().bearsG() >= one.item().mass().massG());
      assertThat(put).filteredOn(other -> Boxes.overlap(other.box(), one.box())).hasSize(1);
      assertThat(one.box().maxXMm()).isLessThanOrEqualTo(2600 + OneSpace.ROOM.lengthMm());
      assertThat(one.box().maxYMm()).isLessThanOrEqualTo(-900 + OneSpace.ROOM.widthMm());
      assertThat(one.box().maxZMm()).isLessThanOrEqualTo(2000 + OneSpace.ROOM.heightMm());
    }
  }

  private static long baseMm2(BoxMm box) {
    return (long) box.lengthMm() * box.widthMm();
  }

  private static long volumeMm3(List<Put> put) {
    return put.stream().mapToLong(one -> volumeMm3(one.box())).sum();
  }

  private static long volumeMm3(BoxMm box) {
    return baseMm2(box) * box.heightMm();
  }

  /** One space, its goods, and what stands there already. */
  private static final class Bench {
    private final Decoder decoder;
    private final Ground ground;
    private final int site;
    private final List<Filler.Goods> goods = new ArrayList<>();

    Bench(List<ItemBuilder> items) {
      RigBuilder rig = OneSpace.rig();
      items.forEach(rig::items);
      Scenario scenario = rig.scenario();
      this.decoder = new Decoder(Rig.of(scenario, Map.of()));
      this.ground = new Ground(decoder.sites());
      this.site = decoder.sites().indexOf(OneSpace.ID);
      for (Item item : scenario.items()) {
        Wanted wanted = Wanted.of(item, 1);
        List<Integer> poses = decoder.posesIn(wanted, site);
        goods.add(new Filler.Goods(goods.size(), wanted, poses, item.quantity()));
      }
    }

    /** Something else stands there. */
    void stand(BoxMm box) {
      Wanted wanted = goods.get(0).wanted();
      PlacedItem placed =
          Decoder.placed(wanted, decoder.sites().space(site), /* pose= */ 0, box.corner());
      assertThat(placed.box()).isEqualTo(box);
      ground.add(placed, site, /* kind= */ 0);
    }

    List<Put> fill(SplittableRandom random, Taste taste) {
      return put(filling(random).once(taste));
    }

    /** With foresight, two fillings side by side. */
    List<Put> fillAhead(SplittableRandom random, Taste taste) {
      return put(filling(random).wide(taste, /* width= */ 2, /* choices= */ 4));
    }

    /** What is in counts by its volume. */
    private Filling filling(SplittableRandom random) {
      List<Blocks.Kind> kinds = new ArrayList<>();
      goods.forEach(one -> kinds.add(new Blocks.Kind(one.kind(), one.wanted(), one.count())));
      Blocks blocks = Blocks.of(goods.size(), kinds, OneSpace.ROOM);
      Filler filler = new Filler(decoder.sites(), site, ground, goods, blocks);
      return new Filling(
          List.of(filler),
          goods.stream().mapToInt(Filler.Goods::count).toArray(),
          stand -> -(double) poseOf(stand).size().volumeMm3(),
          random);
    }

    private Pose poseOf(Filler.Stand stand) {
      return goods.get(stand.kind()).wanted().poses().get(stand.pose());
    }

    private List<Put> put(Filling.Result result) {
      List<Put> put = new ArrayList<>();
      int[] used = new int[goods.size()];
      for (Filler.Stand stand : result.stands()) {
        assertThat(stand.site()).isEqualTo(site);
        used[stand.kind()]++;
        Item item = goods.get(stand.kind()).wanted().item();
        put.add(new Put(item, BoxMm.at(stand.corner(), poseOf(stand).size())));
      }
      for (int i = 0; i < used.length; i++) {
        assertThat(used[i]).isLessThanOrEqualTo(goods.get(i).count());
      }
      assertThat(result.costs()).isEqualTo(-(double) volumeMm3(put));
      return put;
    }
  }
}
