package org.bayledger.framing;

import static org.bayledger.quantity.Constants.PSI;

import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Steel inside a member: it bends with the aluminum without being joined to it lengthwise, and
 * under wind takes its share by stiffness. It counts under wind only; massPerLength of the section
 * includes it. At a splice of the member it is cut as well.
 *
 * @param secondMomentOfArea second moment of area of the steel for bending under wind, m4
 * @param sectionModulus its least section modulus for bending under wind, m3
 * @param yieldStrength its yield strength, Pa
 * @param elasticModulus its modulus of elasticity, Pa; absent: 200 GPa (29 000 ksi)
 * @param from where it begins, m from the member's start; absent: at the start
 * @param to where it ends, m; absent: at the member's end
 */
public record Reinforcement(
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                double secondMomentOfArea,
        @Measured(value = Dimension.SECTION_MODULUS, sign = Sign.POSITIVE) double sectionModulus,
        @Measured(value = Dimension.STRESS, sign = Sign.POSITIVE) double yieldStrength,
        @Measured(value = Dimension.STRESS, sign = Sign.POSITIVE) @Nullable Double elasticModulus,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE) @Nullable Double from,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE) @Nullable Double to) {

    /** E of structural steel, 29 000 ksi in Pa (AISC 360-16; from memory). */
    static final double STEEL_MODULUS = 29_000_000 * PSI;

    /** Safety factor on yielding in bending (AISC 360-16, F1; from memory). */
    static final double OMEGA = 1.67;

    public Reinforcement {
        if (from != null && to != null && to <= from) {
            throw FaultsException.outOfRange("/to", "must lie beyond from");
        }
    }

    /** E I of the steel, N m2. */
    double rigidity() {
        return (elasticModulus == null ? STEEL_MODULUS : elasticModulus) * secondMomentOfArea;
    }

    /** Allowable bending stress, Pa, on the elastic section modulus. */
    double allowable() {
        return yieldStrength / OMEGA;
    }

    /** Where it begins, m. */
    double start() {
        return from == null ? 0 : from;
    }

    /** Where it ends, m, on a member of a length in m. */
    double end(double length) {
        return to == null ? length : Math.min(to, length);
    }

    Reinforcement between(double newFrom, double newTo) {
        return new Reinforcement(
                secondMomentOfArea, sectionModulus, yieldStrength, elasticModulus, newFrom, newTo);
    }
}
