package kitstow.planner.android;

import com.android.tools.r8.CompilationFailedException;
import com.android.tools.r8.CompilationMode;
import com.android.tools.r8.D8;
import com.android.tools.r8.D8Command;
import com.android.tools.r8.OutputMode;
import java.nio.file.Path;
import java.util.List;

/**
 * Byte code as a phone at API 26 gets it, without core library desugaring: records, lambdas and
 * younger methods of the platform replaced by what that level has.
 */
final class Desugared {
  /** The lowest level the library promises. */
  static final int MIN_API = 26;

  private Desugared() {}

  /** Writes class files that a desktop can load. */
  static Complaints toClassFiles(List<Path> jars, Path stubs, Path jar) {
    return run(jars, stubs, jar, OutputMode.ClassFile);
  }

  /** Writes what goes into an app: {@code classes.dex} and more of them if one is not enough. */
  static Complaints toDex(List<Path> jars, Path stubs, Path folder) {
    return run(jars, stubs, folder, OutputMode.DexIndexed);
  }

  private static Complaints run(List<Path> jars, Path stubs, Path output, OutputMode mode) {
    Complaints complaints = new Complaints();
    try {
      D8.run(
          D8Command.builder(complaints)
              .addLibraryFiles(stubs)
              .addProgramFiles(jars)
              .setMinApiLevel(MIN_API)
              .setMode(CompilationMode.RELEASE)
              .setOutput(output, mode)
              .build());
    } catch (CompilationFailedException e) {
      throw new AssertionError("D8 refused: " + complaints.others(), e);
    }
    return complaints;
  }
}
