package kitstow.planner.model;

/** A seat: where the mass of the person in it acts. */
public record Seat(String id, String title, VehiclePointMm place) {}
