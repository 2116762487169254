package kitstow.planner.model;

/**
 * What is used along the way.
 *
 * @param fuelMlPer100Km on the road without a trailer
 * @param offRoadFuelPermille fuel off the road, per mille of the road figure
 * @param towingFuelPermille fuel with a trailer on, per mille of that without
 * @param waterMlPerPersonDay water
 * @param foodGPerPersonDay food
 * @param gasGPerDay cooking gas
 */
public record Consumption(
    long fuelMlPer100Km,
    int offRoadFuelPermille,
    int towingFuelPermille,
    long waterMlPerPersonDay,
    long foodGPerPersonDay,
    long gasGPerDay) {}
