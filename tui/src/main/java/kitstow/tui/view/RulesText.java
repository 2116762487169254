package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitstow.planner.rules.RuleCard;
import kitstow.planner.rules.SourceStatus;

/** What every rule says of itself. */
public final class RulesText {
  private RulesText() {}

  /** The rules, two or three lines each. */
  public static List<String> lines(List<RuleCard> cards, Page page) {
    List<String> lines = new ArrayList<>();
    lines.addAll(
        page.paragraph(
            "",
            cards.size()
                + " rules. Preferences make notes and never break a plan; all other rules do."
                + " Settings are those of a scenario, with their defaults. A rule that may be"
                + " overridden is not kept where the scenario says so under \"overrides\", with a written"
                + " reason; that reason is shown wherever the rule is."));
    for (RuleCard card : cards) {
      lines.add("");
      lines.addAll(page.paragraph(card.id().name() + "  ", card.title() + "."));
      lines.addAll(page.paragraph("  ", facts(card)));
    }
    return lines;
  }

  private static String facts(RuleCard card) {
    String kind = card.id().kind().name().toLowerCase(Locale.ROOT);
    String setting = card.setting().isEmpty() ? "no setting" : "setting " + card.setting();
    String override = card.overridable() ? "may be overridden" : "may not be overridden";
    return String.join("; ", kind, source(card), setting, override) + ".";
  }

  private static String source(RuleCard card) {
    String status = status(card.status());
    return "source: " + card.source() + (status.isEmpty() ? "" : " (" + status + ")");
  }

  /** How well a source is known, in words; nothing where the source says so itself. */
  static String status(SourceStatus status) {
    return switch (status) {
      case READ -> "read";
      case READ_SECOND_HAND -> "read second-hand";
      case MEMORY -> "from memory";
      case COMMON_PRACTICE -> "";
      case BY_DEFINITION -> "by definition";
    };
  }
}
