package kitstow.planner.android;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The classes just built, with all they need, as a phone gets them; made once for all tests. */
final class PhoneLibrary {
  private static final Path FOLDER = Path.of("target", "android");

  static final Phone PHONE = Phone.atMinimum(FOLDER);

  /** Jars before they were desugared, and with the files that are not classes. */
  static final List<Path> JARS = jars();

  static final Path DESUGARED = desugared();

  private PhoneLibrary() {}

  /** Calls a method of the library's tests or of jars given beside it. */
  static Phone.Run call(List<Path> besides, String className, String method, Object... arguments) {
    List<Path> app = new ArrayList<>(List.of(DESUGARED));
    app.addAll(besides);
    return PHONE.call(app, JARS, className, method, arguments);
  }

  private static List<Path> jars() {
    List<Path> jars = new ArrayList<>(Phone.dependencies());
    jars.add(ClassFiles.pack(Path.of("target", "classes"), FOLDER.resolve("planner.jar")));
    return List.copyOf(jars);
  }

  private static Path desugared() {
    List<Path> program = new ArrayList<>(JARS);
    program.add(SourceCode.compiledTest(OneSolve.class));
    Path jar = FOLDER.resolve("desugared.jar");
    Complaints complaints = Desugared.toClassFiles(program, PHONE.stubs(), jar);
    assertThat(complaints.missing()).isEmpty();
    assertThat(complaints.others()).isEmpty();
    return jar;
  }
}
