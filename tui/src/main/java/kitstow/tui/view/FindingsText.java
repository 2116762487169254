package kitstow.tui.view;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.RuleId;
import kitstow.planner.report.Finding;
import kitstow.planner.report.Mend;

/** Findings, gravest first: what, by how much, when, and what would mend it. */
public final class FindingsText {
  /** Notes of one rule that are told when not all are asked for. */
  private static final int MOST_NOTES = 3;

  private final Subjects subjects;
  private final StateNames states;
  private final Map<String, Mend> mends = new LinkedHashMap<>();
  private final Page page;
  private final boolean all;

  /** Findings without mends. */
  public FindingsText(Subjects subjects, StateNames states, Page page, boolean all) {
    this(subjects, states, List.of(), page, all);
  }

  /** Findings with what would mend them. */
  public FindingsText(
      Subjects subjects, StateNames states, List<Mend> mends, Page page, boolean all) {
    this.subjects = subjects;
    this.states = states;
    mends.forEach(mend -> this.mends.put(mend.findingKey(), mend));
    this.page = page;
    this.all = all;
  }

  /** The findings, one after the other. */
  public List<String> lines(List<Finding> findings) {
    if (findings.isEmpty()) {
      return List.of("None: no rule is broken and nothing is in doubt.");
    }
    List<String> lines = new ArrayList<>();
    Map<RuleId, Integer> notes = new EnumMap<>(RuleId.class);
    for (List<Finding> alike : alike(findings)) {
      Finding finding = alike.get(0);
      boolean note = finding.severity() == Finding.Severity.NOTE;
      int before = note ? notes.merge(finding.rule(), 1, Integer::sum) - 1 : 0;
      if (all || before < MOST_NOTES) {
        lines.addAll(one(finding, alike.size()));
      }
    }
    if (!all) {
      notes.forEach(
          (rule, count) -> {
            if (count > MOST_NOTES) {
              lines.addAll(
                  page.paragraph(
                      word(Finding.Severity.NOTE),
                      "And "
                          + (count - MOST_NOTES)
                          + " more of "
                          + rule
                          + "; check --all lists them."));
            }
          });
    }
    return lines;
  }

  /** Findings of which all but the unit is alike, such as forty bags at home, together. */
  private Collection<List<Finding>> alike(List<Finding> findings) {
    Map<List<Object>, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      List<Object> text =
          List.of(finding.severity(), finding.rule(), finding.stateId(), texts(finding));
      groups.computeIfAbsent(text, key -> new ArrayList<>()).add(finding);
    }
    return groups.values();
  }

  private List<String> texts(Finding finding) {
    return List.of(what(finding), figures(finding), mendOf(finding), finding.override());
  }

  private List<String> one(Finding finding, int times) {
    String lead = word(finding.severity());
    String indent = " ".repeat(lead.length());
    String often = times > 1 ? " " + times + " times." : "";
    List<String> lines = new ArrayList<>(page.paragraph(lead, what(finding) + often));
    String when =
        finding.stateId().isEmpty() ? "" : ", worst in " + states.named(finding.stateId());
    lines.addAll(
        page.paragraph(
            indent,
            finding.rule().name()
                + ids(finding, times)
                + (toldInWords(finding) ? "" : figures(finding))
                + when
                + basis(finding)
                + "."));
    if (finding.severity() == Finding.Severity.OVERRIDDEN) {
      lines.addAll(page.paragraph(indent, "Not kept because: " + finding.override()));
      return lines;
    }
    String mend = mendOf(finding);
    if (!mend.isEmpty()) {
      lines.addAll(page.paragraph(indent, mend));
    }
    return lines;
  }

  private String mendOf(Finding finding) {
    Mend mend = mends.get(finding.key());
    if (mend != null && finding.severity() == Finding.Severity.BROKEN) {
      return MendText.of(mend, finding, subjects);
    }
    return finding.mend().isEmpty() ? "" : "Mend: " + finding.mend() + ".";
  }

  /** The source of a rule that is a text, and how well that text is known. */
  private static String basis(Finding finding) {
    return switch (finding.status()) {
      case READ, READ_SECOND_HAND, MEMORY ->
          "; after " + finding.source() + " (" + RulesText.status(finding.status()) + ")";
      case COMMON_PRACTICE, BY_DEFINITION -> "";
    };
  }

  private String what(Finding finding) {
    return sentence(finding, subjects) + ".";
  }

  /** The sentence, under the plain name of the limit where it is about one; without a full stop. */
  public static String sentence(Finding finding, Subjects subjects) {
    String subject = finding.subjectIds().isEmpty() ? "" : finding.subjectIds().get(0);
    String message = finding.message();
    if (isLimit(finding.rule())) {
      String name = subjects.limit(finding.rule(), subject);
      String carries = subject + " carries ";
      return name
          + ": "
          + (message.startsWith(carries) ? message.substring(carries.length()) : message);
    }
    return Character.toUpperCase(message.charAt(0)) + message.substring(1);
  }

  /** Whether the sentence holds the figures. */
  private static boolean toldInWords(Finding finding) {
    return switch (finding.rule()) {
      case LEFT_RIGHT,
          FRONT_AXLE_SHARE,
          FRONT_AXLE_DROP,
          BALL_SHARE,
          FRONT_AXLE_FLOOR,
          REAR_OVERHANG,
          OVERALL_LENGTH,
          OVERALL_HEIGHT ->
          true;
      default -> isLimit(finding.rule()) && finding.severity() != Finding.Severity.NOTE;
    };
  }

  private static boolean isLimit(RuleId rule) {
    return switch (rule.kind()) {
      case LIMIT -> true;
      case GEOMETRY, COMPANY, REACH, NEED, PREFERENCE -> false;
    };
  }

  private static String ids(Finding finding, int times) {
    return finding.subjectIds().isEmpty()
        ? ""
        : " ["
            + String.join(", ", finding.subjectIds())
            + (times > 1 ? " and " + (times - 1) + " more" : "")
            + "]";
  }

  private static String figures(Finding finding) {
    String unit = finding.unit();
    return switch (unit) {
      case "kg" ->
          ": "
              + Figures.loadKg(finding.value())
              + " kg against "
              + Figures.near(finding.limit(), 1)
              + " kg";
      case "mm" ->
          finding.limit() > finding.value()
              ? ": " + Figures.near(finding.limit(), 0) + " mm asked for"
              : ": by " + Figures.near(Math.ceil(finding.value()), 0) + " mm";
      case "%", "bars" ->
          ": "
              + Figures.near(finding.value(), 1)
              + " against "
              + Figures.near(finding.limit(), 1)
              + " "
              + unit;
      case "things" -> ": " + Figures.near(finding.value(), 0) + " to move first";
      default -> "";
    };
  }

  private static String word(Finding.Severity severity) {
    return switch (severity) {
      case BROKEN -> "BROKEN  ";
      case DOUBTFUL -> "DOUBT   ";
      case OVERRIDDEN -> "by will ";
      case NOTE -> "note    ";
    };
  }
}
