package kitstow.planner.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import kitstow.planner.model.Item;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Rig;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.RuleKind;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Space;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;

/** Which rules of reach close whole spaces is told by what the decoder does with empty ones. */
class KeptOutTest {
  @Test
  void theRulesOfReachThatBarEmptySpacesAreThoseThatKeepThingsOut() {
    Set<RuleId> seen = EnumSet.noneOf(RuleId.class);
    for (String name : ShippedFiles.scenarioNames()) {
      Scenario scenario = ShippedFiles.scenario(name);
      Map<String, String> bays = new LinkedHashMap<>();
      for (ModuleChoice choice : scenario.modules()) {
        if (!bays.containsValue(choice.bayIds().get(0))) {
          bays.put(choice.module().id(), choice.bayIds().get(0));
        }
      }
      Decoder decoder = new Decoder(Rig.of(scenario, bays));
      for (Item item : scenario.items()) {
        for (int i = 0; i < decoder.sites().size(); i++) {
          Space space = decoder.sites().space(i);
          Decoder.Found found = decoder.alone(Wanted.of(item, 1), space);
          if (!found.place().isPresent() && found.barredBy().kind() == RuleKind.REACH) {
            seen.add(found.barredBy());
          }
        }
      }
    }

    assertThat(seen).isNotEmpty().allMatch(Decoder::keepsOut);
    for (RuleId rule : RuleId.values()) {
      assertThat(Decoder.keepsOut(rule)).as("%s", rule).isEqualTo(seen.contains(rule));
    }
  }
}
