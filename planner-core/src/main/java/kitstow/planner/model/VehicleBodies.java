package kitstow.planner.model;

import java.util.LinkedHashMap;
import java.util.Map;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.geometry.PointMm;

/** Bodies that no plan moves: ute, parts, accessories, tray, canopy, people and ball. */
final class VehicleBodies {
  private final Scenario scenario;
  private final BodyList bodies;

  VehicleBodies(Scenario scenario, BodyList bodies) {
    this.scenario = scenario;
    this.bodies = bodies;
  }

  void addVehicle() {
    Ute ute = scenario.ute();
    KnownMass front = ute.empty().front();
    KnownMass rear = ute.empty().rear();
    bodies.add(
        Draft.of(
                Loading.UTE_FRONT,
                BodyKind.UTE,
                ute.title(),
                BoxMm.point(0, 0, ute.emptyHeightMm()),
                front)
            .inOverhang(false));
    bodies.add(
        Draft.of(
                Loading.UTE_REAR,
                BodyKind.UTE,
                ute.title(),
                BoxMm.point(ute.wheelbaseMm(), 0, ute.emptyHeightMm()),
                rear)
            .inOverhang(false));
    for (RemovablePart part : ute.parts()) {
      if (part.state() == PartState.ON) {
        addFitted(
            part.id(), Draft.of(part.id(), BodyKind.PART, part.title(), part.box(), part.mass()));
      }
    }
    for (Accessory accessory : scenario.accessories()) {
      addFitted(
          accessory.id(),
          Draft.of(
                  accessory.id(),
                  BodyKind.ACCESSORY,
                  accessory.title(),
                  accessory.box(),
                  accessory.mass())
              .toleranceKey("accessory:" + accessory.entryId())
              .zone(accessory.roof()));
    }
    scenario
        .tray()
        .ifPresent(
            tray ->
                addFitted(
                    Rig.TRAY,
                    Draft.of(Rig.TRAY, BodyKind.TRAY, tray.title(), trayBox(tray), tray.mass())));
    scenario
        .canopy()
        .ifPresent(
            canopy ->
                addFitted(
                    Rig.CANOPY,
                    Draft.of(
                        Rig.CANOPY,
                        BodyKind.CANOPY,
                        canopy.title(),
                        canopy.outsideOn(scenario.tray().get()),
                        canopy.mass())));
  }

  private static BoxMm trayBox(Tray tray) {
    return BoxMm.at(
        new PointMm(
            tray.frontXMm(), -tray.size().widthMm() / 2, tray.deckZMm() - tray.size().heightMm()),
        tray.size());
  }

  private void addFitted(String fittedId, Draft draft) {
    if (scenario.ute().empty().fitted().contains(fittedId)) {
      bodies.addWeighedWithUte(draft);
    } else {
      bodies.add(draft);
    }
  }

  void addPeopleAndBall() {
    Map<String, Seat> seats = new LinkedHashMap<>();
    for (Seat seat : scenario.ute().seats()) {
      seats.put(seat.id(), seat);
    }
    for (Person person : scenario.trip().people()) {
      Seat seat = seats.remove(person.seatId());
      if (seat == null) {
        throw new IllegalArgumentException("no such seat, or taken twice: " + person.seatId());
      }
      VehiclePointMm at = seat.place();
      bodies.add(
          Draft.of(
              person.id(),
              BodyKind.PERSON,
              person.title(),
              BoxMm.point(at.xMm(), at.yMm(), at.zMm()),
              person.mass()));
    }
    long allowanceG = scenario.settings().seatAllowanceG();
    for (Seat seat : seats.values()) {
      VehiclePointMm at = seat.place();
      bodies.add(
          Draft.of(
              Loading.SEAT + seat.id(),
              BodyKind.PERSON,
              seat.title() + ", empty seat",
              BoxMm.point(at.xMm(), at.yMm(), at.zMm()),
              new KnownMass(allowanceG, MassSource.PLATE, 0L)));
    }
    KnownMass heaviest = KnownMass.NONE;
    for (Trailer trailer : scenario.trailers()) {
      if (trailer.ball().massG() > heaviest.massG()) {
        heaviest = trailer.ball();
      }
    }
    KnownMass ballMass = heaviest;
    scenario
        .ute()
        .ball()
        .ifPresent(
            ball ->
                bodies.add(
                    Draft.of(
                        Loading.BALL,
                        BodyKind.BALL,
                        "ball mass",
                        BoxMm.point(ball.xMm(), ball.yMm(), ball.zMm()),
                        ballMass)));
  }
}
