package kitstow.planner.rules;

import kitstow.planner.model.RuleId;

/**
 * What a rule says of itself.
 *
 * @param id its name
 * @param title one line for people
 * @param source where it comes from
 * @param status how well that source is known
 * @param setting the setting and default that shape it, or "" if none does
 * @param overridable whether a scenario may override it with a written reason
 */
public record RuleCard(
    RuleId id,
    String title,
    String source,
    SourceStatus status,
    String setting,
    boolean overridable) {
  /** A limit read off a plate, handbook or label. */
  static RuleCard rating(RuleId id, String title) {
    return new RuleCard(
        id, title, "plate, handbook or maker's rating", SourceStatus.BY_DEFINITION, "", false);
  }

  /** A maker's rating; where only a static one is given, the settings derate it. */
  static RuleCard deratedRating(RuleId id, String title) {
    return new RuleCard(
        id,
        title,
        "maker's rating; road 0.75 and off-road 0.6 of static where the maker gives none (common"
            + " practice, no source)",
        SourceStatus.COMMON_PRACTICE,
        "roadDerateRatio 0.75, offRoadDerateRatio 0.6",
        false);
  }

  /** A rule that follows from geometry. */
  static RuleCard geometry(RuleId id, String title, String setting) {
    return new RuleCard(id, title, "geometry", SourceStatus.BY_DEFINITION, setting, false);
  }

  /** A rule of common practice. */
  static RuleCard practice(RuleId id, String title, String setting, boolean overridable) {
    return new RuleCard(
        id,
        title,
        "common practice, no source",
        SourceStatus.COMMON_PRACTICE,
        setting,
        overridable);
  }
}
