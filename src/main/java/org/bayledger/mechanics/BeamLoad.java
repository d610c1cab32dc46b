package org.bayledger.mechanics;

/**
 * A load on a beam. Forces and distributed loads are positive in the direction in which deflection
 * is positive; positions are measured from the beam's start, in m.
 */
public sealed interface BeamLoad {

    /**
     * A load spread over part of the length, varying in a straight line: uniform, triangular or
     * trapezoidal.
     *
     * @param from where it begins, m
     * @param to where it ends, m, beyond {@code from}
     * @param atFrom intensity at {@code from}, N/m
     * @param atTo intensity at {@code to}, N/m
     */
    record Distributed(double from, double to, double atFrom, double atTo) implements BeamLoad {
        public Distributed {
            BeamModel.requireFinite("start of a distributed load", from);
            BeamModel.requireFinite("end of a distributed load", to);
            BeamModel.requireFinite("intensity of a distributed load", atFrom);
            BeamModel.requireFinite("intensity of a distributed load", atTo);
            if (from >= to) {
                throw new IllegalArgumentException(
                        "a distributed load must end beyond its start, but it runs from "
                                + BeamModel.metres(from)
                                + " to "
                                + BeamModel.metres(to));
            }
        }
    }

    /**
     * A force at one place.
     *
     * @param at position, m
     * @param force N
     */
    record Force(double at, double force) implements BeamLoad {
        public Force {
            BeamModel.requireFinite("position of a force", at);
            BeamModel.requireFinite("force", force);
        }
    }

    /**
     * A moment at one place. Positive turns the beam the way of a positive slope, so that it does
     * positive work on it; the bending moment rises by this amount as one passes it.
     *
     * @param at position, m
     * @param moment N m
     */
    record Moment(double at, double moment) implements BeamLoad {
        public Moment {
            BeamModel.requireFinite("position of a moment", at);
            BeamModel.requireFinite("moment", moment);
        }
    }

    /**
     * A uniform load.
     *
     * @param from where it begins, m
     * @param to where it ends, m
     * @param intensity N/m
     */
    static Distributed uniform(double from, double to, double intensity) {
        return new Distributed(from, to, intensity, intensity);
    }
}
