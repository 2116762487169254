package kitstow.tui.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Need;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Space;
import kitstow.planner.report.HomeReason;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.RuleCard;

/** Why what stays home does, the spaces it fails in by least first. */
public final class ReasonsText {
  private static final int MOST_REASONS = 4;
  private static final int MOST_NAMES = 3;

  /** Ranks from here on are told in numbers only. */
  private static final int BARRED = 4;

  private final List<HomeReason> reasons;
  private final Loading loading;
  private final Subjects subjects;
  private final StateNames states;
  private final Page page;

  /** Reasons for what stays home of a loading. */
  public ReasonsText(
      List<HomeReason> reasons, Loading loading, Subjects subjects, StateNames states, Page page) {
    this.reasons = reasons;
    this.loading = loading;
    this.subjects = subjects;
    this.states = states;
    this.page = page;
  }

  /** A paragraph for each item of which units stay home. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Item item : loading.scenario().items()) {
      int home = 0;
      String first = "";
      for (int unit = 1; unit <= item.quantity(); unit++) {
        if (loading.home().contains(item.keyOf(unit))) {
          home++;
          first = first.isEmpty() ? item.keyOf(unit) : first;
        }
      }
      if (home > 0) {
        lines.addAll(one(item, home, first));
      }
    }
    if (lines.isEmpty()) {
      return List.of("Nothing stays home.");
    }
    List<String> all =
        new ArrayList<>(
            page.paragraph(
                "",
                "Each was tried in each space in every turn, all else staying where it is; the"
                    + " spaces where least is missing come first."));
    all.addAll(lines);
    return all;
  }

  private List<String> one(Item item, int home, String key) {
    List<HomeReason> own = new ArrayList<>();
    for (HomeReason reason : reasons) {
      if (reason.key().equals(key)) {
        own.add(reason);
      }
    }
    own.sort(
        Comparator.comparingInt((HomeReason reason) -> rank(reason))
            .thenComparingDouble(HomeReason::shortBy));
    List<String> lines = new ArrayList<>(List.of(""));
    lines.addAll(
        page.paragraph(
            "",
            (home > 1 ? home + " x " : "")
                + item.title()
                + (item.need() == Need.MUST ? " (MUST)" : "")
                + ", "
                + Figures.loadKg(item.mass().massG() / 1000.0)
                + " kg"
                + (home > 1 ? " each" : "")));
    // Spaces with one and the same reason share a line.
    Map<String, List<String>> told = new LinkedHashMap<>();
    Map<String, Integer> more = new LinkedHashMap<>();
    for (HomeReason reason : own) {
      boolean known = rank(reason) < BARRED && told.containsKey(why(reason));
      if (known || (told.size() < MOST_REASONS && rank(reason) < BARRED)) {
        told.computeIfAbsent(why(reason), why -> new ArrayList<>()).add(name(reason.spaceId()));
      } else {
        more.merge(sort(reason), 1, Integer::sum);
      }
    }
    told.forEach(
        (why, spaces) -> lines.addAll(page.paragraph("  - ", some(spaces) + ": " + why + ".")));
    if (!more.isEmpty()) {
      List<String> counts = new ArrayList<>();
      more.forEach((sort, count) -> counts.add(count + " " + sort));
      String lead = told.isEmpty() ? "Spaces: " : "Other spaces: ";
      lines.addAll(page.paragraph("  - ", lead + String.join(", ", counts) + "."));
    }
    return lines;
  }

  /** The first few names, and how many more there are. */
  private static String some(List<String> names) {
    if (names.size() <= MOST_NAMES) {
      return String.join("; ", names);
    }
    return String.join("; ", names.subList(0, MOST_NAMES))
        + " and "
        + (names.size() - MOST_NAMES)
        + " more";
  }

  private String name(String spaceId) {
    Space space = loading.rig().spaces().get(spaceId);
    return space == null ? spaceId : subjects.space(space);
  }

  private static int rank(HomeReason reason) {
    return switch (reason.cause()) {
      case NOTHING -> 0;
      case OVER_LIMIT, OVER_LIMIT_ALONE -> 1;
      case GAP_TOO_SHORT, GAP_TOO_NARROW, GAP_TOO_LOW -> 2;
      case TOO_LONG, TOO_WIDE, TOO_HIGH, DOOR -> 3;
      case BARRED_BY_OTHERS -> BARRED;
      case BARRED -> BARRED + 1;
    };
  }

  private String why(HomeReason reason) {
    String mm = Figures.near(reason.shortBy(), 0) + " mm";
    return switch (reason.cause()) {
      case NOTHING -> "goes in and keeps every limit; search longer, or put it there by hand";
      case OVER_LIMIT ->
          limit(reason)
              + " would be "
              + Figures.loadKg(reason.shortBy())
              + " kg over in state "
              + states.number(reason.stateId());
      case OVER_LIMIT_ALONE ->
          "even with all else out of it, "
              + limit(reason)
              + " would be "
              + Figures.loadKg(reason.shortBy())
              + " kg over in state "
              + states.number(reason.stateId());
      case GAP_TOO_SHORT -> "the best gap is " + mm + " too short along the vehicle";
      case GAP_TOO_NARROW -> "the best gap is " + mm + " too narrow across the vehicle";
      case GAP_TOO_LOW -> "the best gap is " + mm + " too low";
      case TOO_LONG -> mm + " too long for it, along the vehicle";
      case TOO_WIDE -> mm + " too wide for it, across the vehicle";
      case TOO_HIGH -> mm + " too high for it";
      case DOOR -> "does not pass the door: " + mm + " too large";
      case BARRED, BARRED_BY_OTHERS -> title(reason.rule());
    };
  }

  private String limit(HomeReason reason) {
    String name = subjects.limit(reason.rule(), reason.subjectId());
    return switch (reason.rule()) {
      case SPACE_RATING -> reason.subjectId().equals(reason.spaceId()) ? "its rating" : name;
      case GVM_LIMIT, REAR_AXLE_LIMIT, FRONT_AXLE_LIMIT, CAB_ROOF_LIMIT, CANOPY_ROOF_LIMIT ->
          Character.toLowerCase(name.charAt(0)) + name.substring(1);
      default -> name;
    };
  }

  private static String title(RuleId id) {
    for (RuleCard card : RuleBook.cards()) {
      if (card.id() == id) {
        return card.title();
      }
    }
    return id.name();
  }

  /** What is told of the spaces that are not told one by one. */
  private static String sort(HomeReason reason) {
    return switch (reason.cause()) {
      case NOTHING -> "where it goes in";
      case OVER_LIMIT, OVER_LIMIT_ALONE -> "over a limit";
      case GAP_TOO_SHORT, GAP_TOO_NARROW, GAP_TOO_LOW -> "without a gap for it";
      case TOO_LONG, TOO_WIDE, TOO_HIGH -> "too small";
      case DOOR -> "behind too small a door";
      case BARRED, BARRED_BY_OTHERS -> bar(reason.rule());
    };
  }

  /** A rule that bars a thing, in a few words. */
  private static String bar(RuleId rule) {
    return switch (rule) {
      case FORBIDDEN_PAIR -> "beside what it must not ride with";
      case GAS_OUTSIDE -> "closed in, where gas must not ride";
      case FUEL_OUTSIDE -> "closed in, where fuel must not ride";
      case UNDER_COVER -> "in the open, where it would get wet";
      case ROOF_GEAR -> "on a roof, too heavy for one";
      case CAB_REACH -> "outside the cab";
      case STOP_REACH -> "shut where the ute may stand";
      case EMERGENCY_REACH -> "where it would bar emergency gear";
      case SUPPORT, BEARING, CLEAR_COLUMN -> "without firm stand";
      case TWO_BARS -> "without two bars under it";
      case AIR_CLEARANCE, LID_CLEARANCE -> "without room for air or lids";
      case MODULE_CLASH, MODULE_IN_BAY, SLIDE_ENVELOPE -> "where it would foul a slide";
      case PIN_KEPT -> "not where it is pinned";
      default -> "without room";
    };
  }
}
