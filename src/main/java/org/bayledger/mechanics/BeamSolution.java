package org.bayledger.mechanics;

import java.util.ArrayList;
import java.util.List;

/**
 * How a beam answers its loads: reactions, and shear, bending moment, slope and deflection as exact
 * functions of position, with their extremes located where a derivative vanishes or a value jumps,
 * not by sampling.
 *
 * <p>Signs: deflection is positive in the direction of a positive load; slope is its derivative;
 * bending moment is positive where the side that a positive load points to is in tension (sagging,
 * for a load that hangs down); shear is the derivative of the moment. Where a value jumps, a
 * function gives the value just beyond the jump, and at the beam's far end the value just before
 * it.
 *
 * <p>Where an extreme is reached at several places alike, one of them is given.
 */
public final class BeamSolution {

    private final double length;
    private final double[] supports;
    private final double[] reactions;
    private final BeamSegments segments;

    BeamSolution(double length, double[] supports, double[] reactions, BeamSegments segments) {
        this.length = length;
        this.supports = supports;
        this.reactions = reactions;
        this.segments = segments;
    }

    /**
     * The answer of the same beam to both loads at once, each times a factor (superposition). Both
     * solutions must be cut at the same places, as they are where each beam was also given the
     * other's loads with no intensity.
     *
     * @throws IllegalArgumentException where they are not
     */
    public BeamSolution superposed(double factor, BeamSolution other, double otherFactor) {
        return new BeamSolution(
                length,
                supports,
                BeamSegments.sum(reactions, factor, other.reactions, otherFactor),
                new BeamSegments(segments, factor, other.segments, otherFactor));
    }

    /** Length of the beam, m. */
    public double length() {
        return length;
    }

    /** What each support carries, in the order of the supports. */
    public List<BeamReaction> reactions() {
        List<BeamReaction> list = new ArrayList<>(supports.length);
        for (int i = 0; i < supports.length; i++) {
            list.add(new BeamReaction(supports[i], reactions[i]));
        }
        return List.copyOf(list);
    }

    /** Shear at a position in m, N. */
    public double shear(double at) {
        double x = onBeam(at);
        int i = segments.segmentAt(x);
        return segments.shearAt(i, x - segments.start[i]);
    }

    /** Bending moment at a position in m, N m. */
    public double moment(double at) {
        double x = onBeam(at);
        int i = segments.segmentAt(x);
        return segments.momentAt(i, x - segments.start[i]);
    }

    /** Slope at a position in m, rad. */
    public double slope(double at) {
        double x = onBeam(at);
        int i = segments.segmentAt(x);
        return segments.slopeAt(i, x - segments.start[i]);
    }

    /** Deflection at a position in m, m. */
    public double deflection(double at) {
        double x = onBeam(at);
        int i = segments.segmentAt(x);
        return segments.deflectionAt(i, x - segments.start[i]);
    }

    /** The shear that is greatest in absolute value, N. */
    public BeamExtreme greatestShear() {
        return greatestShear(0, length);
    }

    /** The shear that is greatest in absolute value between two positions in m, N. */
    public BeamExtreme greatestShear(double from, double to) {
        return search(Quantity.SHEAR, Sense.EITHER, from, to, 0, 0);
    }

    /** The bending moment that is greatest in absolute value, N m. */
    public BeamExtreme greatestMoment() {
        return greatestMoment(0, length);
    }

    /** The bending moment that is greatest in absolute value between two positions in m, N m. */
    public BeamExtreme greatestMoment(double from, double to) {
        return search(Quantity.MOMENT, Sense.EITHER, from, to, 0, 0);
    }

    /** The highest bending moment, N m: the greatest sagging moment if there is any. */
    public BeamExtreme maximumMoment() {
        return search(Quantity.MOMENT, Sense.HIGHEST, 0, length, 0, 0);
    }

    /** The lowest bending moment, N m: the greatest hogging moment if there is any. */
    public BeamExtreme minimumMoment() {
        return search(Quantity.MOMENT, Sense.LOWEST, 0, length, 0, 0);
    }

    /** The deflection that is greatest in absolute value, m. */
    public BeamExtreme greatestDeflection() {
        return greatestDeflection(0, length);
    }

    /** The deflection that is greatest in absolute value between two positions in m, m. */
    public BeamExtreme greatestDeflection(double from, double to) {
        return search(Quantity.DEFLECTION, Sense.EITHER, from, to, 0, 0);
    }

    /**
     * The greatest distance in absolute value, m, between the bent beam and the straight line
     * through its points at two positions in m.
     */
    public BeamExtreme greatestDeflectionFromChord(double from, double to) {
        requireForward(from, to);
        double chordStart = deflection(from);
        double chordSlope = (deflection(to) - chordStart) / (to - from);
        return search(
                Quantity.DEFLECTION,
                Sense.EITHER,
                from,
                to,
                chordStart - chordSlope * from,
                chordSlope);
    }

    /** The spans between neighbouring supports, from the beam's start on. */
    public List<BeamSpan> spans() {
        List<BeamSpan> list = new ArrayList<>(supports.length - 1);
        for (int i = 1; i < supports.length; i++) {
            double from = supports[i - 1];
            double to = supports[i];
            list.add(new BeamSpan(from, to, greatestDeflection(from, to)));
        }
        return List.copyOf(list);
    }

    /** The overhangs, none, one or two, from the beam's start on. */
    public List<BeamOverhang> overhangs() {
        List<BeamOverhang> list = new ArrayList<>(2);
        double first = supports[0];
        if (first > 0) {
            list.add(new BeamOverhang(first, 0, deflection(0), greatestDeflection(0, first)));
        }
        double last = supports[supports.length - 1];
        if (last < length) {
            list.add(
                    new BeamOverhang(
                            last, length, deflection(length), greatestDeflection(last, length)));
        }
        return List.copyOf(list);
    }

    private enum Quantity {
        SHEAR(1),
        MOMENT(2),
        DEFLECTION(4);

        final int derivativeDegree;

        Quantity(int derivativeDegree) {
            this.derivativeDegree = derivativeDegree;
        }
    }

    private enum Sense {
        HIGHEST,
        LOWEST,
        EITHER
    }

    /**
     * Looks at both ends of every segment between two positions and wherever the derivative crosses
     * zero inside it. From a deflection the line {@code lineStart + lineSlope x} is taken off.
     */
    private BeamExtreme search(
            Quantity quantity,
            Sense sense,
            double begin,
            double end,
            double lineStart,
            double lineSlope) {
        double from = onBeam(begin);
        double to = onBeam(end);
        requireForward(from, to);
        BeamRoots roots = new BeamRoots();
        double[] derivative = new double[5];
        double bestAt = from;
        double best = 0;
        double bestRank = Double.NEGATIVE_INFINITY;
        for (int i = segments.segmentAt(from); i < segments.count && segments.start[i] < to; i++) {
            double start = segments.start[i];
            double low = Math.max(0, from - start);
            double high = Math.min(to - start, segments.lengthOf(i));
            derivativeOf(quantity, i, lineSlope, derivative);
            int turns = roots.between(derivative, quantity.derivativeDegree, low, high);
            for (int k = -1; k <= turns; k++) {
                double s = k < 0 ? low : k < turns ? roots.found[k] : high;
                double value =
                        switch (quantity) {
                            case SHEAR -> segments.shearAt(i, s);
                            case MOMENT -> segments.momentAt(i, s);
                            case DEFLECTION ->
                                    segments.deflectionAt(i, s)
                                            - lineStart
                                            - lineSlope * (start + s);
                        };
                double rank =
                        switch (sense) {
                            case HIGHEST -> value;
                            case LOWEST -> -value;
                            case EITHER -> Math.abs(value);
                        };
                if (rank > bestRank) {
                    bestRank = rank;
                    best = value;
                    bestAt = start + s;
                }
            }
        }
        return new BeamExtreme(bestAt, best);
    }

    /** Coefficients of the derivative on a segment; of the deflection times the rigidity. */
    private void derivativeOf(Quantity quantity, int i, double lineSlope, double[] coefficients) {
        double w = segments.load[i];
        double k = segments.loadSlope[i];
        switch (quantity) {
            case SHEAR -> {
                coefficients[0] = -w;
                coefficients[1] = -k;
            }
            case MOMENT -> {
                coefficients[0] = segments.shear[i];
                coefficients[1] = -w;
                coefficients[2] = -k / 2;
            }
            case DEFLECTION -> {
                coefficients[0] = segments.rigidity[i] * (segments.slope[i] - lineSlope);
                coefficients[1] = -segments.moment[i];
                coefficients[2] = -segments.shear[i] / 2;
                coefficients[3] = w / 6;
                coefficients[4] = k / 24;
            }
        }
    }

    /** The position, brought onto the beam where rounding has set it just outside. */
    private double onBeam(double at) {
        double slack = BeamModel.ONE_PLACE * length;
        if (!(at >= -slack && at <= length + slack)) {
            throw new IllegalArgumentException(
                    "the position "
                            + at
                            + " m is off the beam, which runs from 0 m to "
                            + BeamModel.metres(length));
        }
        return Math.min(Math.max(at, 0), length);
    }

    private static void requireForward(double from, double to) {
        if (from >= to) {
            throw new IllegalArgumentException(
                    "a stretch must run forward, but it runs from "
                            + BeamModel.metres(from)
                            + " to "
                            + BeamModel.metres(to));
        }
    }
}
