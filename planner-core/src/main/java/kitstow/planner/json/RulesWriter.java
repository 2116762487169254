package kitstow.planner.json;

import java.util.List;
import kitstow.planner.rules.RuleCard;

/** Writes what the rules say of themselves as JSON. */
public final class RulesWriter {
  private RulesWriter() {}

  /** The rules as a JSON text that ends in a line feed. */
  public static String write(List<RuleCard> cards) {
    return Output.text(
        out -> {
          out.whole("schemaVersion", 1);
          out.listAlways("rules", cards, card -> card(card, out));
        });
  }

  private static void card(RuleCard card, Output out) {
    out.text("rule", card.id().name());
    out.word("kind", card.id().kind());
    out.text("title", card.title());
    out.text("source", card.source());
    out.word("sourceStatus", card.status());
    out.text("setting", card.setting());
    out.flag("overridable", card.overridable());
  }
}
