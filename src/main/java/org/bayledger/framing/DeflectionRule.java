package org.bayledger.framing;

import static org.bayledger.quantity.Constants.FOOT;
import static org.bayledger.quantity.Constants.INCH;

/**
 * Which published rule limits the deflection of a member that holds glass. Lengths in m; the span
 * is that between neighbouring supports, and for an overhang twice its length.
 */
public enum DeflectionRule {
    /**
     * Under wind L/175 up to 13 ft 6 in and L/240 + 1/4 in above (IBC 2021, 1604.3.7 and the
     * aluminum trade's TIR-A11; from memory). Parallel to the wall under dead load the smaller of
     * L/360 and 1/8 in (common practice, no source).
     */
    IBC {
        @Override
        double underWind(double span) {
            return span <= 13.5 * FOOT + SAME_LENGTH ? span / 175 : span / 240 + INCH / 4;
        }

        @Override
        double underDeadLoad(double span) {
            return Math.min(span / 360, INCH / 8);
        }

        @Override
        String windFormula() {
            return "L/175 for L <= 13 ft 6 in, else L/240 + 1/4 in";
        }

        @Override
        String deadFormula() {
            return "min(L/360, 1/8 in)";
        }

        @Override
        String windSource() {
            return "IBC 2021, 1604.3.7; TIR-A11 (from memory)";
        }

        @Override
        String deadSource() {
            return "common practice, no source";
        }
    },
    /**
     * Under wind L/200 up to 3 m, 5 mm + L/300 up to 7.5 m, L/250 above; under dead load the
     * smaller of L/500 and 3 mm (EN 13830:2015, 4.1 and 4.2; from memory).
     */
    EN_13830 {
        @Override
        double underWind(double span) {
            if (span <= 3) {
                return span / 200;
            }
            return span < 7.5 ? 0.005 + span / 300 : span / 250;
        }

        @Override
        double underDeadLoad(double span) {
            return Math.min(span / 500, 0.003);
        }

        @Override
        String windFormula() {
            return "L/200 for L <= 3 m, 5 mm + L/300 for L < 7.5 m, else L/250";
        }

        @Override
        String deadFormula() {
            return "min(L/500, 3 mm)";
        }

        @Override
        String windSource() {
            return "EN 13830:2015, 4.1 (from memory)";
        }

        @Override
        String deadSource() {
            return "EN 13830:2015, 4.2 (from memory)";
        }
    };

    /** A span of 13 ft 6 in is one also where it is the difference of two elevations, m. */
    private static final double SAME_LENGTH = 1e-6;

    /** Limit under wind, m, for a span in m. */
    abstract double underWind(double span);

    /** Limit under dead load, m, for a span in m. */
    abstract double underDeadLoad(double span);

    abstract String windFormula();

    abstract String deadFormula();

    abstract String windSource();

    abstract String deadSource();
}
