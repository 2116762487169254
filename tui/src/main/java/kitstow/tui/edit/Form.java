package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A form being filled in: what stands in each field, looked at while it is typed.
 *
 * @param editor what is edited
 * @param texts what stands in the fields
 * @param at the field one is in
 * @param fresh whether nothing was typed in it since one is there
 */
public record Form(Editor editor, List<String> texts, int at, boolean fresh) {
  /** Copies its collections. */
  public Form {
    texts = List.copyOf(texts);
  }

  /** The form of something as it is. */
  public static Form of(Editor editor) {
    return new Form(editor, editor.texts(), 0, /* fresh= */ true);
  }

  /** The field one is in. */
  public Field field() {
    return editor.fields().get(at);
  }

  /** What stands in the field one is in. */
  public String text() {
    return texts.get(at);
  }

  /** Another field. */
  public Form in(int field) {
    return new Form(editor, texts, Math.floorMod(field, texts.size()), /* fresh= */ true);
  }

  /** Other text in the field one is in. */
  public Form with(String text) {
    List<String> other = new ArrayList<>(texts);
    other.set(at, text);
    return new Form(editor, other, at, /* fresh= */ false);
  }

  /** Whether what is typed next takes the place of a figure that stands there. */
  public boolean overwrites() {
    return fresh && field().isFigure() && !text().isEmpty();
  }

  /** With a sign more; the first one in a figure begins another figure. */
  public Form typed(String sign) {
    return with(overwrites() ? sign : text() + sign);
  }

  /** The next word in a field of words. */
  public Form turned(int by) {
    List<String> words = field().words();
    return words.isEmpty()
        ? this
        : with(words.get(Math.floorMod(words.indexOf(text()) + by, words.size())));
  }

  /** The next word that begins with a sign; in a space's case simply the next. */
  public Form turnedTo(String sign) {
    List<String> words = field().words();
    String wanted = sign.strip().toLowerCase(Locale.ROOT);
    for (int i = 1; i <= words.size(); i++) {
      Form turned = turned(i);
      if (turned.text().toLowerCase(Locale.ROOT).startsWith(wanted)) {
        return turned;
      }
    }
    return this;
  }

  /** What is wrong with a field. */
  public Optional<String> fault(Field field) {
    return field.fault(text(field)).or(() -> editor.fault(this, field));
  }

  /** Whether every field can be used. */
  public boolean sound() {
    return editor.fields().stream().allMatch(field -> fault(field).isEmpty());
  }

  /** What stands in a field. */
  public String text(Field field) {
    return texts.get(editor.fields().indexOf(field));
  }

  /** The value of a field without a fault, in the unit it is read in. */
  public long value(Field field) {
    return field.value(text(field));
  }

  /** The place of the word in a field of words. */
  public int word(Field field) {
    return Math.toIntExact(value(field));
  }
}
