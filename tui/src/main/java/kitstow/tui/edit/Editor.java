package kitstow.tui.edit;

import java.util.List;
import java.util.Optional;

/** Something that is edited field by field. */
public interface Editor {
  /** What is edited. */
  String title();

  /** What is done when the form is taken, in a few words: "change the fridge". */
  String deed();

  /** Fields in their order. */
  List<Field> fields();

  /** What stands in them at first. */
  List<String> texts();

  /** What is wrong with a field that is sound by itself. */
  default Optional<String> fault(Form form, Field field) {
    return Optional.empty();
  }

  /** What is worth knowing of what stands in a sound field. */
  default Optional<String> note(Form form, Field field) {
    return Optional.empty();
  }

  /** What a sound form makes of a design. */
  Design after(Design before, Form form);
}
