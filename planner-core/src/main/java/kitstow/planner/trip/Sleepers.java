package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Body;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Person;
import kitstow.planner.model.Rig;
import kitstow.planner.model.ShiftMm;
import kitstow.planner.model.Zone;

/** People who sleep on a roof, and how far that is from their seat. */
final class Sleepers {
  private final List<Sleeper> all = new ArrayList<>();

  private Sleepers() {}

  private record Sleeper(int body, long massG, ShiftMm shift) {}

  /**
   * Who sleeps on a roof. Other places to sleep do not load the ute.
   *
   * @throws IllegalArgumentException if someone sleeps on a canopy that is not there
   */
  static Sleepers of(Loading loading) {
    Sleepers sleepers = new Sleepers();
    for (Person person : loading.scenario().trip().people()) {
      int index = loading.indexOf(person.id());
      Body body = loading.bodies().get(index);
      person
          .sleepsOn()
          .flatMap(zone -> shift(loading, zone, body.box()))
          .ifPresent(shift -> sleepers.all.add(new Sleeper(index, body.nominalG(), shift)));
    }
    return sleepers;
  }

  private static Optional<ShiftMm> shift(Loading loading, Zone zone, BoxMm seat) {
    return switch (zone) {
      case CAB_ROOF ->
          Optional.of(
              new ShiftMm(
                  0, -seat.minYMm(), loading.scenario().ute().cabRoofZMm() - seat.minZMm()));
      case CANOPY_ROOF -> Optional.of(toCanopyRoof(loading, seat));
      case CAB, TRAY, UNDER_TRAY, CANOPY, REAR_CARRIER -> Optional.empty();
    };
  }

  private static ShiftMm toCanopyRoof(Loading loading, BoxMm seat) {
    int canopy = loading.indexOf(Rig.CANOPY);
    if (canopy < 0) {
      throw new IllegalArgumentException("someone sleeps on a canopy that is not there");
    }
    BoxMm box = loading.bodies().get(canopy).box();
    return new ShiftMm(
        (box.minXMm() + box.maxXMm()) / 2 - seat.minXMm(),
        Math.floorDiv(box.minYMm() + box.maxYMm(), 2) - seat.minYMm(),
        box.maxZMm() - seat.minZMm());
  }

  /** Puts them on their roofs. */
  void putUp(long[] massG, ShiftMm[] shift) {
    for (Sleeper sleeper : all) {
      massG[sleeper.body()] = sleeper.massG();
      shift[sleeper.body()] = sleeper.shift();
    }
  }
}
