package kitstow.planner.android;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * How the running desktop platform declares a class that the phone's has too. The description of
 * the phone's platform does not say what is abstract, which type parameters there are and what a
 * method throws; the same class on the desktop does.
 */
final class DesktopShape extends ClassVisitor {
  private final String name;
  private final Map<String, Member> members = new HashMap<>();
  private OptionalInt access = OptionalInt.empty();
  private String signature = "";
  private List<String> supertypes = List.of();

  /**
   * A field or method.
   *
   * @param access access flags
   * @param signature generic signature, if it has one
   * @param exceptions what it throws
   */
  record Member(int access, @Nullable String signature, List<String> exceptions) {}

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

  /** A member by its key, if the desktop has it. */
  Optional<Member> member(String key) {
    return Optional.ofNullable(members.get(key));
  }

  /**
   * The generic signature of the class, if it has one: the desktop's own where the class has the
   * same supertypes on the phone, else its type parameters with the phone's supertypes.
   */
  @Nullable String signature(String superName, List<String> interfaces) {
    if (signature.isEmpty()) {
      return null;
    }
    List<String> phones = new ArrayList<>(List.of(superName));
    phones.addAll(interfaces);
    if (phones.equals(supertypes)) {
      return signature;
    }
    StringBuilder text = new StringBuilder();
    if (signature.startsWith("<")) {
      text.append(signature, 0, endOfParameters(signature));
    }
    phones.forEach(supertype -> text.append('L').append(supertype).append(';'));
    return text.toString();
  }

  @Override
  public void visit(
      int version,
      int flags,
      String className,
      @Nullable String generic,
      @Nullable String superName,
      String[] interfaces) {
    access = OptionalInt.of(flags);
    signature = generic == null ? "" : generic;
    List<String> all = new ArrayList<>();
    all.add(superName);
    all.addAll(List.of(interfaces));
    supertypes = all;
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
      @Nullable String generic,
      String @Nullable [] exceptions) {
    members.put(
        PlatformType.Member.key(method, descriptor, /* field= */ false),
        new Member(flags, generic, exceptions == null ? List.of() : List.of(exceptions)));
    return null;
  }

  @Override
  public @Nullable FieldVisitor visitField(
      int flags,
      String field,
      String descriptor,
      @Nullable String generic,
      @Nullable Object value) {
    members.put(
        PlatformType.Member.key(field, descriptor, /* field= */ true),
        new Member(flags, generic, List.of()));
    return null;
  }
}
