package kitstow.planner.android;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * How the running desktop platform declares a class that the phone's has too. The description of
 * the phone's platform does not say what is abstract and which type parameters a class has; the
 * same class on the desktop does.
 */
final class DesktopShape extends ClassVisitor {
  private final String name;
  private final Map<String, Integer> memberAccess = new HashMap<>();
  private OptionalInt access = OptionalInt.empty();
  private String typeParameters = "";

  private DesktopShape(String name) {
    super(Opcodes.ASM9);
    this.name = name;
  }

  /** The shape of a class by its name with slashes; empty if the desktop does not have it. */
  static DesktopShape of(String name) {
    DesktopShape shape = new DesktopShape(name);
    boolean ofThePlatform =
        name.startsWith("java") || name.startsWith("org/w3c/") || name.startsWith("org/xml/");
    try (InputStream in =
        ofThePlatform ? ClassLoader.getSystemResourceAsStream(name + ".class") : null) {
      if (in != null) {
        new ClassReader(in).accept(shape, ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return shape;
  }

  OptionalInt access() {
    return access;
  }

  /** Access flags of a member by its key, if the desktop has it. */
  OptionalInt accessOf(String memberKey) {
    Integer flags = memberAccess.get(memberKey);
    return flags == null ? OptionalInt.empty() : OptionalInt.of(flags);
  }

  /** Type parameters as in a generic signature, brackets included; empty if there are none. */
  String typeParameters() {
    return typeParameters;
  }

  @Override
  public void visit(
      int version,
      int flags,
      String className,
      @Nullable String signature,
      @Nullable String superName,
      String @Nullable [] interfaces) {
    access = OptionalInt.of(flags);
    if (signature != null && signature.startsWith("<")) {
      typeParameters = signature.substring(0, endOfParameters(signature));
    }
  }

  private static int endOfParameters(String signature) {
    int depth = 0;
    int at = 0;
    do {
      char c = signature.charAt(at++);
      depth += c == '<' ? 1 : c == '>' ? -1 : 0;
    } while (depth > 0);
    return at;
  }

  /** A nested class has its full flags only here. */
  @Override
  public void visitInnerClass(
      String inner, @Nullable String outer, @Nullable String simpleName, int flags) {
    if (inner.equals(name)) {
      int kept = flags & ~(Opcodes.ACC_STATIC | Opcodes.ACC_PROTECTED | Opcodes.ACC_PRIVATE);
      access = OptionalInt.of((access.orElse(0) & Opcodes.ACC_SUPER) | kept | Opcodes.ACC_PUBLIC);
    }
  }

  @Override
  public @Nullable MethodVisitor visitMethod(
      int flags,
      String method,
      String descriptor,
      @Nullable String signature,
      String @Nullable [] exceptions) {
    memberAccess.put(PlatformType.Member.key(method, descriptor, /* field= */ false), flags);
    return null;
  }

  @Override
  public @Nullable FieldVisitor visitField(
      int flags,
      String field,
      String descriptor,
      @Nullable String signature,
      @Nullable Object value) {
    memberAccess.put(PlatformType.Member.key(field, descriptor, /* field= */ true), flags);
    return null;
  }
}
