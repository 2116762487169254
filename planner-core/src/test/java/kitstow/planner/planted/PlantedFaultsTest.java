package kitstow.planner.planted;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Seventeen hundred plans with one planted fault each, and a thousand sound ones, made from sixty
 * generated plans: the rules and the audit each find the planted fault and what it entails, and
 * nothing else.
 */
class PlantedFaultsTest {
  private static final int BASE_PLANS = 60;
  private static final int PLANTED_PER_FAULT = 100;
  private static final int SOUND = 1000;

  private static final List<SoundPlan> BASES = new ArrayList<>();
  private static final Map<Fault, Set<Integer>> PLANTED_IN = new EnumMap<>(Fault.class);

  @BeforeAll
  static void packPlans() {
    for (long seed = 0; seed < BASE_PLANS; seed++) {
      BASES.add(SoundPlans.of(seed));
    }
  }

  @ParameterizedTest
  @EnumSource(Fault.class)
  void bothJudgesNameThePlantedFaultAndOnlyWhatItEntails(Fault fault) {
    Set<Integer> basesUsed = new HashSet<>();
    int planted = 0;
    for (int i = 0; planted < PLANTED_PER_FAULT && i < 40 * PLANTED_PER_FAULT; i++) {
      int base = i % BASE_PLANS;
      Random random = new Random(7_919L * i + fault.name().hashCode());
      Optional<Planted> one = fault.plant(BASES.get(base), random);
      if (one.isPresent()) {
        planted++;
        basesUsed.add(base);
        String where = fault + " in base plan " + base + ", try " + i;
        assertThat(one.get().plan().brokenByRules()).as(where).isEqualTo(one.get().expected());
        assertThat(one.get().plan().brokenByAudit()).as(where).isEqualTo(one.get().expected());
      }
    }
    PLANTED_IN.put(fault, basesUsed);
    assertThat(planted).isEqualTo(PLANTED_PER_FAULT);
    assertThat(basesUsed.size()).as("base plans with a place for " + fault).isGreaterThan(15);
  }

  @AfterAll
  static void allFaultsTogetherWerePlantedInMostBasePlans() {
    if (PLANTED_IN.size() == Fault.values().length) { // else only some tests were asked for
      Set<Integer> different = new HashSet<>();
      PLANTED_IN.values().forEach(different::addAll);
      assertThat(different).as("base plans with a fault").hasSizeGreaterThanOrEqualTo(50);
    }
  }

  @Test
  void bothJudgesFindNothingInSoundPlans() {
    Set<SoundPlan> different = new HashSet<>();
    for (int i = 0; i < SOUND; i++) {
      SoundPlan base = BASES.get(i % BASE_PLANS);
      SoundPlan plan = Variations.of(base, new Random(i));
      different.add(plan);
      assertThat(plan.brokenByRules()).as("sound plan " + i).isEmpty();
      assertThat(plan.brokenByAudit()).as("sound plan " + i).isEmpty();
    }
    assertThat(different).hasSizeGreaterThan(SOUND * 9 / 10);
  }

  @Test
  void basePlansAreManyAndLarge() {
    assertThat(BASES).hasSizeGreaterThanOrEqualTo(50);
    assertThat(BASES).allSatisfy(p -> assertThat(p.plan().placements()).hasSizeGreaterThan(19));
    assertThat(BASES.stream().map(p -> p.plan().moduleBays()).distinct()).hasSize(3);
    assertThat(BASES).anySatisfy(p -> assertThat(p.loading().in("rack")).isNotEmpty());
    assertThat(BASES).anySatisfy(p -> assertThat(p.loading().in("slide/top")).isNotEmpty());
    assertThat(BASES).allSatisfy(p -> assertThat(straddles(p)).isTrue());
  }

  private static boolean straddles(SoundPlan plan) {
    int rearAxle = plan.scenario().ute().wheelbaseMm();
    return plan.loading().placed().values().stream()
        .anyMatch(i -> i.box().minXMm() < rearAxle && i.box().maxXMm() > rearAxle);
  }
}
