package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.RuleId;
import kitstow.planner.report.Finding;

/** Findings, gravest first: what, by how much, when, and what would mend it. */
final class FindingsText {
  private final Subjects subjects;
  private final StateNames states;
  private final Page page;

  FindingsText(Subjects subjects, StateNames states, Page page) {
    this.subjects = subjects;
    this.states = states;
    this.page = page;
  }

  List<String> lines(List<Finding> findings) {
    if (findings.isEmpty()) {
      return List.of("None: no rule is broken and nothing is in doubt.");
    }
    List<String> lines = new ArrayList<>();
    for (Finding finding : findings) {
      lines.addAll(one(finding));
    }
    return lines;
  }

  private List<String> one(Finding finding) {
    String lead = word(finding.severity());
    String indent = " ".repeat(lead.length());
    List<String> lines = new ArrayList<>(page.paragraph(lead, what(finding)));
    String when =
        finding.stateId().isEmpty() ? "" : ", worst in " + states.named(finding.stateId());
    lines.addAll(
        page.paragraph(
            indent, finding.rule().name() + ids(finding) + figures(finding) + when + "."));
    if (!finding.mend().isEmpty()) {
      lines.addAll(page.paragraph(indent, "Mend: " + finding.mend() + "."));
    }
    return lines;
  }

  /** The sentence, under the plain name of the limit where it is about one. */
  private String what(Finding finding) {
    String subject = finding.subjectIds().isEmpty() ? "" : finding.subjectIds().get(0);
    String message = finding.message();
    if (isLimit(finding.rule())) {
      String name = subjects.limit(finding.rule(), subject);
      String rest = message.startsWith(subject) ? message.substring(subject.length()) : null;
      return rest == null ? name + ": " + message + "." : name + rest + ".";
    }
    return Character.toUpperCase(message.charAt(0)) + message.substring(1) + ".";
  }

  private static boolean isLimit(RuleId rule) {
    return switch (rule.kind()) {
      case LIMIT -> true;
      case GEOMETRY, COMPANY, REACH, NEED, PREFERENCE -> false;
    };
  }

  private static String ids(Finding finding) {
    return finding.subjectIds().isEmpty()
        ? ""
        : " [" + String.join(", ", finding.subjectIds()) + "]";
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
      case NOTE -> "note    ";
    };
  }
}
