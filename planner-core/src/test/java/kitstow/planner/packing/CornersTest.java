package kitstow.planner.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.Boxes;
import kitstow.planner.geometry.PointMm;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Item;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Scenario;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Candidate places against plain geometry, on spaces filled at random: all invented. */
class CornersTest {
  private static final int THINGS = 30;
  private static final int PROBES = 40;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void theSameThingsGiveTheSamePlaceWhateverCameWhen(long seed) {
    Random random = new Random(seed);
    Scenario scenario = rig(random);
    Decoder decoder = new Decoder(Rig.of(scenario, java.util.Map.of()));
    int site = decoder.sites().indexOf(OneSpace.ID);
    Ground grown = new Ground(decoder.sites());
    List<PlacedItem> aboard = new ArrayList<>();

    for (Item item : scenario.items()) {
      Wanted wanted = Wanted.of(item, 1);
      Optional<PlacedItem> asGrown = decoder.find(wanted, site, grown).place();

      Collections.shuffle(aboard, random);
      Ground anew = new Ground(decoder.sites());
      aboard.forEach(one -> anew.add(one, site, /* kind= */ 0));
      assertThat(asGrown).isEqualTo(decoder.find(wanted, site, anew).place());
      asGrown.ifPresent(
          placed -> {
            assertThat(aboard).noneMatch(one -> Boxes.overlap(one.box(), placed.box()));
            aboard.add(placed);
            grown.add(placed, site, /* kind= */ 0);
          });
    }

    assertThat(aboard).hasSizeGreaterThan(THINGS / 3);
  }

  /** A corner is free exactly where plain geometry finds it free, and no thread is too short. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void whateverFitsIntoACornerIsAdmittedThere(long seed) {
    Random random = new Random(seed);
    Scenario scenario = rig(random);
    Decoder decoder = new Decoder(Rig.of(scenario, java.util.Map.of()));
    int site = decoder.sites().indexOf(OneSpace.ID);
    Ground ground = new Ground(decoder.sites());
    BoxMm room = decoder.sites().site(site).room();
    int fits = 0;
    int barred = 0;

    for (Item item : scenario.items()) {
      Anchors anchors = ground.scene(site).anchors();
      for (int i = 0; i < anchors.count(); i++) {
        assertThat(anchors.admits(i, 1, 1, 1)).isTrue();
        assertThat(isFree(at(anchors, i, 1, 1, 1), room, ground, site)).isTrue();
        for (int probe = 0; probe < PROBES; probe++) {
          int length = 1 + random.nextInt(500);
          int width = 1 + random.nextInt(300);
          int height = 1 + random.nextInt(300);
          boolean free = isFree(at(anchors, i, length, width, height), room, ground, site);
          assertThat(anchors.admits(i, length, width, height) || !free).isTrue();
          fits += free ? 1 : 0;
          barred += anchors.admits(i, length, width, height) ? 0 : 1;
        }
      }
      decoder
          .find(Wanted.of(item, 1), site, ground)
          .place()
          .ifPresent(placed -> ground.add(placed, site, /* kind= */ 0));
    }

    assertThat(fits).isPositive();
    assertThat(barred).isPositive();
  }

  @Test
  void quickTestsAgreeWithPlainGeometry() {
    Random random = new Random(7L);
    int overlapping = 0;
    for (int round = 0; round < 2_000; round++) {
      List<BoxMm> boxes = new ArrayList<>();
      BoxTable table = new BoxTable(1);
      for (int i = 0; i < 6; i++) {
        int at = random.nextInt(i + 1);
        boxes.add(at, box(random));
        table.insert(at, boxes.get(at));
      }
      BoxMm newcomer = box(random);

      boolean overlaps = boxes.stream().anyMatch(one -> Boxes.overlap(one, newcomer));
      overlapping += overlaps ? 1 : 0;
      assertThat(
              table.overlaps(
                  newcomer.minXMm(),
                  newcomer.minYMm(),
                  newcomer.minZMm(),
                  newcomer.maxXMm(),
                  newcomer.maxYMm(),
                  newcomer.maxZMm()))
          .isEqualTo(overlaps);
      assertThat(
              table.contactMm2(
                  newcomer.minXMm(),
                  newcomer.minYMm(),
                  newcomer.minZMm(),
                  newcomer.maxXMm(),
                  newcomer.maxYMm(),
                  boxes.size()))
          .isEqualTo(
              boxes.stream()
                  .filter(one -> one.maxZMm() == newcomer.minZMm())
                  .mapToLong(one -> Boxes.footprintOverlapMm2(one, newcomer))
                  .sum());
      assertThat(
              table.forwardFrom(
                  newcomer.minXMm(),
                  newcomer.minYMm(),
                  newcomer.minZMm(),
                  newcomer.maxYMm(),
                  newcomer.maxZMm(),
                  -1))
          .isEqualTo(
              boxes.stream()
                  .filter(one -> one.maxXMm() <= newcomer.minXMm())
                  .filter(one -> Boxes.overlapYMm(one, newcomer) > 0)
                  .filter(one -> Boxes.overlapZMm(one, newcomer) > 0)
                  .mapToInt(BoxMm::maxXMm)
                  .max()
                  .orElse(-1));
    }
    assertThat(overlapping).isBetween(200, 1_800);
  }

  private static BoxMm box(Random random) {
    PointMm corner = new PointMm(random.nextInt(8), random.nextInt(8), random.nextInt(8));
    return BoxMm.at(
        corner, new SizeMm(1 + random.nextInt(4), 1 + random.nextInt(4), 1 + random.nextInt(4)));
  }

  private static BoxMm at(Anchors anchors, int i, int length, int width, int height) {
    PointMm corner = new PointMm(anchors.xMm(i, length), anchors.yMm(i, width), anchors.zMm(i));
    return BoxMm.at(corner, new SizeMm(length, width, height));
  }

  private static boolean isFree(BoxMm box, BoxMm room, Ground ground, int site) {
    return Boxes.protrusionMm(box, room) == 0
        && ground.in(site).stream().noneMatch(one -> Boxes.overlap(one.box(), box));
  }

  private static Scenario rig(Random random) {
    RigBuilder rig = OneSpace.rig();
    for (int i = 0; i < THINGS; i++) {
      rig.items(
          OneSpace.thing(i, random)
              .massG(Masses.kg(1 + random.nextInt(9)))
              .bearsG(random.nextInt(4) == 0 ? 0L : Masses.kg(60)));
    }
    return rig.scenario();
  }
}
