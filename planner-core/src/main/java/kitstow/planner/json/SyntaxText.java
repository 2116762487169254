package kitstow.planner.json;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitstow.planner.problem.Code;

/** Says in plain words where a text stops being JSON, instead of the token reader's own message. */
final class SyntaxText {
  private static final Pattern POSITION = Pattern.compile("at line (\\d+) column (\\d+)");

  /** What the token reader's messages begin with, and what we say. */
  private static final Map<String, String> WORDS = new LinkedHashMap<>();

  static {
    WORDS.put("End of input", "the text ends too early");
    WORDS.put("Unterminated object", "a comma or a closing } is missing");
    WORDS.put("Unterminated array", "a comma or a closing ] is missing");
    WORDS.put("Unterminated string", "a closing double quote is missing");
    WORDS.put("Unterminated escape", "an escape in a text is not complete");
    WORDS.put("Invalid escape", "a text has an escape that JSON does not know");
    WORDS.put("Malformed Unicode", "a text has an escape that JSON does not know");
    WORDS.put("Unescaped control", "a text has a control character in it, such as a line end");
    WORDS.put("Expected ':'", "a colon is missing after a key");
    WORDS.put("Expected name", "a key in double quotes is missing; is there a comma too many?");
    WORDS.put("Expected value", "a value is missing");
    WORDS.put("text after the end", "there is more text after the end");
  }

  private SyntaxText() {}

  static void note(IOException e, Place start, Faults faults) {
    String message = String.valueOf(e.getMessage());
    String what =
        "there is something that JSON does not allow, such as a word without quotes or in curly ones,"
            + " a comma too many, a comma for decimals or a comment";
    for (Map.Entry<String, String> word : WORDS.entrySet()) {
      if (message.startsWith(word.getKey())) {
        what = word.getValue();
      }
    }
    Matcher position = POSITION.matcher(message);
    String where =
        position.find() ? " at line " + position.group(1) + ", column " + position.group(2) : "";
    faults.error(
        Code.NOT_JSON,
        start,
        "is not JSON" + where + ": " + what,
        "look at that place and just before it; reading stopped there");
  }
}
