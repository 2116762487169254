package kitstow.tui.app;

/**
 * A row of a page of things to edit.
 *
 * @param part what sort of thing it is
 * @param id which one; "" for the row that adds one
 */
public record EditRow(Part part, String id) {
  /** Sorts of things. */
  public enum Part {
    /** Name of the scenario. */
    NAME("Scenario", ""),
    /** Somebody on the trip. */
    PERSON("People", "another person"),
    /** A leg. */
    LEG("Legs", "another leg"),
    /** A trailer. */
    TRAILER("Trailers", "another trailer"),
    /** What is used along the way. */
    USE("Used along the way", ""),
    /** The ute with its tray and canopy. */
    VEHICLE("Vehicle", ""),
    /** Axle loads as weighed. */
    WEIGHING("Weighing", ""),
    /** A part that can come off. */
    PART("Parts that come off", ""),
    /** What a tank holds. */
    TANK("Tanks", ""),
    /** A module. */
    MODULE("Modules", "a module from the catalogue"),
    /** A fixed addition. */
    ACCESSORY("Accessories", "an accessory from the catalogue");

    private final String title;
    private final String more;

    Part(String title, String more) {
      this.title = title;
      this.more = more;
    }

    /** Heading over its rows. */
    public String title() {
      return title;
    }

    /** What the row that adds one says; "" where none can be added. */
    public String more() {
      return more;
    }
  }

  /** Whether it is the row that adds one. */
  public boolean adds() {
    return id.isEmpty();
  }
}
