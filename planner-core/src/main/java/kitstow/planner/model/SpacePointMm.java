package kitstow.planner.model;

/**
 * A corner relative to a space: x rearward from its front, y to the right from its left side, z up
 * from its floor; millimetres. Negative only where a roof space allows projection.
 */
public record SpacePointMm(int xMm, int yMm, int zMm) {}
