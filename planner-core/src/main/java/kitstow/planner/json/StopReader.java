package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Stop;
import kitstow.planner.problem.Code;

/** Reads where the ute may come to a stand and what stays shut there. */
final class StopReader {
  private final Known known;

  StopReader(Known known) {
    this.known = known;
  }

  List<Stop> read(Fields scenario) {
    List<Stop> stops = new ArrayList<>();
    for (Fields fields : scenario.objectsIfGiven("stops")) {
      String id = fields.id("id");
      known.stops.claim(id, fields.place("id"));
      String title = fields.text("title", "say where it stands, e.g. bogged to the sills");
      Set<Facing> sides = fields.words("shutSides", Words.FACING, Facing.class);
      int belowMm = fields.wholeOr("shutBelowMm", Measure.SIZE, 0);
      List<String> doors = fields.namesIfGiven("shutDoors");
      fields.done();
      doors.forEach(door -> known.doors.check(door, fields.place("shutDoors")));
      boolean nothing = sides.isEmpty() && belowMm == 0 && doors.isEmpty();
      if (nothing && fields.good("shutSides", "shutBelowMm", "shutDoors")) {
        fields.error(
            Code.MISSING_KEY,
            "shutSides",
            "is missing, and nothing stays shut by shutBelowMm or shutDoors either",
            "say what stays shut there, or leave the stop out");
      }
      stops.add(new Stop(id, title, sides, belowMm, doors));
    }
    if (!scenario.idsKnown("stops")) {
      known.stops.incomplete();
    }
    return stops;
  }
}
