package org.bayledger.mechanics;

/**
 * The exact element between two neighbouring nodes (supports or hinges), taken as simply supported
 * there and turned at its ends by the moments A and B that the neighbours put on it. With x from
 * its start, b its length, M0 the bending moment of its own loads when simply supported:
 *
 * <pre>
 *   slope at A from the chord =   A faa + B fab + ta       faa = int (1 - x/b)^2 / EI dx
 *   slope at B from the chord = -(A fab + B fbb + tb)      fab = int (x/b)(1 - x/b) / EI dx
 *                                                          fbb = int (x/b)^2 / EI dx
 *   ta = int M0 (1 - x/b) / EI dx                          tb  = int M0 (x/b) / EI dx
 * </pre>
 *
 * <p>All integrals are taken segment by segment in closed form. Every term of the flexibilities is
 * positive, so that a very short segment next to a long one costs no accuracy, as it would with the
 * stiffnesses of the same element.
 */
final class BeamMember {

    /** First segment, and the one beyond the last. */
    final int first;

    final int beyond;

    /** b, m. */
    final double length;

    /** Flexibilities, rad/(N m). */
    final double faa;

    final double fab;
    final double fbb;

    /** End slopes of the simply supported member under its own loads, rad. */
    final double ta;

    final double tb;

    /** Shear at A and B of the simply supported member, just outside of the loads there, N. */
    final double shearA;

    final double shearB;

    BeamMember(BeamSegments segments, int first, int beyond) {
        this.first = first;
        this.beyond = beyond;
        double origin = segments.start[first];
        double b = segments.start[beyond] - origin;
        length = b;
        boolean atBeamEnd = beyond == segments.count;
        double endForce = atBeamEnd ? segments.force[beyond] : 0;
        double endCouple = atBeamEnd ? segments.couple[beyond] : 0;

        double total = endForce;
        double momentAboutB = -endCouple;
        for (int i = first; i < beyond; i++) {
            double s = segments.lengthOf(i);
            double toB = segments.start[beyond] - segments.start[i];
            double spread = s * (segments.load[i] + s * segments.loadSlope[i] / 2);
            double spreadAboutStart =
                    s * s * (segments.load[i] / 2 + s * segments.loadSlope[i] / 3);
            total += segments.force[i] + spread;
            momentAboutB +=
                    segments.force[i] * toB + spread * toB - spreadAboutStart - segments.couple[i];
        }
        shearA = momentAboutB / b;
        shearB = shearA - total;

        double sumAa = 0;
        double sumAb = 0;
        double sumBb = 0;
        double sumTa = 0;
        double sumTb = 0;
        double v = shearA;
        double m = 0;
        for (int i = first; i < beyond; i++) {
            v -= segments.force[i];
            m += segments.couple[i];
            double s = segments.lengthOf(i);
            double x = segments.start[i] - origin;
            double y = b - x;
            double w = segments.load[i];
            double k = segments.loadSlope[i];
            double ei = segments.rigidity[i];
            // of x^2, x y and y^2 over the segment, y = b - x
            double rest = y - s;
            sumBb += s * (x * x + x * s + s * s / 3) / ei;
            sumAa += s * (rest * rest + rest * s + s * s / 3) / ei;
            sumAb += s * (x * rest + (x + rest) * s / 2 + s * s / 6) / ei;
            double area = s * (m + s * (v / 2 - s * (w / 6 + s * k / 24)));
            double areaAboutStart = s * s * (m / 2 + s * (v / 3 - s * (w / 8 + s * k / 30)));
            sumTb += (x * area + areaAboutStart) / ei;
            sumTa += (y * area - areaAboutStart) / ei;
            m += s * (v - s * (w / 2 + s * k / 6));
            v -= s * (w + s * k / 2);
        }
        faa = sumAa / (b * b);
        fab = sumAb / (b * b);
        fbb = sumBb / (b * b);
        ta = sumTa / b;
        tb = sumTb / b;
    }
}
