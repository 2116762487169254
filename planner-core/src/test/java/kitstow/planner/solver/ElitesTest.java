package kitstow.planner.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;

/** The best few that differ are kept, and of those that are alike the better one. */
class ElitesTest {
  private static final int MOST = 8;

  private final PackingProblem problem =
      new PackingProblem(ShippedFiles.scenario("remote-fortnight"));
  private final PlanningLoad packed = PlanSearch.construct(problem, /* start= */ null);

  @Test
  void oneAloneOffersNoChoice() {
    Elites elites = new Elites();
    assertThat(elites.any(new Random(1L))).isNull();

    elites.add(problem.packingOf(packed));
    assertThat(elites.any(new Random(1L))).isNull();

    elites.add(afresh(1L));
    assertThat(elites.any(new Random(1L))).isNotNull();
  }

  @Test
  void ofTwoThatAreAlikeTheBetterStays() {
    Packing packing = new Packing(problem, PackingScore.baysOf(packed));
    packing.follow(packed);
    Elites.Elite whole = Elites.Elite.of(packing);
    int lightest = lightest(packing);
    String space = packing.spaceOf(lightest);
    packing.assign(lightest, null, Stance.ANY, packing.rankOf(lightest));
    assertThat(whole.differences(packing)).hasSize(1);
    Elites.Elite without = Elites.Elite.of(packing);
    assertThat(without.score()).isLessThan(whole.score());

    Elites elites = new Elites();
    elites.add(packing);
    assertThat(elites.all()).containsExactly(without);
    packing.assign(lightest, space, Stance.ANY, packing.rankOf(lightest));
    elites.add(packing);
    assertThat(elites.all()).containsExactly(whole);
    packing.assign(lightest, null, Stance.ANY, packing.rankOf(lightest));
    elites.add(packing);
    assertThat(elites.all()).as("a worse one is not taken in").containsExactly(whole);
  }

  @Test
  void theWorstOfTooManyGoes() {
    Elites elites = new Elites();
    List<Elites.Elite> offered = new ArrayList<>();
    for (long seed = 1L; seed <= 3L * MOST; seed++) {
      Packing packing = afresh(seed);
      offered.add(Elites.Elite.of(packing));
      elites.add(packing);
      assertThat(elites.all()).hasSizeLessThanOrEqualTo(MOST);
    }

    assertThat(elites.all()).hasSize(MOST).isSubsetOf(offered);
    offered.sort((a, b) -> b.score().compareTo(a.score()));
    assertThat(elites.all()).as("the best of all stays").contains(offered.get(0));
    assertThat(elites.all())
        .as("the worst of all does not")
        .doesNotContain(offered.get(offered.size() - 1));
  }

  @Test
  void onlyWhatIsInASpaceMakesADifference() {
    Packing packing = new Packing(problem, PackingScore.baysOf(packed));
    packing.follow(packed);
    Elites.Elite before = Elites.Elite.of(packing);
    int aboard = packing.placed().size();
    int movedWithin = 0;
    int movedBeyond = 0;
    for (int unit = 0; unit < problem.units().size(); unit++) {
      PlacedItem place = packing.placeOf(unit);
      if (place == null) {
        continue;
      }
      packing.assign(unit, packing.spaceOf(unit), Stance.STACKED, 2 * problem.units().size());
      PlacedItem now = packing.placeOf(unit);
      boolean sameAboard = packing.placed().size() == aboard;
      if (sameAboard && now != null && !now.box().equals(place.box())) {
        movedWithin++;
        assertThat(before.differences(packing)).isEmpty();
      }
      packing.follow(packed);
      packing.assign(unit, null, Stance.ANY, packing.rankOf(unit));
      if (packing.placed().size() == aboard - 1) {
        movedBeyond++;
        assertThat(before.differences(packing)).hasSize(1);
      }
      packing.follow(packed);
    }

    assertThat(movedWithin).isPositive();
    assertThat(movedBeyond).isPositive();
  }

  private Packing afresh(long seed) {
    int[] urgency = new int[problem.units().size()];
    return problem.packingOf(Shake.afresh(packed, new Random(seed), urgency));
  }

  private static int lightest(Packing packing) {
    int lightest = -1;
    for (int unit = 0; unit < packing.problem().units().size(); unit++) {
      boolean aboard = packing.placeOf(unit) != null;
      if (aboard && (lightest < 0 || massG(packing, unit) < massG(packing, lightest))) {
        lightest = unit;
      }
    }
    return lightest;
  }

  private static long massG(Packing packing, int unit) {
    return packing.problem().units().get(unit).item().mass().massG();
  }
}
