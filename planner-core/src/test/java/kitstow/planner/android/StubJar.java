package kitstow.planner.android;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Writes the platform as a jar to compile and link against: every class and member it has, without
 * what they do. Classes of {@code android} are left out, for the library uses none.
 */
final class StubJar {
  private static final String OBJECT = "java/lang/Object";
  private static final int VISIBLE = Opcodes.ACC_PUBLIC | Opcodes.ACC_PROTECTED;

  /** Flags that say nothing to whoever links, or cannot stand on a stub. */
  private static final int DROPPED =
      Opcodes.ACC_NATIVE
          | Opcodes.ACC_SYNCHRONIZED
          | Opcodes.ACC_STRICT
          | Opcodes.ACC_DEPRECATED
          | Opcodes.ACC_RECORD;

  private StubJar() {}

  static void write(List<PlatformType> types, Path jar) {
    try (OutputStream out = Files.newOutputStream(jar);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (PlatformType type : types) {
        String name = type.name();
        if (!name.startsWith("android/")
            && !name.startsWith("com/android/")
            && !name.startsWith("[")) {
          zip.putNextEntry(new ZipEntry(name + ".class"));
          zip.write(stub(type));
          zip.closeEntry();
        }
      }
    } catch (IOException e) {
      throw new AssertionError("cannot write the platform's stubs to " + jar, e);
    }
  }

  private static byte[] stub(PlatformType type) {
    DesktopShape shape = DesktopShape.of(type.name());
    int access = shape.access().orElse(type.access()) & ~DROPPED;
    boolean isInterface = (access & Opcodes.ACC_INTERFACE) != 0;
    String superName = isInterface ? OBJECT : type.superName().orElse(OBJECT);
    ClassWriter writer = new ClassWriter(0);
    writer.visit(
        Opcodes.V1_8,
        access,
        type.name(),
        shape.typeParameters().isEmpty()
            ? null
            : genericSignature(shape.typeParameters(), superName, type.interfaces()),
        type.name().equals(OBJECT) ? null : superName,
        type.interfaces().toArray(String[]::new));
    Set<String> written = new HashSet<>();
    for (PlatformType.Member member : type.members()) {
      if (written.add(member.key()) && !member.name().equals("<clinit>")) {
        write(member, shape, isInterface, writer);
      }
    }
    writer.visitEnd();
    return writer.toByteArray();
  }

  /** Without it the shrinker takes all type arguments for errors and drops them. */
  private static String genericSignature(
      String typeParameters, String superName, List<String> interfaces) {
    StringBuilder text =
        new StringBuilder(typeParameters).append('L').append(superName).append(';');
    interfaces.forEach(name -> text.append('L').append(name).append(';'));
    return text.toString();
  }

  private static void write(
      PlatformType.Member member, DesktopShape shape, boolean inInterface, ClassWriter writer) {
    int access = shape.accessOf(member.key()).orElse(member.access()) & ~DROPPED;
    if ((access & VISIBLE) == 0) {
      access = (access & ~Opcodes.ACC_PRIVATE) | Opcodes.ACC_PUBLIC;
    }
    if (member.field()) {
      int ofInterface = Opcodes.ACC_PUBLIC | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL;
      writer
          .visitField(
              inInterface ? ofInterface : access, member.name(), member.descriptor(), null, null)
          .visitEnd();
      return;
    }
    if (inInterface) {
      access &= ~Opcodes.ACC_FINAL;
      if (!shape.accessOf(member.key()).isPresent()) {
        access = Opcodes.ACC_PUBLIC | (access & Opcodes.ACC_STATIC);
        access |= (access & Opcodes.ACC_STATIC) == 0 ? Opcodes.ACC_ABSTRACT : 0;
      }
    }
    if (member.name().equals("<init>")) {
      access &= ~Opcodes.ACC_ABSTRACT;
    }
    MethodVisitor method =
        writer.visitMethod(access, member.name(), member.descriptor(), null, null);
    if ((access & Opcodes.ACC_ABSTRACT) == 0) {
      method.visitCode();
      method.visitInsn(Opcodes.ACONST_NULL);
      method.visitInsn(Opcodes.ATHROW);
      method.visitMaxs(1, Type.getArgumentsAndReturnSizes(member.descriptor()) >> 2);
    }
    method.visitEnd();
  }
}
