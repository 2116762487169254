package kitstow.planner.model;

import java.util.Optional;

/**
 * Someone on the trip.
 *
 * @param id unique in the scenario
 * @param title shown to people
 * @param mass with clothes, boots and pockets
 * @param seatId the seat taken while driving
 * @param sleepsOn the roof slept on when parked, if any
 */
public record Person(
    String id, String title, KnownMass mass, String seatId, Optional<Zone> sleepsOn) {}
