package kitstow.planner.android;

import com.android.tools.r8.CompilationFailedException;
import com.android.tools.r8.CompilationMode;
import com.android.tools.r8.OutputMode;
import com.android.tools.r8.R8;
import com.android.tools.r8.R8Command;
import com.android.tools.r8.origin.Origin;
import java.nio.file.Path;
import java.util.List;

/** An app shrunk, optimised and renamed by R8 in full mode, with the rules that its jars bring. */
final class Shrunk {
  private Shrunk() {}

  /** Writes what goes into an app: {@code classes.dex} and more of them if one is not enough. */
  static Complaints toDex(List<Path> jars, List<String> rules, Path stubs, Path folder) {
    Complaints complaints = new Complaints();
    R8Command.Builder command = command(jars, rules, stubs, complaints);
    command.setMinApiLevel(Desugared.MIN_API).setOutput(folder, OutputMode.DexIndexed);
    return run(command, complaints);
  }

  /** Writes class files that a desktop can load, from jars that are desugared before. */
  static Complaints toClassFiles(List<Path> desugared, List<String> rules, Path stubs, Path jar) {
    Complaints complaints = new Complaints();
    R8Command.Builder command = command(desugared, rules, stubs, complaints);
    command.setOutput(jar, OutputMode.ClassFile);
    return run(command, complaints);
  }

  private static R8Command.Builder command(
      List<Path> jars, List<String> rules, Path stubs, Complaints complaints) {
    return R8Command.builder(complaints)
        .addLibraryFiles(stubs)
        .addProgramFiles(jars)
        .addProguardConfiguration(rules, Origin.unknown())
        .setMode(CompilationMode.RELEASE);
  }

  private static Complaints run(R8Command.Builder command, Complaints complaints) {
    try {
      R8.run(command.build());
    } catch (CompilationFailedException e) {
      throw new AssertionError("R8 refused: " + complaints.others(), e);
    }
    return complaints;
  }
}
