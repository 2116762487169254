package kitstow.planner.android;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** Looks up every class, method and field that byte code refers to, in the app and the platform. */
final class Linker {
  private static final String OBJECT = "java/lang/Object";

  private final ClassFiles app;
  private final ClassFiles platform;
  private final Map<String, Optional<Declared>> declaredByName = new HashMap<>();
  private final SortedSet<String> unlinked = new TreeSet<>();

  Linker(ClassFiles app, ClassFiles platform) {
    this.app = app;
    this.platform = platform;
  }

  /** What the classes refer to and is not there, each with one place that refers to it. */
  SortedSet<String> unlinked(Collection<String> classNames) {
    for (String name : classNames) {
      byte[] bytes =
          app.bytes(name).orElseThrow(() -> new AssertionError("not a class of the app: " + name));
      new ClassReader(bytes).accept(new References(this, name), ClassReader.SKIP_DEBUG);
    }
    return unlinked;
  }

  void type(String name, String from) {
    String plain = name;
    if (name.startsWith("[")) {
      plain = name.replace("[", "");
      if (!plain.startsWith("L")) {
        return;
      }
      plain = plain.substring(1, plain.length() - 1);
    }
    if (!declared(plain).isPresent()) {
      unlinked.add(plain + " <- " + from);
    }
  }

  void member(String owner, String key, String from) {
    type(owner, from);
    String holder = owner.startsWith("[") ? OBJECT : owner;
    if (declared(holder).isPresent() && !has(holder, key)) {
      unlinked.add(owner + "." + key + " <- " + from);
    }
  }

  /** Code that the machine makes while running; the phone's level has no way to. */
  void dynamic(String bootstrap, String from) {
    unlinked.add("invokedynamic " + bootstrap + " <- " + from);
  }

  private boolean has(String name, String key) {
    Optional<Declared> found = declared(name);
    if (!found.isPresent()) {
      return false;
    }
    Declared declared = found.get();
    if (declared.members.contains(key) || has(declared.superName, key)) {
      return true;
    }
    for (String each : declared.interfaces) {
      if (has(each, key)) {
        return true;
      }
    }
    return false;
  }

  private Optional<Declared> declared(String name) {
    return declaredByName.computeIfAbsent(
        name, n -> app.bytes(n).or(() -> platform.bytes(n)).map(Declared::of));
  }

  /** What a class declares and inherits from. */
  private static final class Declared extends ClassVisitor {
    private final Set<String> members = new HashSet<>();
    private String superName = "";
    private String[] interfaces = {};

    private Declared() {
      super(Opcodes.ASM9);
    }

    static Declared of(byte[] bytes) {
      Declared declared = new Declared();
      new ClassReader(bytes).accept(declared, ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG);
      return declared;
    }

    @Override
    public void visit(
        int version,
        int access,
        String name,
        @Nullable String signature,
        @Nullable String superOf,
        String[] interfacesOf) {
      superName = superOf == null ? "" : superOf;
      interfaces = interfacesOf;
    }

    @Override
    public @Nullable MethodVisitor visitMethod(
        int access,
        String name,
        String descriptor,
        @Nullable String signature,
        String @Nullable [] exceptions) {
      members.add(PlatformType.Member.key(name, descriptor, /* field= */ false));
      return null;
    }

    @Override
    public @Nullable FieldVisitor visitField(
        int access,
        String name,
        String descriptor,
        @Nullable String signature,
        @Nullable Object value) {
      members.add(PlatformType.Member.key(name, descriptor, /* field= */ true));
      return null;
    }
  }
}
