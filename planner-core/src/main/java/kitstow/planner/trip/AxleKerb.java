package kitstow.planner.trip;

/**
 * Axle loads of the ute in kerb trim, grams: full fuel in its own tanks, nobody aboard, all
 * removable parts on, no accessory, tray or canopy. Drops in front axle load are told against it.
 *
 * @param frontG load on the front axle
 * @param rearG load on the rear axle
 */
public record AxleKerb(long frontG, long rearG) {}
