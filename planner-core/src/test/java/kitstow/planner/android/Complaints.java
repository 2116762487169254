package kitstow.planner.android;

import com.android.tools.r8.Diagnostic;
import com.android.tools.r8.DiagnosticsHandler;
import com.android.tools.r8.DiagnosticsLevel;
import com.android.tools.r8.diagnostic.MissingDefinitionInfo;
import com.android.tools.r8.diagnostic.MissingDefinitionsDiagnostic;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** What D8 or R8 has to say: what it found missing, and everything else. */
final class Complaints implements DiagnosticsHandler {
  private final SortedSet<String> missing = new TreeSet<>();
  private final List<String> others = new ArrayList<>();

  /** Names of classes, methods and fields that are referred to and not there. */
  SortedSet<String> missing() {
    return missing;
  }

  /** Errors and warnings of any other kind. */
  List<String> others() {
    return others;
  }

  @Override
  public void error(Diagnostic diagnostic) {
    note(diagnostic);
  }

  @Override
  public void warning(Diagnostic diagnostic) {
    note(diagnostic);
  }

  @Override
  public void info(Diagnostic diagnostic) {}

  /** Lets the run go on, so that everything that is missing can be told. */
  @Override
  public DiagnosticsLevel modifyDiagnosticsLevel(DiagnosticsLevel level, Diagnostic diagnostic) {
    return diagnostic instanceof MissingDefinitionsDiagnostic ? DiagnosticsLevel.WARNING : level;
  }

  private void note(Diagnostic diagnostic) {
    if (diagnostic instanceof MissingDefinitionsDiagnostic missed) {
      missed.getMissingDefinitions().forEach(info -> missing.add(name(info)));
    } else {
      others.add(diagnostic.getDiagnosticMessage());
    }
  }

  private static String name(MissingDefinitionInfo info) {
    if (info.isMissingClass()) {
      return info.asMissingClass().getClassReference().getTypeName();
    }
    return info.isMissingMethod()
        ? info.asMissingMethod().getMethodReference().toString()
        : info.asMissingField().getFieldReference().toString();
  }
}
