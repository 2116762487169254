package kitstow.planner.model;

/**
 * The tyres of one axle.
 *
 * @param loadIndex load index of one tyre as marked (UN Regulation 54)
 * @param count tyres on the axle, 2 or 4
 */
public record TyreSet(int loadIndex, int count) {}
