package org.bayledger.wind;

import java.util.Objects;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/**
 * Orography factor c0 over cliffs, escarpments, ridges and hills after EN 1991-1-4:2005, A.3 (from
 * memory).
 *
 * <pre>
 * phi = H/Lu;   c0 = 1 below phi 0.05,  1 + 2 s phi up to 0.3,  1 + 0.6 s above
 * Le = Lu up to phi 0.3, H/0.3 above
 * upwind:              s = A exp(B x/Lu), x negative, down to -1.5 Lu
 * ridge, hill beyond:  s = A exp(B x/Ld), up to 2 Ld
 * cliff beyond:        s = A log(x/Le)^2 + B log(x/Le) + C, from 0.1 Le to 3.5 Le; straight from
 *                      the crest's value to that at 0.1 Le
 * </pre>
 *
 * <p>The coefficients are polynomials of z/Le; beyond those ranges and above z = 2 Le s is 0. H
 * height of the feature, Lu and Ld length of its slopes, x distance from the crest, z height above
 * the ground at the building, all m; log to base 10.
 */
final class EnOrography {

    private static final double LEAST_SLOPE = 0.05;
    private static final double STEEP = 0.3;
    private static final double NEAR_CREST = 0.1;

    private final Topography hill;
    private final double upwind;
    private final double slope;
    private final double effective;

    EnOrography(Topography hill) {
        this.hill = hill;
        upwind = Objects.requireNonNull(hill.upwindLength());
        slope = hill.height() / upwind;
        effective = slope > STEEP ? hill.height() / STEEP : upwind;
    }

    /** Whether the slope is steep enough to count: 0.05, about 3 degrees. */
    boolean bigEnough() {
        return slope >= LEAST_SLOPE;
    }

    /** The factor on the mean wind speed at a height z above the ground, m. */
    double c0(double z) {
        if (!bigEnough()) {
            return 1;
        }
        return 1 + 2 * Math.min(slope, STEEP) * location(z);
    }

    /** Factor s of the place on the feature. */
    double location(double z) {
        double up = z / effective;
        if (up > 2) {
            return 0;
        }
        if (!hill.downwind()) {
            return upwindOf(-hill.crestDistance() / upwind, up);
        }
        return hill.feature() == Topography.Feature.ESCARPMENT
                ? beyondCliff(hill.crestDistance() / effective, up)
                : beyondRidge(
                        hill.crestDistance() / Objects.requireNonNull(hill.downwindLength()), up);
    }

    private static double upwindOf(double along, double up) {
        if (along < -1.5) {
            return 0;
        }
        return crest(up) * Math.exp((0.3542 * up * up - 1.0577 * up + 2.6456) * along);
    }

    private static double crest(double up) {
        return (((0.1552 * up - 0.8575) * up + 1.8133) * up - 1.9115) * up + 1.0124;
    }

    private static double beyondRidge(double along, double up) {
        if (along > 2) {
            return 0;
        }
        return crest(up) * Math.exp((-0.3056 * up * up + 1.0212 * up - 1.7637) * along);
    }

    private static double beyondCliff(double along, double up) {
        if (along > 3.5) {
            return 0;
        }
        if (along < NEAR_CREST) {
            double share = along / NEAR_CREST;
            return crest(up) * (1 - share) + beyondCliff(NEAR_CREST, up) * share;
        }
        double u = Math.log10(Math.max(up, NEAR_CREST));
        double a = ((-1.3420 * u - 0.8222) * u + 0.4609) * u - 0.0791;
        double b = ((-1.0196 * u - 0.8910) * u + 0.5343) * u - 0.1156;
        double c = ((0.8030 * u + 0.4236) * u - 0.5738) * u + 0.1606;
        double x = Math.log10(along);
        return Math.max(0, (a * x + b) * x + c);
    }

    /** How the factor follows from phi and s. */
    String formula() {
        if (!bigEnough()) {
            return "1, since the slope phi is under 0.05";
        }
        return slope > STEEP ? "1 + 0.6 s(z)" : "1 + 2 s(z) phi";
    }

    void explain(Trace trace, double h, String source) {
        trace.step(
                "H", "height of the feature", Dimension.DISTANCE, hill.height(), "input", "input");
        trace.step("phi", "upwind slope", Dimension.NONE, slope, "H/Lu", source);
        trace.step(
                "Le",
                "effective length of the slope",
                Dimension.DISTANCE,
                effective,
                "Lu up to phi 0.3, H/0.3 above",
                source);
        trace.step(
                "x",
                "distance from the crest, " + (hill.downwind() ? "downwind" : "upwind"),
                Dimension.DISTANCE,
                hill.crestDistance(),
                "input",
                "input");
        trace.step(
                "s(h)",
                "factor of the place on a feature of kind " + hill.feature() + ", at h",
                Dimension.NONE,
                location(h),
                "polynomials of z/Le over x, EN 1991-1-4 A.3",
                source);
    }
}
