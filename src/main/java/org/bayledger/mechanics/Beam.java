package org.bayledger.mechanics;

import java.util.Arrays;

/**
 * Solves a straight beam on any number of supports, with hinges, overhangs, stepped rigidity and
 * any mix of loads; exact within Bernoulli's theory of bending (plane sections, small slopes, no
 * shear deformation).
 *
 * <p>Method: the theorem of three moments (Clapeyron), with one unknown at each inner node. At a
 * support without a hinge the unknown is the bending moment, and the equation says that the slope
 * is the same on both sides. At a hinge between supports the unknown is the deflection, and the
 * equation says that the shear is the same on both sides. At a hinge over a support nothing is
 * unknown. Overhangs are statically determinate and enter as the moments of the end supports. The
 * system is tridiagonal and symmetric; being indefinite it is solved with row interchanges. Lengths
 * are scaled by the beam's length and moments by its least rigidity, so that all entries are of the
 * order of the ratios of lengths and rigidities. That it has a solution is known beforehand: {@link
 * BeamModel} refuses mechanisms from where supports and hinges stand.
 */
public final class Beam {

    private Beam() {}

    /** The beam's answer to its loads. */
    public static BeamSolution solve(BeamModel model) {
        double[] supports = supportsOf(model);
        double[] nodes = nodesOf(model, supports);
        BeamSegments segments = new BeamSegments(model, nodes);
        int last = nodes.length - 1;
        int firstSegment = segments.indexOf(nodes[0]);
        int lastSegment = segments.indexOf(nodes[last]);

        segments.march(0, firstSegment, 0, 0, 0, 0);
        double leftShear = segments.endShear;
        double leftMoment = segments.endMoment;
        double leftSlope = segments.endSlope;
        double leftDeflection = segments.endDeflection;

        BeamMember[] members = new BeamMember[last];
        for (int i = 0; i < last; i++) {
            members[i] =
                    new BeamMember(
                            segments, segments.indexOf(nodes[i]), segments.indexOf(nodes[i + 1]));
        }

        // what acts beyond the last support, about that support
        double rightShear = 0;
        double rightMoment = 0;
        if (lastSegment < segments.count) {
            double end = segments.start[segments.count] - nodes[last];
            rightShear = segments.force[segments.count];
            rightMoment = -segments.force[segments.count] * end - segments.couple[segments.count];
            for (int i = lastSegment; i < segments.count; i++) {
                double s = segments.lengthOf(i);
                double x = segments.start[i] - nodes[last];
                double w = segments.load[i];
                double k = segments.loadSlope[i];
                double spread = s * (w + s * k / 2);
                rightShear += segments.force[i] + spread;
                rightMoment -=
                        segments.couple[i]
                                + segments.force[i] * x
                                + spread * x
                                + s * s * (w / 2 + s * k / 3);
            }
        }

        double[] moments = new double[last + 1];
        double[] deflections = new double[last + 1];
        moments[0] = leftMoment;
        moments[last] = rightMoment;
        solveNodes(model, supports, nodes, segments, members, moments, deflections);

        double[] reactions = new double[supports.length];
        double shearBefore = leftShear;
        int support = 0;
        for (int i = 0; i < last; i++) {
            BeamMember member = members[i];
            double turn = (moments[i + 1] - moments[i]) / member.length;
            if (supports[support] == nodes[i]) {
                reactions[support++] = member.shearA + turn - shearBefore;
            }
            shearBefore = member.shearB + turn;
            segments.march(
                    member.first,
                    member.beyond,
                    member.shearA + turn,
                    moments[i],
                    (deflections[i + 1] - deflections[i]) / member.length
                            + member.ta
                            + moments[i] * member.faa
                            + moments[i + 1] * member.fab,
                    deflections[i]);
        }
        reactions[support] = rightShear - shearBefore;
        segments.march(lastSegment, segments.count, rightShear, rightMoment, segments.endSlope, 0);
        if (firstSegment > 0) {
            double tipSlope = segments.slope[firstSegment] - leftSlope;
            segments.march(0, firstSegment, 0, 0, tipSlope, -leftDeflection - tipSlope * nodes[0]);
        }
        return new BeamSolution(model.length(), supports, reactions, segments);
    }

    /** Bending moments at supports and deflections at hinges. */
    private static void solveNodes(
            BeamModel model,
            double[] supports,
            double[] nodes,
            BeamSegments segments,
            BeamMember[] members,
            double[] moments,
            double[] deflections) {
        int last = nodes.length - 1;
        double length = model.length();
        double least = Double.POSITIVE_INFINITY;
        for (double rigidity : segments.rigidity) {
            least = Math.min(least, rigidity);
        }
        boolean[] free = new boolean[last + 1];
        boolean[] hinged = new boolean[last + 1];
        for (int i = 0; i <= last; i++) {
            free[i] = Arrays.binarySearch(supports, nodes[i]) < 0;
            hinged[i] = free[i];
            for (double hinge : model.hinges()) {
                hinged[i] |= Math.abs(hinge - nodes[i]) <= model.onePlace();
            }
        }

        double[] lower = new double[last + 1];
        double[] diagonal = new double[last + 1];
        double[] upper = new double[last + 1];
        double[] unknown = new double[last + 1];
        double momentScale = least / length;
        for (int i = 0; i <= last; i++) {
            if (i == 0 || i == last || (hinged[i] && !free[i])) {
                diagonal[i] = 1;
                unknown[i] = moments[i] / momentScale;
                continue;
            }
            BeamMember before = members[i - 1];
            BeamMember after = members[i];
            double toBefore = length / before.length;
            double toAfter = length / after.length;
            if (free[i]) {
                lower[i] = free[i - 1] ? 0 : toBefore;
                upper[i] = free[i + 1] ? 0 : toAfter;
                unknown[i] = (before.shearB - after.shearA) * length / momentScale;
            } else {
                lower[i] = free[i - 1] ? toBefore : before.fab * momentScale;
                diagonal[i] = (before.fbb + after.faa) * momentScale;
                upper[i] = free[i + 1] ? toAfter : after.fab * momentScale;
                unknown[i] = -before.tb - after.ta;
            }
        }
        solveTridiagonal(lower, diagonal, upper, unknown);
        for (int i = 0; i <= last; i++) {
            if (free[i]) {
                deflections[i] = unknown[i] * length;
            } else {
                moments[i] = unknown[i] * momentScale;
            }
        }
    }

    /**
     * Elimination with row interchanges. {@code lower[i]} stands left of {@code diagonal[i]},
     * {@code upper[i]} right of it; the right-hand side becomes the solution.
     */
    private static void solveTridiagonal(
            double[] lower, double[] diagonal, double[] upper, double[] right) {
        int n = right.length;
        double[] second = new double[n];
        for (int i = 0; i < n - 1; i++) {
            double below = lower[i + 1];
            if (Math.abs(diagonal[i]) >= Math.abs(below)) {
                double factor = below / diagonal[i];
                diagonal[i + 1] -= factor * upper[i];
                right[i + 1] -= factor * right[i];
            } else {
                double factor = diagonal[i] / below;
                double swap = diagonal[i + 1];
                diagonal[i] = below;
                diagonal[i + 1] = upper[i] - factor * swap;
                second[i] = upper[i + 1];
                upper[i + 1] = -factor * second[i];
                upper[i] = swap;
                double swapRight = right[i];
                right[i] = right[i + 1];
                right[i + 1] = swapRight - factor * right[i];
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = right[i];
            if (i + 1 < n) {
                sum -= upper[i] * right[i + 1];
            }
            if (i + 2 < n) {
                sum -= second[i] * right[i + 2];
            }
            right[i] = sum / diagonal[i];
        }
    }

    private static double[] supportsOf(BeamModel model) {
        double[] supports = new double[model.supports().size()];
        double[] ends = {};
        for (int i = 0; i < supports.length; i++) {
            supports[i] =
                    BeamSegments.snap(
                            model.supports().get(i), ends, model.length(), model.onePlace());
        }
        return supports;
    }

    /** Supports and hinges in order; a hinge over a support is that support. */
    private static double[] nodesOf(BeamModel model, double[] supports) {
        double[] nodes = Arrays.copyOf(supports, supports.length + model.hinges().size());
        int n = supports.length;
        for (double hinge : model.hinges()) {
            if (BeamSegments.snap(hinge, supports, model.length(), model.onePlace()) == hinge
                    && Arrays.binarySearch(supports, hinge) < 0) {
                nodes[n++] = hinge;
            }
        }
        Arrays.sort(nodes, 0, n);
        return Arrays.copyOf(nodes, n);
    }
}
