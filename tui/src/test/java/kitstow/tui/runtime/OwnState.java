package kitstow.tui.runtime;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A folder of a test's own, in which the program keeps its state too. */
abstract class OwnState {
  @TempDir Path folder;

  @BeforeEach
  void stateIsKeptInTheFolder() {
    System.setProperty("kitstow.state", folder.resolve("state").toString());
  }

  @AfterEach
  void stateIsKeptWhereItWas() {
    System.clearProperty("kitstow.state");
  }
}
