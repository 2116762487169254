package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.Reach;

/** How soon gear must be at hand, in the words of the screen. */
public final class ReachWords {
  static final List<Reach> REACHES = List.of(Reach.values());

  private ReachWords() {}

  /** The word for one. */
  public static String of(Reach reach) {
    return switch (reach) {
      case EMERGENCY -> "emergency";
      case MANY_A_DAY -> "many times a day";
      case DAILY -> "daily";
      case FEW_DAYS -> "every few days";
      case RARE -> "rarely";
    };
  }

  /** The words for all, in their order. */
  static List<String> all() {
    List<String> words = new ArrayList<>();
    REACHES.forEach(reach -> words.add(of(reach)));
    return words;
  }
}
