package kitstow.planner.android;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
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

  /**
   * Writes what a compiler must see to write down a lambda, as the development kit's own jar for it
   * does; D8 takes it out again. It is not of the platform, so only compilers are given it.
   */
  static Path writeForLambdas(Path jar) {
    String packageName = "Ljava/lang/invoke/";
    String start = "(" + packageName + "MethodHandles$Lookup;Ljava/lang/String;";
    String type = packageName + "MethodType;";
    String end = ")" + packageName + "CallSite;";
    int access = Opcodes.ACC_PUBLIC | Opcodes.ACC_STATIC;
    PlatformType.Member plain =
        new PlatformType.Member(
            "metafactory",
            start + type + type + packageName + "MethodHandle;" + type + end,
            access,
            false);
    PlatformType.Member other =
        new PlatformType.Member(
            "altMetafactory", start + type + "[Ljava/lang/Object;" + end, access, false);
    write(
        List.of(
            new PlatformType(
                "java/lang/invoke/LambdaMetafactory",
                Optional.of(OBJECT),
                List.of(),
                Opcodes.ACC_PUBLIC | Opcodes.ACC_SUPER,
                List.of(plain, other))),
        jar);
    return jar;
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
        shape.signature(superName, type.interfaces()),
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

  private static void write(
      PlatformType.Member member, DesktopShape shape, boolean inInterface, ClassWriter writer) {
    Optional<DesktopShape.Member> known = shape.member(member.key());
    String signature = known.map(DesktopShape.Member::signature).orElse(null);
    int access = known.map(DesktopShape.Member::access).orElse(member.access()) & ~DROPPED;
    if ((access & VISIBLE) == 0) {
      access = (access & ~Opcodes.ACC_PRIVATE) | Opcodes.ACC_PUBLIC;
    }
    if (member.field()) {
      int ofInterface = Opcodes.ACC_PUBLIC | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL;
      int flags = inInterface ? ofInterface : access;
      writer.visitField(flags, member.name(), member.descriptor(), signature, null).visitEnd();
      return;
    }
    if (inInterface) {
      access &= ~Opcodes.ACC_FINAL;
      if (!known.isPresent()) {
        access = Opcodes.ACC_PUBLIC | (access & Opcodes.ACC_STATIC);
        access |= (access & Opcodes.ACC_STATIC) == 0 ? Opcodes.ACC_ABSTRACT : 0;
      }
    }
    if (member.name().equals("<init>")) {
      access &= ~Opcodes.ACC_ABSTRACT;
    }
    MethodVisitor method =
        writer.visitMethod(
            access,
            member.name(),
            member.descriptor(),
            signature,
            known.map(DesktopShape.Member::exceptions).orElse(List.of()).toArray(String[]::new));
    if ((access & Opcodes.ACC_ABSTRACT) == 0) {
      method.visitCode();
      method.visitInsn(Opcodes.ACONST_NULL);
      method.visitInsn(Opcodes.ATHROW);
      method.visitMaxs(1, Type.getArgumentsAndReturnSizes(member.descriptor()) >> 2);
    }
    method.visitEnd();
  }
}
