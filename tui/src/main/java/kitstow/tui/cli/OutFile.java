package kitstow.tui.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/** A file to be written whole or not at all: an interrupted run leaves no half of one. */
public final class OutFile {
  private OutFile() {}

  /** Notes what makes it useless to try, before any work is done for it. */
  static void check(Path file, InputFaults faults) {
    Path folder = folder(file);
    if (Files.isDirectory(file)) {
      faults.file(file.toString(), "is a folder, must be a file", "name the file to write");
    } else if (!Files.isDirectory(folder)) {
      faults.file(file.toString(), "its folder is not there", "make the folder " + folder);
    } else if (!Files.isWritable(folder)) {
      faults.file(file.toString(), "its folder cannot be written to", "name another folder");
    }
  }

  /** Writes a text; tells why where it cannot. */
  public static Optional<String> write(Path file, String text) {
    try {
      Path half = folder(file).resolve("." + file.getFileName() + ".part");
      try {
        Files.writeString(half, text, UTF_8);
        move(half, file);
      } finally {
        Files.deleteIfExists(half);
      }
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(
          file + ": could not be written. Hint: check the disk and the rights of the folder");
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Path folder(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return parent == null ? file.toAbsolutePath() : parent;
  }
}
