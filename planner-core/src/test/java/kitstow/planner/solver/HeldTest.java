package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Scenario;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is held stays where it is when something beside it goes, and what is not held may move. */
class HeldTest {
  private static final int DRAWS = 200;

  @ParameterizedTest
  @ValueSource(strings = {"counter-1500", "remote-fortnight"})
  void whatStaysMovesLessOnceItIsHeld(String name) {
    Packing packing = packed(name);
    List<PlacedItem> places = placesOf(packing);
    Random random = new Random(11L);
    int movedFree = 0;
    int movedHeld = 0;
    int held = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      int out = random.nextInt(places.size());
      if (packing.placeOf(out) == null) {
        continue;
      }
      PlanningLoad before = PlanningMapper.toPlanning(packing.problem(), packing);
      packing.assign(out, null, Stance.ANY, packing.rankOf(out));
      movedFree += moved(packing, places, out);
      packing.follow(before);

      List<Integer> changed = Held.beside(packing, List.of(out));
      assertThat(placesOf(packing)).as("holding moves nothing").isEqualTo(places);
      assertThat(changed).allMatch(unit -> packing.siteOf(unit) == packing.siteOf(out));
      assertThat(changed).doesNotContain(out);
      held += changed.size();
      packing.assign(out, null, Stance.ANY, packing.rankOf(out));
      movedHeld += moved(packing, places, out);
      assertThat(whatMoved(packing, places, out))
          .as("only what had lost what it stood on")
          .allMatch(unit -> stoodAboveSomething(places.get(unit)));
      packing.follow(before);
    }

    assertThat(held).isPositive();
    assertThat(movedHeld).isLessThan(movedFree / 2);
  }

  private static boolean stoodAboveSomething(PlacedItem item) {
    return item.box().minZMm() > item.space().box().minZMm();
  }

  private static int moved(Packing packing, List<PlacedItem> places, int out) {
    return whatMoved(packing, places, out).size();
  }

  private static Set<Integer> whatMoved(Packing packing, List<PlacedItem> places, int out) {
    Set<Integer> moved = new HashSet<>();
    for (int unit = 0; unit < places.size(); unit++) {
      PlacedItem before = places.get(unit);
      PlacedItem now = packing.placeOf(unit);
      boolean stays =
          now == null ? before == null : before != null && now.box().equals(before.box());
      if (unit != out && !stays) {
        moved.add(unit);
      }
    }
    return moved;
  }

  private static List<PlacedItem> placesOf(Packing packing) {
    List<PlacedItem> places = new ArrayList<>();
    for (int unit = 0; unit < packing.problem().units().size(); unit++) {
      places.add(packing.placeOf(unit));
    }
    return places;
  }

  /** As the search packs: each in the best place its space has left when its turn comes. */
  private static Packing packed(String name) {
    Scenario scenario = ShippedFiles.scenario(name);
    PackingProblem problem = new PackingProblem(scenario);
    PlanningLoad load = PlanSearch.construct(problem, /* start= */ null);
    Packing packing = new Packing(problem, PackingScore.baysOf(load));
    packing.follow(load);
    return packing;
  }
}
