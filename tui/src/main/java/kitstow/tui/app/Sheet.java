package kitstow.tui.app;

import java.util.List;
import kitstow.tui.keys.Place;

/** Pages of an opened scenario. */
public enum Sheet {
  /** The load in pictures. */
  LOAD("Load", Place.LOAD),
  /** Every limit. */
  LIMITS("Limits", Place.ROWS),
  /** What goes in where, in which order. */
  PACK("Pack", Place.PACKING),
  /** What stays home, and why. */
  HOME("Home", Place.TEXT),
  /** Room left in each space. */
  ROOM("Room", Place.TEXT),
  /** What is broken, doubtful or worth knowing. */
  FINDINGS("Findings", Place.TEXT),
  /** Plans side by side. */
  COMPARE("Compare", Place.TEXT),
  /** The gear list. */
  GEAR("Gear", Place.GEAR),
  /** Who travels, over which legs, with which trailer, using what. */
  TRIP("Trip", Place.TRIP),
  /** The weighing of the ute, its tanks and its modules. */
  UTE("Ute", Place.EDITING);

  private final String title;
  private final Place place;

  Sheet(String title, Place place) {
    this.title = title;
    this.place = place;
  }

  /** Name of the page. */
  public String title() {
    return title;
  }

  /** Which keys hold on it. */
  public Place place() {
    return place;
  }

  /** Whether it is a page of things to edit, with rows of several sorts. */
  public boolean edits() {
    return this == TRIP || this == UTE;
  }

  /** Whether one of its rows is marked, to do something with it. */
  public boolean marks() {
    return edits() || this == PACK || this == GEAR;
  }

  /** The page so many further on. */
  public Sheet plus(int by) {
    List<Sheet> all = List.of(values());
    return all.get(Math.floorMod(all.indexOf(this) + by, all.size()));
  }

  /** The digit that opens it: from 1 on, 0 for the tenth. */
  public int number() {
    return (List.of(values()).indexOf(this) + 1) % 10;
  }
}
