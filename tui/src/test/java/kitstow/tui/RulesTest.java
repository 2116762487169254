package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.util.Set;
import java.util.TreeSet;
import kitstow.planner.model.RuleId;
import kitstow.tui.cli.ExitCode;
import org.junit.jupiter.api.Test;

class RulesTest {
  @Test
  void everyRuleIsListed() {
    Run run = Run.of("rules");
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    for (RuleId rule : RuleId.values()) {
      assertThat(run.outLines()).anyMatch(line -> line.startsWith(rule.name() + "  "));
    }
    assertThat(run.outLines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void everyRuleIsInTheJson() {
    Run run = Run.of("rules", "--json");
    JsonArray rules = JsonParser.parseString(run.out()).getAsJsonObject().getAsJsonArray("rules");
    Set<String> names = new TreeSet<>();
    for (JsonElement rule : rules) {
      names.add(rule.getAsJsonObject().get("rule").getAsString());
      assertThat(rule.getAsJsonObject().keySet())
          .containsExactly(
              "rule", "kind", "title", "source", "sourceStatus", "setting", "overridable");
    }
    assertThat(names).hasSize(RuleId.values().length);
  }
}
