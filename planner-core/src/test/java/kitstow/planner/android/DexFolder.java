package kitstow.planner.android;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * What was written for an app, counted.
 *
 * @param files how many files; one holds at most 65536 methods
 * @param bytes their size
 * @param methods methods they define or refer to, as the limit of a file counts them
 */
record DexFolder(int files, long bytes, int methods) {
  /** Where the header of a file has the number of its method identifiers. */
  private static final int METHOD_IDS_SIZE = 88;

  static DexFolder of(Path folder) {
    try (Stream<Path> all = Files.list(folder)) {
      List<Path> dex = all.filter(file -> file.toString().endsWith(".dex")).toList();
      long bytes = 0L;
      int methods = 0;
      for (Path file : dex) {
        ByteBuffer content =
            ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
        bytes += content.capacity();
        methods += content.getInt(METHOD_IDS_SIZE);
      }
      return new DexFolder(dex.size(), bytes, methods);
    } catch (IOException e) {
      throw new AssertionError("cannot read " + folder, e);
    }
  }
}
