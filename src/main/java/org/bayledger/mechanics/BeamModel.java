package org.bayledger.mechanics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * A straight beam in bending: what holds it, where it is hinged, how stiff it is and what loads it.
 * Shear deformation, axial force and second-order effects are outside the model. A model that
 * exists is stable: a mechanism is refused here, with the reason.
 *
 * <p>Places closer to each other than a billionth of the length are one place, so that rounding in
 * a conversion of units does not tear a hinge from its support. Supports and hinges that are
 * distinct, yet closer than a millionth of the length, are refused, as are rigidities that differ
 * by more than a millionfold: within these limits the solution is good to rounding.
 *
 * @param length m
 * @param supports positions in increasing order, m from the start; each holds deflection at zero
 *     and leaves rotation free
 * @param hinges positions in increasing order, m from the start; each carries shear but no bending
 *     moment. One may stand at an inner support.
 * @param rigidity steps of flexural rigidity in increasing order, the first from 0
 * @param loads in any order
 */
public record BeamModel(
        double length,
        List<Double> supports,
        List<Double> hinges,
        List<BeamRigidityStep> rigidity,
        List<BeamLoad> loads) {

    /** Share of the length below which two places are the same place. */
    static final double ONE_PLACE = 1e-9;

    private static final double TOO_CLOSE = 1e-6;
    private static final double GREATEST_RIGIDITY_RATIO = 1e6;

    public BeamModel {
        requireFinite("length of a beam", length);
        if (length <= 0) {
            throw new IllegalArgumentException(
                    "the length of a beam must be above zero, but is " + metres(length));
        }
        supports = List.copyOf(supports);
        hinges = List.copyOf(hinges);
        rigidity = List.copyOf(rigidity);
        loads = List.copyOf(loads);
        double onePlace = length * ONE_PLACE;

        requireIncreasing("support", supports, length);
        for (double support : supports) {
            requireOnBeam("support", support, length);
        }
        requireIncreasing("hinge", hinges, length);
        for (double hinge : hinges) {
            requireOnBeam("hinge", hinge, length);
            if (hinge <= onePlace || hinge >= length - onePlace) {
                throw new IllegalArgumentException(
                        "the hinge at "
                                + metres(hinge)
                                + " stands at the end of the beam, where it joins nothing");
            }
            for (double support : supports) {
                double distance = Math.abs(hinge - support);
                if (distance > onePlace && distance < length * TOO_CLOSE) {
                    throw tooClose("the hinge at ", hinge, "the support at ", support);
                }
            }
        }
        requireRigidity(rigidity, length);
        for (BeamLoad load : loads) {
            requireLoad(load, length, hinges);
        }
        BeamStability.require(length, onePlace, supports, hinges);
    }

    /** A beam of one flexural rigidity (N m2) throughout; the other values as in the record. */
    public static BeamModel uniform(
            double length,
            List<Double> supports,
            List<Double> hinges,
            double rigidity,
            List<BeamLoad> loads) {
        return new BeamModel(
                length, supports, hinges, List.of(new BeamRigidityStep(0, rigidity)), loads);
    }

    /** The same beam under other loads. */
    public BeamModel withLoads(List<BeamLoad> loads) {
        return new BeamModel(length, supports, hinges, rigidity, loads);
    }

    /** Distance, m, below which two places are the same place. */
    double onePlace() {
        return length * ONE_PLACE;
    }

    static void requireFinite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the " + what + " is not a finite number");
        }
    }

    static String metres(double value) {
        return new BigDecimal(value).round(new MathContext(7)).stripTrailingZeros().toPlainString()
                + " m";
    }

    private static void requireOnBeam(String what, double at, double length) {
        requireFinite("position of a " + what, at);
        double slack = length * ONE_PLACE;
        if (at < -slack || at > length + slack) {
            throw new IllegalArgumentException(
                    "a "
                            + what
                            + " at "
                            + metres(at)
                            + " is off the beam, which runs from 0 m to "
                            + metres(length));
        }
    }

    private static void requireIncreasing(String what, List<Double> positions, double length) {
        for (int i = 1; i < positions.size(); i++) {
            double before = positions.get(i - 1);
            double here = positions.get(i);
            if (here <= before) {
                throw new IllegalArgumentException(
                        "the "
                                + what
                                + "s must be in increasing order, each once, but "
                                + metres(here)
                                + " follows "
                                + metres(before));
            }
            if (here - before < length * TOO_CLOSE) {
                throw tooClose("the " + what + " at ", before, "the next at ", here);
            }
        }
    }

    private static IllegalArgumentException tooClose(
            String one, double oneAt, String other, double otherAt) {
        return new IllegalArgumentException(
                one
                        + metres(oneAt)
                        + " and "
                        + other
                        + metres(otherAt)
                        + " are closer than a millionth of the beam's length; make them one place"
                        + " or set them apart");
    }

    private static void requireRigidity(List<BeamRigidityStep> rigidity, double length) {
        if (rigidity.isEmpty() || rigidity.get(0).from() != 0) {
            throw new IllegalArgumentException(
                    "the flexural rigidity must be given from 0 m on, the start of the beam");
        }
        double least = rigidity.get(0).rigidity();
        double most = least;
        for (int i = 1; i < rigidity.size(); i++) {
            double from = rigidity.get(i).from();
            least = Math.min(least, rigidity.get(i).rigidity());
            most = Math.max(most, rigidity.get(i).rigidity());
            if (from <= rigidity.get(i - 1).from() || from >= length) {
                throw new IllegalArgumentException(
                        "the steps of flexural rigidity must be in increasing order and on the"
                                + " beam, but one begins at "
                                + metres(from));
            }
        }
        if (most > least * GREATEST_RIGIDITY_RATIO) {
            throw new IllegalArgumentException(
                    "the flexural rigidities of one beam differ by more than a millionfold, from "
                            + least
                            + " to "
                            + most
                            + " N m2; the soft part is as good as a hinge and should be given as"
                            + " one");
        }
    }

    private static void requireLoad(BeamLoad load, double length, List<Double> hinges) {
        if (load instanceof BeamLoad.Distributed d) {
            requireOnBeam("distributed load that begins", d.from(), length);
            requireOnBeam("distributed load that ends", d.to(), length);
            if (d.to() - d.from() <= 4 * ONE_PLACE * length) {
                throw new IllegalArgumentException(
                        "the distributed load from "
                                + metres(d.from())
                                + " to "
                                + metres(d.to())
                                + " is too short to be told from a point; give it as a force");
            }
        } else if (load instanceof BeamLoad.Force f) {
            requireOnBeam("force", f.at(), length);
        } else if (load instanceof BeamLoad.Moment m) {
            requireOnBeam("moment", m.at(), length);
            for (double hinge : hinges) {
                if (Math.abs(m.at() - hinge) <= length * ONE_PLACE) {
                    throw new IllegalArgumentException(
                            "the moment at "
                                    + metres(m.at())
                                    + " acts at a hinge, so that it is not said which of the two"
                                    + " pieces it turns; set it to one side");
                }
            }
        }
    }
}
