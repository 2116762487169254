package kitstow.planner.json;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.Item;
import kitstow.planner.model.Tank;

/** What the parts of a scenario may name, filled as its parts are read. */
final class Known {
  /** Everything with mass. */
  final BodyKeys keys;

  /** Bays and spaces of ute, tray and canopy: one name space. */
  final Names regions;

  /** Bays, those of modules as {@code module/bay}. */
  final Names bays;

  /** Spaces, those of modules as {@code module/space}, and bays that are spaces when empty. */
  final Names spaces;

  /** Doors of the canopy. */
  final Names doors;

  /** Seats of the ute. */
  final Names seats;

  /** Tanks, those of modules as {@code module/tank}. */
  final Names tanks;

  /** Gear. */
  final Names items;

  /** Trailers. */
  final Names trailers;

  /** Where not everything opens. */
  final Names stops;

  /** Gear by id, without that whose entry is unknown. */
  final Map<String, Item> itemById = new HashMap<>();

  /** Tanks by id. */
  final Map<String, Tank> tankById = new HashMap<>();

  Known(Faults faults) {
    keys = new BodyKeys(faults);
    regions = new Names(faults, "bays and spaces of ute, tray and canopy");
    bays = new Names(faults, "bays of this scenario");
    spaces = new Names(faults, "spaces of this scenario");
    doors = new Names(faults, "doors of the canopy");
    seats = new Names(faults, "seats of the ute");
    tanks = new Names(faults, "tanks of this scenario");
    items = new Names(faults, "gear of this scenario");
    trailers = new Names(faults, "trailers of this scenario");
    stops = new Names(faults, "stops of this scenario");
  }

  /** Tanks and gear together, for messages about one that is neither. */
  Names containers() {
    Names containers = items.another("tanks and gear of this scenario");
    tanks.all().forEach(containers::add);
    items.all().forEach(containers::add);
    if (!items.isComplete() || !tanks.isComplete()) {
      containers.incomplete();
    }
    return containers;
  }

  /** What an override may name: gear, spaces and stops. */
  Names subjects() {
    Names subjects = items.another("gear, spaces and stops of this scenario");
    for (Names names : List.of(items, spaces, stops)) {
      names.all().forEach(subjects::add);
      if (!names.isComplete()) {
        subjects.incomplete();
      }
    }
    return subjects;
  }

  /** Something with bays and spaces could not be read, so that not all of them are known. */
  void regionsIncomplete() {
    bays.incomplete();
    spaces.incomplete();
  }
}
