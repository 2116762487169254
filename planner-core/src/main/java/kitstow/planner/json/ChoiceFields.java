package kitstow.planner.json;

import kitstow.planner.model.Need;

/** Reads how much a module or an item is wanted. */
final class ChoiceFields {
  private ChoiceFields() {}

  /** What leaving something home costs if the scenario does not say. */
  static int usualValue(Need need) {
    return switch (need) {
      case MUST -> 100;
      case SHOULD -> 50;
      case NICE -> 10;
    };
  }

  /** What leaving it home costs. */
  static int value(Fields fields, Need need) {
    return fields.wholeOr("value", Measure.VALUE, usualValue(need));
  }
}
