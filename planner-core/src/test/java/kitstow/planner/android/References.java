package kitstow.planner.android;

import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Tells a {@link Linker} everything one class refers to. */
final class References extends ClassVisitor {
  private final Linker linker;
  private final String className;

  References(Linker linker, String className) {
    super(Opcodes.ASM9);
    this.linker = linker;
    this.className = className;
  }

  @Override
  public void visit(
      int version,
      int access,
      String name,
      @Nullable String signature,
      @Nullable String superName,
      String[] interfaces) {
    if (superName != null) {
      linker.type(superName, className);
    }
    for (String each : interfaces) {
      linker.type(each, className);
    }
  }

  @Override
  public MethodVisitor visitMethod(
      int access,
      String name,
      String descriptor,
      @Nullable String signature,
      String @Nullable [] exceptions) {
    return new InMethod(className + "." + name);
  }

  private final class InMethod extends MethodVisitor {
    private final String from;

    InMethod(String from) {
      super(Opcodes.ASM9);
      this.from = from;
    }

    @Override
    public void visitMethodInsn(
        int opcode, String owner, String name, String descriptor, boolean isInterface) {
      linker.member(owner, PlatformType.Member.key(name, descriptor, /* field= */ false), from);
    }

    @Override
    public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
      linker.member(owner, PlatformType.Member.key(name, descriptor, /* field= */ true), from);
    }

    @Override
    public void visitTypeInsn(int opcode, String type) {
      linker.type(type, from);
    }

    @Override
    public void visitMultiANewArrayInsn(String descriptor, int dimensions) {
      linker.type(descriptor, from);
    }

    @Override
    public void visitLdcInsn(Object value) {
      if (value instanceof Type type
          && type.getSort() >= Type.ARRAY
          && type.getSort() <= Type.OBJECT) {
        linker.type(type.getInternalName(), from);
      }
    }

    @Override
    public void visitTryCatchBlock(Label start, Label end, Label handler, @Nullable String type) {
      if (type != null) {
        linker.type(type, from);
      }
    }

    @Override
    public void visitInvokeDynamicInsn(
        String name, String descriptor, Handle bootstrap, Object... arguments) {
      linker.dynamic(bootstrap.getOwner() + "." + bootstrap.getName(), from);
    }
  }
}
