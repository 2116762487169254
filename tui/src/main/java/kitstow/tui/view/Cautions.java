package kitstow.tui.view;

import java.util.ArrayList;
import java.util.List;

/** What every reader of a report must know before relying on it. */
public final class Cautions {
  private static final List<String> TEXTS =
      List.of(
          "Estimates only. The plate, the handbook and a weighbridge rule. Verify by weighing each"
              + " axle, loaded, with people.",
          "Static figures on level ground: no slosh, no dynamic factor, no frame strength, no"
              + " suspension, no braking or roll-over. This is not a certificate.",
          "Weight-distributing hitches are not modelled.",
          "Overloading is unlawful and unsafe. A higher total does not raise an axle, tyre, roof,"
              + " tow-bar or ball limit.",
          "The vehicle maker's roof limit governs, racks and tents included; the lower of roof and"
              + " rack applies.",
          "Changes to body, seats, tanks, suspension or ratings need certified approval.",
          "Gas, fuel and battery work belongs to licensed people and local codes.",
          "Secure every load against braking and slopes; heavy lifts need a second person.");

  private Cautions() {}

  /** The cautions, one paragraph each. */
  public static List<String> lines(Page page) {
    List<String> lines = new ArrayList<>();
    for (String text : TEXTS) {
      lines.addAll(page.paragraph("- ", text));
    }
    return lines;
  }
}
