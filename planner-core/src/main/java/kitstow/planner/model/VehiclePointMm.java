package kitstow.planner.model;

/**
 * A point in the vehicle frame: x rearward from the front axle centre, y to the right of the centre
 * plane, z up from the ground; millimetres.
 */
public record VehiclePointMm(int xMm, int yMm, int zMm) {}
