package kitstow.planner.android;

import java.util.List;
import java.util.Optional;

/**
 * A class of the platform. Names and descriptors are as in class files.
 *
 * @param name name, with slashes
 * @param superName the class it extends, unless the description names none
 * @param interfaces what it implements
 * @param access access flags
 * @param members fields and methods that others can see
 */
record PlatformType(
    String name,
    Optional<String> superName,
    List<String> interfaces,
    int access,
    List<Member> members) {

  /**
   * A field or method.
   *
   * @param name name
   * @param descriptor type, or parameters and result
   * @param access access flags
   * @param field whether it is a field
   */
  record Member(String name, String descriptor, int access, boolean field) {
    /** Tells it from all other members of its class. */
    String key() {
      return key(name, descriptor, field);
    }

    static String key(String name, String descriptor, boolean field) {
      return name + (field ? ":" : "") + descriptor;
    }
  }
}
