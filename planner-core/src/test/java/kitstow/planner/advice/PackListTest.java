package kitstow.planner.advice;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.SpaceBuilder.aSpace;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.AccessAxis;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.packing.WayOut;
import kitstow.planner.planted.SoundPlans;
import kitstow.planner.rules.Situation;
import kitstow.planner.scenarios.ShippedFiles;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PackListTest {
  static Stream<Situation> situations() {
    return Stream.concat(
        LongStream.range(0L, 60L).mapToObj(seed -> Situation.of(SoundPlans.of(seed).loading())),
        ShippedFiles.plannedNames().stream().map(name -> ShippedFiles.checked(name).situation()));
  }

  @ParameterizedTest
  @MethodSource("situations")
  void everythingAboardIsListedOnce(Situation situation) {
    List<String> listed = new ArrayList<>();
    for (PackList.Stop stop : PackList.of(situation).stops()) {
      for (PackList.Filled filled : stop.spaces()) {
        filled.steps().forEach(step -> listed.add(step.item().key()));
      }
    }
    assertThat(listed).containsExactlyInAnyOrderElementsOf(situation.loading().placed().keySet());
  }

  @ParameterizedTest
  @MethodSource("situations")
  void nothingThatIsInAlreadyIsInTheWayAndAllThatCarriesIsThere(Situation situation) {
    int squeezed = 0;
    for (PackList.Stop stop : PackList.of(situation).stops()) {
      for (PackList.Filled filled : stop.spaces()) {
        List<PlacedItem> in = new ArrayList<>();
        for (PackList.Step step : filled.steps()) {
          assertThat(in).containsAll(step.standsOn());
          if (step.squeezed()) {
            squeezed++;
          } else {
            assertThat(WayOut.toMoveFirst(step.item(), in)).as(step.item().key()).isEmpty();
          }
          in.add(step.item());
        }
      }
    }
    assertThat(squeezed).isZero();
  }

  @Test
  void theDeepestGoesInFirstAndWhatIsNearerIsToBeMoved() {
    PackList.Filled shelf = only(twoInARow(AccessAxis.LEFT));
    assertThat(shelf.steps()).extracting(step -> step.item().key()).containsExactly("deep", "near");
    assertThat(shelf.steps()).extracting(step -> step.toMove().size()).containsExactly(1, 0);
    assertThat(shelf.steps()).allMatch(PackList.Step::onFloor);

    assertThat(only(twoInARow(AccessAxis.RIGHT)).steps())
        .extracting(step -> step.item().key())
        .containsExactly("near", "deep");
  }

  @Test
  void whatCarriesGoesInBeforeWhatItCarries() {
    Loading loading =
        shelf(AccessAxis.LEFT)
            .put("upper", "shelf", 0, 0, 200)
            .put("lower", "shelf", 0, 0, 0)
            .load();
    PackList.Filled shelf = only(loading);
    assertThat(shelf.steps())
        .extracting(step -> step.item().key())
        .containsExactly("lower", "upper");
    assertThat(shelf.steps().get(0).toMove()).extracting(PlacedItem::key).containsExactly("upper");
    assertThat(shelf.steps().get(1).standsOn())
        .extracting(PlacedItem::key)
        .containsExactly("lower");
    assertThat(shelf.steps().get(1).onFloor()).isFalse();
  }

  @Test
  void theKerbSideComesFirst() {
    for (Facing kerb : List.of(Facing.LEFT, Facing.RIGHT)) {
      Entrance left = Entrance.of(shelf(AccessAxis.LEFT).load().rig(), space(AccessAxis.LEFT));
      Entrance right = Entrance.of(shelf(AccessAxis.RIGHT).load().rig(), space(AccessAxis.RIGHT));
      assertThat(left.rank(kerb) < right.rank(kerb)).isEqualTo(kerb == Facing.LEFT);
    }
  }

  private static kitstow.planner.model.Space space(AccessAxis access) {
    return shelf(access).load().rig().spaces().get("shelf");
  }

  private static Loading twoInARow(AccessAxis access) {
    return shelf(access).put("near", "shelf", 0, 0, 0).put("deep", "shelf", 0, 300, 0).load();
  }

  private static RigBuilder shelf(AccessAxis access) {
    return RigBuilder.aDualCab()
        .canopySpace(aSpace("shelf", 0, -600, 0, new SizeMm(600, 1200, 600)).access(access))
        .items(
            anItem("near").size(300, 200, 200),
            anItem("deep").size(300, 200, 200),
            anItem("lower").size(300, 200, 200).bearsG(50_000L),
            anItem("upper").size(300, 200, 200));
  }

  private static PackList.Filled only(Loading loading) {
    List<PackList.Stop> stops = PackList.of(Situation.of(loading)).stops();
    assertThat(stops).hasSize(1);
    assertThat(stops.get(0).spaces()).hasSize(1);
    return stops.get(0).spaces().get(0);
  }
}
