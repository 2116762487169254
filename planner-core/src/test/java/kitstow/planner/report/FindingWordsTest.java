package kitstow.planner.report;

import static kitstow.planner.testkit.ItemBuilder.anItem;
import static kitstow.planner.testkit.Masses.kg;
import static kitstow.planner.testkit.RigBuilder.aDualCab;
import static kitstow.planner.testkit.Rigs.BOX;
import static kitstow.planner.testkit.StateBuilder.driving;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Pin;
import kitstow.planner.model.RuleId;
import kitstow.planner.rules.Situation;
import kitstow.planner.rules.StateCheck;
import kitstow.planner.testkit.ItemBuilder;
import kitstow.planner.testkit.RigBuilder;
import org.junit.jupiter.api.Test;

/** What findings say in words, with figures worked out by hand. */
class FindingWordsTest {
  /** Empty ute, tray and canopy. */
  private static final double RIG_KG = 1700 + 100 + 150;

  @Test
  void theHeaviestThreeAreNamedWithUnitsOfOneThingTogether() {
    Loading loading =
        loaded(
            anItem("can").massG(kg(20)).quantity(3),
            anItem("wheel").massG(kg(35)),
            anItem("jack").massG(kg(9)),
            anItem("tent").massG(kg(8)));
    LimitReading total = reading(loading, RuleId.GVM_LIMIT);
    assertThat(total.margin().loadKg()).isEqualTo(RIG_KG + 60 + 35 + 9 + 8);
    assertThat(Contributors.heaviest(loading, total))
        .isEqualTo("3 x can 60.0 kg; wheel 35.0 kg; jack 9.0 kg");
  }

  @Test
  void aLimitThatNoLoadIsOnNamesNothing() {
    Loading loading = aDualCab().load();
    assertThat(Contributors.heaviest(loading, reading(loading, RuleId.GVM_LIMIT))).isEmpty();
  }

  @Test
  void theHeavySideIsNamedWithWhatCanBeMovedThere() {
    Loading loading =
        loaded(
            anItem("can").massG(kg(60)).quantity(2),
            anItem("fixed").massG(kg(90)).pin(new Pin(BOX, Optional.empty(), Optional.empty())));
    StateFigures figures = figures(loading);
    StateCheck check = check(figures, RuleId.LEFT_RIGHT);
    assertThat(check.margin()).isNegative();
    assertThat(words(check, figures, loading))
        .contains("the left side is " + Amounts.up(check.value()) + " heavier")
        .contains("good practice is 50.0 kg at most")
        .contains("the heaviest gear on the left that can be moved: 2 x can 120.0 kg")
        .doesNotContain("fixed");
    assertThat(PracticeWords.mend(check, figures)).contains("to the right");
  }

  @Test
  void theFrontAxleIsToldInKilograms() {
    Loading loading = loaded(anItem("load").massG(kg(400)));
    StateFigures figures = figures(loading);
    double totalKg = RIG_KG + 400;
    assertThat(words(check(figures, RuleId.FRONT_AXLE_SHARE), figures, loading))
        .startsWith("the front axle carries ")
        .contains(" kg of " + Amounts.text(totalKg) + " kg, which is ")
        .contains("38.0 % or more, here " + Amounts.text(totalKg * 0.38) + " kg");
    assertThat(words(check(figures, RuleId.FRONT_AXLE_DROP), figures, loading))
        .contains(" kg of the ute at kerb", "good practice is 10.0 %");
  }

  /** Items in a row in the box, which is on the left. */
  private static Loading loaded(ItemBuilder... items) {
    RigBuilder rig = aDualCab().items(items);
    int xMm = 0;
    for (ItemBuilder builder : items) {
      var item = builder.build();
      for (int unit = 1; unit <= item.quantity(); unit++) {
        rig.put(item.keyOf(unit), BOX, xMm, 0, 0);
        xMm += 100;
      }
    }
    return rig.load();
  }

  private static String words(StateCheck check, StateFigures figures, Loading loading) {
    return PracticeWords.message("title", check, figures, loading);
  }

  private static StateFigures figures(Loading loading) {
    return StateFigures.of(Situation.of(loading), driving(loading).build());
  }

  private static LimitReading reading(Loading loading, RuleId rule) {
    return figures(loading).limits().stream()
        .filter(one -> one.rule() == rule)
        .findFirst()
        .orElseThrow();
  }

  private static StateCheck check(StateFigures figures, RuleId rule) {
    return figures.checks().stream().filter(one -> one.rule() == rule).findFirst().orElseThrow();
  }
}
