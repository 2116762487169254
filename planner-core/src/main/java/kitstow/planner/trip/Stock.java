package kitstow.planner.trip;

import java.util.OptionalDouble;
import kitstow.planner.model.SupplyKind;

/**
 * What one leg does to one supply, over the containers in its order of use; grams, rounded.
 *
 * @param kind which supply
 * @param legId the leg
 * @param startG content when it starts, after filling up
 * @param endG content when it ends
 * @param usedMlOrG what was used on it: millilitres of fuel and water, grams of food and gas
 * @param leftMlOrG what is left when it ends, in the same measure
 * @param daysLeft how long water, food or gas would last from its end at this leg's rate; absent
 *     for fuel and where none is used
 * @param kmLeft how far the fuel would go from its end at this leg's rate, cans counted; absent for
 *     the rest and where none is burnt
 */
public record Stock(
    SupplyKind kind,
    String legId,
    long startG,
    long endG,
    long usedMlOrG,
    long leftMlOrG,
    OptionalDouble daysLeft,
    OptionalDouble kmLeft) {}
