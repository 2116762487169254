package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A space that is taken over holds what the other has there, and nothing is there twice. */
class CrossoverTest {
  private static final int DRAWS = 100;

  @ParameterizedTest
  @ValueSource(strings = {"counter-1500", "remote-fortnight", "workshop-drawers"})
  void spacesAreFilledAsTheOtherHasThem(String name) {
    PackingProblem problem = new PackingProblem(ShippedFiles.scenario(name));
    PlanningLoad packed = PlanSearch.construct(problem, /* start= */ null);
    Packing packing = problem.packingOf(packed);
    Map<String, String> bays = packing.wantedBays();
    Random random = new Random(7L);
    int taken = 0;
    int asTheOther = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      int[] urgency = new int[problem.units().size()];
      Elites.Elite other =
          Elites.Elite.of(problem.packingOf(Shake.afresh(packed, random, urgency)));
      packing.follow(packed);
      List<Integer> before = other.bays().equals(bays) ? other.differences(packing) : List.of();
      Crossover crossover = Crossover.of(packing, other, random);
      if (crossover == null) {
        assertThat(before).isEmpty();
        continue;
      }
      List<PlacedItem> places = places(packing);
      List<Integer> left = crossover.carryOut(random);

      assertThat(left).doesNotHaveDuplicates().isSubsetOf(crossover.out());
      assertThat(left).allMatch(unit -> packing.placeOf(unit) == null);
      for (int unit : crossover.out()) {
        if (!left.contains(unit)) {
          assertThat(other.spaces().get(packing.siteOf(unit)))
              .as("what is put down stands as in the other")
              .contains(standOf(packing, unit));
        }
      }
      for (int unit = 0; unit < places.size(); unit++) {
        if (!crossover.out().contains(unit) && places.get(unit) != null) {
          assertThat(packing.spaceOf(unit))
              .as("what is not taken out stays in its space")
              .isEqualTo(places.get(unit).space().id());
        }
      }
      taken++;
      asTheOther += other.differences(packing).containsAll(before) ? 0 : 1;
    }

    assertThat(taken).isGreaterThan(DRAWS / 2);
    assertThat(asTheOther).as("a space holds all that the other has").isGreaterThan(taken / 2);
  }

  @Test
  void twoThatAreAlikeHaveNothingToTakeOver() {
    PackingProblem problem = new PackingProblem(ShippedFiles.scenario("counter-1500"));
    Packing packing = problem.packingOf(PlanSearch.construct(problem, /* start= */ null));

    assertThat(Crossover.of(packing, Elites.Elite.of(packing), new Random(1L))).isNull();
  }

  private static Elites.Stand standOf(Packing packing, int unit) {
    PlacedItem item = packing.placeOf(unit);
    int pose = packing.problem().units().get(unit).poseIn(item.placement()).getAsInt();
    return new Elites.Stand(
        packing.problem().kindOf(unit), Stance.at(pose, item.placement().corner()));
  }

  private static List<PlacedItem> places(Packing packing) {
    List<PlacedItem> places = new ArrayList<>();
    for (int unit = 0; unit < packing.problem().units().size(); unit++) {
      places.add(packing.placeOf(unit));
    }
    return places;
  }
}
