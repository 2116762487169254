package kitstow.planner.model;

import kitstow.planner.geometry.SizeMm;

/**
 * A box in the frame of whatever holds it (its host), millimetres.
 *
 * <ul>
 *   <li>ute: the vehicle frame;
 *   <li>tray: {@code a} rearward from the tray's front edge, {@code b} right of the centre plane,
 *       {@code c} up from the deck; size length x width x height;
 *   <li>canopy: the same with {@code a} from the canopy's front face;
 *   <li>module: {@code a} depth from its back towards its face, {@code b} across its opening from
 *       the forward (for a rear-facing one: left) end, {@code c} up from its underside; size depth
 *       x across x height.
 * </ul>
 *
 * @param aMm first coordinate of the lowest corner
 * @param bMm second coordinate of the lowest corner
 * @param cMm third coordinate of the lowest corner
 * @param size extent along a, b and c
 */
public record LocalBoxMm(int aMm, int bMm, int cMm, SizeMm size) {}
