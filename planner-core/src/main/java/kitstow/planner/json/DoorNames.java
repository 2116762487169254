package kitstow.planner.json;

import java.util.List;
import kitstow.planner.model.BaySpec;
import kitstow.planner.model.SpaceSpec;

/** Holds the doors that bays and spaces name against the doors of the canopy. */
final class DoorNames {
  private static final List<String> REGIONS = List.of("bays", "spaces");

  private final Names doorIds;

  DoorNames(Names doorIds) {
    this.doorIds = doorIds;
  }

  /** Checks the bays and spaces that are listed under a host in this text. */
  void check(Reread host) {
    for (String key : REGIONS) {
      for (Reread region : host.objects(key)) {
        region.texts("doors").forEach(door -> doorIds.check(door.text(), door.place()));
      }
    }
  }

  /** Checks the bays and spaces of the entry that a host names. */
  void check(List<BaySpec> bays, List<SpaceSpec> spaces, Place entry) {
    for (BaySpec bay : bays) {
      check(bay.id(), bay.doorIds(), entry);
    }
    for (SpaceSpec space : spaces) {
      check(space.id(), space.doorIds(), entry);
    }
  }

  private void check(String region, List<String> doors, Place entry) {
    for (String door : doors) {
      if (!doorIds.has(door)) {
        doorIds.noteUnknown(
            door,
            entry,
            "brings " + Shown.quoted(region) + " behind the door " + Shown.quoted(door));
      }
    }
  }
}
