package kitstow.tui.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import kitstow.planner.json.RulesWriter;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.RuleCard;
import kitstow.tui.view.RulesText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the rules a plan is judged by. */
@Command(
    name = "rules",
    description =
        "Lists the rules: what they say, where they come from, which setting shapes them.",
    exitCodeOnInvalidInput = ExitCode.BAD_INPUT,
    exitCodeOnExecutionException = ExitCode.OWN_FAULT,
    footerHeading = "%nExamples:%n",
    footer = {"  kitstow rules", "  kitstow rules --json > rules.json"})
public final class RulesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Layout layout;

  @Option(names = "--json", description = "Write the rules as JSON.")
  private boolean json;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<RuleCard> cards = RuleBook.cards();
    if (json) {
      out.print(RulesWriter.write(cards));
    } else {
      RulesText.lines(cards, layout.page()).forEach(out::println);
    }
    out.flush();
    return ExitCode.OK;
  }
}
