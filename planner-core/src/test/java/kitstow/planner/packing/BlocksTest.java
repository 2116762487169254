package kitstow.planner.packing;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.Masses;
import org.junit.jupiter.api.Test;

/** Blocks of unlike units against plain geometry; all gear invented. */
class BlocksTest {
  private static final SizeMm LIMIT = new SizeMm(1200, 600, 700);
  private static final PointMm CORNER = new PointMm(100, 200, 300);

  @Test
  void blocksAreFullSoundAndTakeNoMoreThanThereIs() {
    List<ItemBuilder> pieces = Pieces.ofTheRoom();
    List<Wanted> wanted = wanted(pieces);

    List<Block> all = blocks(wanted).all();

    assertThat(all).hasSizeGreaterThan(20);
    assertThat(all.get(0).size().volumeMm3()).isEqualTo(LIMIT.volumeMm3());
    for (Block block : all) {
      List<BoxMm> boxes = stand(block, wanted);
      assertThat(boxes.stream().mapToLong(BlocksTest::volumeMm3).sum())
          .isEqualTo(block.size().volumeMm3());
      BoxMm whole = BoxMm.at(CORNER, block.size());
      for (BoxMm box : boxes) {
        assertThat(boxes).filteredOn(other -> Boxes.overlap(other, box)).hasSize(1);
        assertThat(Boxes.protrusionMm(box, whole)).isZero();
      }
      int[] ones = new int[wanted.size()];
      Arrays.fill(ones, 1);
      assertThat(block.isWithin(ones)).isTrue();
    }
  }

  @Test
  void ofTwoWaysToStandTheOneWithItsMassInFrontIsKept() {
    List<Wanted> wanted =
        wanted(
            List.of(
                anItem("light").size(300, 200, 200).massG(Masses.kg(2)).bearsG(0L),
                anItem("heavy").size(400, 200, 200).massG(Masses.kg(20)).bearsG(0L)));

    List<Block> all = blocks(wanted).all();

    assertThat(all).hasSize(1);
    assertThat(all.get(0).size()).isEqualTo(new SizeMm(700, 200, 200));
    // 20 kg half of 400 mm behind the front, 2 kg another 150 mm behind them.
    assertThat(all.get(0).doubledMomentGMm())
        .isEqualTo(2L * (Masses.kg(20) * 200L + Masses.kg(2) * 550L));
    assertThat(stand(all.get(0), wanted))
        .contains(BoxMm.at(CORNER, wanted.get(1).poses().get(0).size()));
  }

  @Test
  void nothingGoesOnTopOfWhatCannotCarryIt() {
    List<Wanted> wanted =
        wanted(
            List.of(
                anItem("weak").size(400, 200, 100).massG(Masses.kg(2)).bearsG(Masses.kg(3)),
                anItem("strong").size(400, 200, 150).massG(Masses.kg(4)).bearsG(Masses.kg(30))));

    List<Block> onTop = new ArrayList<>(blocks(wanted).all());
    onTop.removeIf(block -> !block.size().equals(new SizeMm(400, 200, 250)));

    assertThat(onTop).hasSize(1);
    assertThat(stand(onTop.get(0), wanted))
        .contains(BoxMm.at(CORNER, wanted.get(1).poses().get(0).size()));
    assertThat(onTop.get(0).bearsG()).isEqualTo(Masses.kg(3));
    assertThat(onTop.get(0).massG()).isEqualTo(Masses.kg(6));
  }

  private static List<Wanted> wanted(List<ItemBuilder> items) {
    List<Wanted> wanted = new ArrayList<>();
    items.forEach(item -> wanted.add(Wanted.of(item.build(), 1)));
    return wanted;
  }

  private static Blocks blocks(List<Wanted> wanted) {
    List<Blocks.Kind> kinds = new ArrayList<>();
    wanted.forEach(one -> kinds.add(new Blocks.Kind(kinds.size(), one, 1)));
    return Blocks.of(kinds.size(), kinds, LIMIT);
  }

  private static List<BoxMm> stand(Block block, List<Wanted> wanted) {
    List<BoxMm> boxes = new ArrayList<>();
    block.stand(
        CORNER,
        (kind, pose, corner) ->
            boxes.add(BoxMm.at(corner, wanted.get(kind).poses().get(pose).size())));
    return boxes;
  }

  private static long volumeMm3(BoxMm box) {
    return (long) box.lengthMm() * box.widthMm() * box.heightMm();
  }
}
