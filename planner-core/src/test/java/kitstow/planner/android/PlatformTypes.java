package kitstow.planner.android;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import org.objectweb.asm.Opcodes;

/**
 * Reads the description of the platform that also serves the signature check: the expediter file of
 * gummy-bears, gzipped protocol buffers. Field numbers were read off that file.
 */
final class PlatformTypes {
  private static final int INTERFACE = 2;
  private static final int FINAL = 1;
  private static final int PROTECTED = 2;
  private static final int STATIC = 1;

  private PlatformTypes() {}

  static List<PlatformType> read(Path file) {
    try (InputStream in = new GZIPInputStream(Files.newInputStream(file))) {
      WireReader reader = new WireReader(in.readAllBytes());
      List<PlatformType> types = new ArrayList<>();
      while (reader.next()) {
        if (reader.field() == 2) {
          types.add(type(reader.message()));
        } else {
          reader.skip();
        }
      }
      return types;
    } catch (IOException e) {
      throw new AssertionError("cannot read the platform's description " + file, e);
    }
  }

  private static PlatformType type(WireReader reader) {
    String name = "";
    Optional<String> superName = Optional.empty();
    List<String> interfaces = new ArrayList<>();
    List<PlatformType.Member> members = new ArrayList<>();
    int flavour = 0;
    int extensibility = 0;
    while (reader.next()) {
      switch (reader.field()) {
        case 1 -> name = reader.text();
        case 2 -> superName = Optional.of(reader.text());
        case 3 -> interfaces.add(reader.text());
        case 4 -> members.add(member(reader.message(), /* field= */ true));
        case 5 -> members.add(member(reader.message(), /* field= */ false));
        case 7 -> flavour = reader.number();
        case 8 -> extensibility = reader.number();
        default -> reader.skip();
      }
    }
    int access = Opcodes.ACC_PUBLIC;
    access |=
        flavour == INTERFACE ? Opcodes.ACC_INTERFACE | Opcodes.ACC_ABSTRACT : Opcodes.ACC_SUPER;
    access |= extensibility == FINAL ? Opcodes.ACC_FINAL : 0;
    return new PlatformType(name, superName, interfaces, access, members);
  }

  private static PlatformType.Member member(WireReader reader, boolean field) {
    String name = "";
    String descriptor = "";
    int protection = 0;
    int declaration = 0;
    while (reader.next()) {
      switch (reader.field()) {
        case 1 -> {
          WireReader reference = reader.message();
          while (reference.next()) {
            switch (reference.field()) {
              case 1 -> name = reference.text();
              case 2 -> descriptor = reference.text();
              default -> reference.skip();
            }
          }
        }
        case 2 -> protection = reader.number();
        case 3 -> declaration = reader.number();
        default -> reader.skip();
      }
    }
    int access = protection == PROTECTED ? Opcodes.ACC_PROTECTED : Opcodes.ACC_PUBLIC;
    access |= declaration == STATIC ? Opcodes.ACC_STATIC : 0;
    return new PlatformType.Member(name, descriptor, access, field);
  }
}
