package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.report.Finding;
import kitstow.planner.report.Mend;

/** What would put a finding right, step by step. */
final class MendText {
  private static final int MOST_TOLD = 8;

  private MendText() {}

  static String of(Mend mend, Finding finding, Subjects subjects) {
    List<String> steps = steps(mend, subjects);
    return switch (mend.outcome()) {
      case MENDED -> "Mend, tried and judged again: " + numbered(steps) + ".";
      case BY_LEAVING_MORE ->
          "Mend, tried and judged again: no three changes do it; leave home "
              + String.join("; ", left(mend, subjects))
              + ".";
      case NOT_MENDED ->
          "Mend: "
              + finding.mend()
              + ". No three changes do it without making anything else worse"
              + most(mend, finding, subjects);
    };
  }

  private static List<String> steps(Mend mend, Subjects subjects) {
    List<String> steps = new ArrayList<>();
    for (Mend.Step step : mend.steps()) {
      steps.add(step(step, subjects));
    }
    return steps;
  }

  /** What takes off most where nothing is enough. */
  private static String most(Mend mend, Finding finding, Subjects subjects) {
    if (mend.steps().isEmpty()) {
      return ", nor anything left at home that may stay home"
          + (subjects.pinned() ? "; what is pinned was left where it is." : ".");
    }
    List<String> left = left(mend, subjects);
    int told = Math.min(MOST_TOLD, left.size());
    boolean leaving = mend.steps().stream().allMatch(step -> step.what() == Mend.What.LEAVE_HOME);
    return leaving
        ? ". Leaving home what may stay home, "
            + String.join("; ", left.subList(0, told))
            + (left.size() > told ? " and " + (left.size() - told) + " more" : "")
            + ", still leaves "
            + left(mend, finding)
            + "."
        : "; most comes off with "
            + numbered(steps(mend, subjects))
            + ", which still leaves "
            + left(mend, finding)
            + ".";
  }

  private static String numbered(List<String> steps) {
    if (steps.size() == 1) {
      return steps.get(0);
    }
    List<String> numbered = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      numbered.add((i + 1) + ". " + steps.get(i));
    }
    return String.join("; ", numbered);
  }

  /** One change in words. */
  static String step(Mend.Step step, Subjects subjects) {
    String what = subjects.any(step.key()) + " (" + Figures.near(step.kg(), 1) + " kg)";
    String from = subjects.any(step.from());
    String to = subjects.any(step.to());
    return switch (step.what()) {
      case TURN -> "turn or shift " + what + " in " + from;
      case MOVE, MOVE_MODULE -> "move " + what + " from " + from + " to " + to;
      case SWAP ->
          "swap "
              + what
              + " in "
              + from
              + " with "
              + subjects.any(step.withKey())
              + " ("
              + Figures.near(step.withKg(), 1)
              + " kg) in "
              + to;
      case TAKE -> "put " + what + " into " + to;
      case LEAVE_HOME -> "leave " + what + " at home, now in " + from;
    };
  }

  private static List<String> left(Mend mend, Subjects subjects) {
    List<String> left = new ArrayList<>();
    for (Mend.Step step : mend.steps()) {
      left.add(subjects.any(step.key()) + " (" + Figures.near(step.kg(), 1) + " kg)");
    }
    return left;
  }

  private static String left(Mend mend, Finding finding) {
    return finding.unit().equals("kg")
        ? Figures.loadKg(mend.after()) + " kg over"
        : Figures.near(mend.after(), 1) + " " + finding.unit() + " too many";
  }
}
