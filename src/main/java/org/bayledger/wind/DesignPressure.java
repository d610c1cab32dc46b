package org.bayledger.wind;

import org.bayledger.check.Load;
import org.bayledger.check.LoadBasis;

/**
 * A wind pressure to design with, both signs. Its level is its type, so that a pressure of one
 * level can't stand where another is meant, and it leaves this room only as a {@link Load} that
 * says its basis.
 */
public sealed interface DesignPressure {

    /** Pressure toward the wall, Pa, greater than zero. */
    double positive();

    /** Pressure away from the wall, Pa, less than zero. */
    double negative();

    /** Level of both pressures. */
    LoadBasis basis();

    /** The pressures with their basis, as the checks that depend on them take a load. */
    default Load load() {
        return new Load(positive(), negative(), basis());
    }

    /**
     * Strength level, W of ASCE/SEI 7.
     *
     * @param positive pressure toward the wall, Pa
     * @param negative pressure away from the wall, Pa
     */
    record Strength(double positive, double negative) implements DesignPressure {

        public Strength {
            bothSigns(positive, negative);
        }

        @Override
        public LoadBasis basis() {
            return LoadBasis.STRENGTH;
        }

        /** 0.6 W (ASCE/SEI 7, 2.4.1): the only way from strength to allowable-stress level. */
        AllowableStress allowableStress() {
            return new AllowableStress(
                    Load.ALLOWABLE_STRESS_FACTOR * positive,
                    Load.ALLOWABLE_STRESS_FACTOR * negative);
        }

        /** A share of W for deflection limits only. */
        ServiceabilityPressure serviceability(double factor) {
            return new ServiceabilityPressure(factor * positive, factor * negative);
        }
    }

    /**
     * Allowable-stress level, 0.6 W of ASCE/SEI 7.
     *
     * @param positive pressure toward the wall, Pa
     * @param negative pressure away from the wall, Pa
     */
    record AllowableStress(double positive, double negative) implements DesignPressure {

        public AllowableStress {
            bothSigns(positive, negative);
        }

        @Override
        public LoadBasis basis() {
            return LoadBasis.ALLOWABLE_STRESS;
        }
    }

    /**
     * Characteristic value of EN 1991.
     *
     * @param positive pressure toward the wall, Pa
     * @param negative pressure away from the wall, Pa
     */
    record Characteristic(double positive, double negative) implements DesignPressure {

        public Characteristic {
            bothSigns(positive, negative);
        }

        @Override
        public LoadBasis basis() {
            return LoadBasis.CHARACTERISTIC;
        }
    }

    private static void bothSigns(double positive, double negative) {
        if (!(positive > 0) || !(negative < 0)) {
            throw new IllegalArgumentException("a wall has a pressure of either sign");
        }
    }
}
