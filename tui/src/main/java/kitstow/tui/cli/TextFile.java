package kitstow.tui.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Reads a text file in UTF-8. */
final class TextFile {
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private TextFile() {}

  /** The text, without a byte order mark; absent, with a fault noted, where there is none. */
  static Optional<String> read(Path file, InputFaults faults) {
    String name = file.toString();
    if (!Files.exists(file)) {
      faults.file(name, "there is no such file", "check the name and the folder");
    } else if (Files.isDirectory(file)) {
      faults.file(name, "is a folder, must be a file", "name the JSON file in it");
    } else {
      try {
        return Optional.of(decode(Files.readAllBytes(file)));
      } catch (CharacterCodingException e) {
        faults.file(name, "is not text in UTF-8", "save it again as UTF-8");
      } catch (IOException e) {
        faults.file(name, "cannot be read", "check that you may open it and that it is whole");
      }
    }
    return Optional.empty();
  }

  private static String decode(byte[] bytes) throws CharacterCodingException {
    String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
  }
}
