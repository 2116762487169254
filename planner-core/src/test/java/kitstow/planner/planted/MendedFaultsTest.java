package kitstow.planner.planted;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.advice.MendCheck;
import kitstow.planner.advice.Mends;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Mend;
import kitstow.planner.rules.Situation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Mends of planted faults: each is carried out, and both judges find that it does what it says. */
class MendedFaultsTest {
  private static final int BASE_PLANS = 6;
  private static final int PLANTED_PER_FAULT = 4;

  private static final List<SoundPlan> BASES = new ArrayList<>();

  static {
    for (long seed = 0; seed < BASE_PLANS; seed++) {
      BASES.add(SoundPlans.of(seed));
    }
  }

  @ParameterizedTest
  @EnumSource(Fault.class)
  void everyMendDoesWhatItSays(Fault fault) {
    int planted = 0;
    int mended = 0;
    for (int i = 0; planted < PLANTED_PER_FAULT && i < 20 * PLANTED_PER_FAULT; i++) {
      Random random = new Random(104_729L * i + fault.name().hashCode());
      Optional<Planted> one = fault.plant(BASES.get(i % BASE_PLANS), random);
      if (one.isPresent()) {
        planted++;
        CheckReport report = CheckReport.of(Situation.of(one.get().plan().loading()));
        for (Mend mend : Mends.of(report)) {
          MendCheck.carriedOut(report, mend);
          mended += mend.outcome() == Mend.Outcome.NOT_MENDED ? 0 : 1;
        }
      }
    }
    assertThat(planted).isEqualTo(PLANTED_PER_FAULT);
    assertThat(mended).as("mends of " + fault).isPositive();
  }

  @Test
  void theSamePlanHasTheSameMends() {
    Planted one = Fault.BURIED_EMERGENCY_ITEM.plant(BASES.get(1), new Random(5)).orElseThrow();
    CheckReport report = CheckReport.of(Situation.of(one.plan().loading()));
    assertThat(Mends.of(report)).isEqualTo(Mends.of(report));
  }
}
