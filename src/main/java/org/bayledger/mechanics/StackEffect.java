package org.bayledger.mechanics;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

/**
 * Difference of pressure between two columns of air at rest that have different temperatures.
 *
 * <pre>
 * rho = p0 / (R T)                       density of dry air, kg/m3
 * dp/dz = (rho_o - rho_i) g              growth of the difference with height, Pa/m
 *       = rho_o g (Ti - To) / Ti         the same
 * </pre>
 *
 * Source: ideal gas and hydrostatics; ASHRAE Handbook of Fundamentals, chapter on ventilation and
 * infiltration, stack pressure (from memory). Limits: dry air, each column at one temperature, the
 * density taken constant over the height (buildings of some hundreds of metres: a few per cent).
 */
public final class StackEffect {

    /** Specific gas constant of dry air, J/(kg K) (textbook tables, from memory). */
    public static final double GAS_CONSTANT = 287.05;

    private StackEffect() {}

    /**
     * Density of dry air, kg/m3.
     *
     * @param temperature T, K
     * @param atmosphere p0, Pa
     */
    public static double density(double temperature, double atmosphere) {
        if (!(temperature > 0 && atmosphere > 0)) {
            throw new IllegalArgumentException(
                    "the temperature and the pressure must be greater than zero");
        }
        return atmosphere / (GAS_CONSTANT * temperature);
    }

    /**
     * How much the difference of pressure, outside less inside, falls with each metre of height,
     * Pa/m; positive where it is colder outside.
     *
     * @param outside To, K
     * @param inside Ti, K
     * @param atmosphere p0, Pa
     */
    public static double gradient(double outside, double inside, double atmosphere) {
        return (density(outside, atmosphere) - density(inside, atmosphere)) * STANDARD_GRAVITY;
    }
}
