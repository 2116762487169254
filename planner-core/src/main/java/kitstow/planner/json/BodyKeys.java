package kitstow.planner.json;

import java.util.Set;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Rig;
import kitstow.planner.problem.Code;

/**
 * The one name space of all that has mass: parts, accessories, modules, tanks, gear and people. The
 * planner keeps some names for itself, and makes two bodies of a module that pulls out and of a
 * tank.
 */
final class BodyKeys {
  private static final Set<String> RESERVED =
      Set.of(Loading.UTE_FRONT, Loading.UTE_REAR, Loading.BALL, Rig.UTE, Rig.TRAY, Rig.CANOPY);

  private final Faults faults;
  private final Names names;

  BodyKeys(Faults faults) {
    this.faults = faults;
    this.names = new Names(faults, "parts, accessories, modules, tanks, gear and people");
  }

  /** Takes an id that is written here. */
  void claim(String id, Place place) {
    if (RESERVED.contains(id)) {
      faults.error(
          Code.RESERVED_ID,
          place,
          "is " + Shown.quoted(id) + ", which the planner keeps for itself",
          "choose another id, such as " + id + "-1");
    }
    names.claim(id, place);
  }

  /** Takes an id that comes with a catalogue entry. */
  void claimOf(String what, String id, Place entry) {
    names.claim(id, entry, "brings the " + what + " " + Shown.quoted(id));
  }

  /** Takes the name of the part that pulls out of a module. */
  void claimMoving(String moduleId, Place place) {
    String key = moduleId + Loading.MOVING;
    names.claim(key, place, "makes the name " + Shown.quoted(key) + " of its moving part");
  }

  /** Takes the name of a tank's liquid. */
  void claimLiquid(String tankId, Place place) {
    String key = tankId + Loading.LIQUID;
    names.claim(key, place, "makes the name " + Shown.quoted(key) + " of a tank's content");
  }
}
