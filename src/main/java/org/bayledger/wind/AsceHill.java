package org.bayledger.wind;

import static org.bayledger.wind.Imperial.FOOT;

import java.util.Objects;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/**
 * Speed-up over ridges, escarpments and hills after ASCE/SEI 7 Fig. 26.8-1 (7-10 and 7-16; in 7-22
 * the same, from memory).
 *
 * <pre>
 * Kzt = (1 + K1 K2 K3)^2
 * K1 = (K1/(H/Lh)) H/Lh        K2 = 1 - x/(mu Lh), not under 0        K3 = exp(-gamma z/Lh)
 * </pre>
 *
 * <p>H height of the feature, Lh distance upwind of the crest to half of it, x distance from the
 * crest, z height above the ground at the building, all m. Where H/Lh exceeds 0.5, K1 is that of
 * 0.5 and 2 H stands for Lh in K2 and K3. By 26.8.1 it counts where H/Lh is at least 0.2 and H at
 * least 15 ft in exposures C and D, 60 ft in B; else Kzt is 1. The condition that the building
 * stands in the upper half of the feature is left to K2, which fades away beyond it.
 */
final class AsceHill {

    private static final double LEAST_SLOPE = 0.2;
    private static final double GREATEST_SLOPE = 0.5;

    private final Topography hill;
    private final ExposureCategory exposure;
    private final double slope;
    private final double length;

    AsceHill(Topography hill, ExposureCategory exposure) {
        this.hill = hill;
        this.exposure = exposure;
        double halfLength = Objects.requireNonNull(hill.halfLength());
        slope = Math.min(hill.height() / halfLength, GREATEST_SLOPE);
        length = Math.max(halfLength, hill.height() / GREATEST_SLOPE);
    }

    /** Whether the feature is high and steep enough to speed the wind up (26.8.1, 4 and 5). */
    boolean bigEnough() {
        return Imperial.atMost(LEAST_SLOPE, slope)
                && Imperial.atMost(leastHeight(exposure), hill.height());
    }

    /** Least height of a feature that counts, m (26.8.1, 5). */
    static double leastHeight(ExposureCategory exposure) {
        return (exposure == ExposureCategory.B ? 60 : 15) * FOOT;
    }

    /** Whether the wind is speeded up at all. */
    private boolean counts() {
        return bigEnough() && !Boolean.FALSE.equals(hill.isolated());
    }

    /** Speed-up at the crest and at the ground. */
    double k1() {
        return slope
                * switch (hill.feature()) {
                    case RIDGE -> byExposure(1.30, 1.45, 1.55);
                    case ESCARPMENT -> byExposure(0.75, 0.85, 0.95);
                    case AXISYMMETRIC_HILL -> byExposure(0.95, 1.05, 1.15);
                };
    }

    private double byExposure(double b, double c, double d) {
        return switch (exposure) {
            case B -> b;
            case C -> c;
            case D -> d;
        };
    }

    /** Reach of the speed-up, in multiples of Lh. */
    private double mu() {
        return hill.feature() == Topography.Feature.ESCARPMENT && hill.downwind() ? 4 : 1.5;
    }

    /** How fast the speed-up fades with height. */
    private double gamma() {
        return switch (hill.feature()) {
            case RIDGE -> 3;
            case ESCARPMENT -> 2.5;
            case AXISYMMETRIC_HILL -> 4;
        };
    }

    /** Fading with the distance from the crest. */
    double k2() {
        return Math.max(0, 1 - hill.crestDistance() / (mu() * length));
    }

    /** Fading with the height z above the ground at the building, m. */
    double k3(double z) {
        return Math.exp(-gamma() * z / length);
    }

    /** The topographic factor at a height z above the ground at the building, m. */
    double kzt(double z) {
        double speedUp = counts() ? k1() * k2() * k3(z) : 0;
        return (1 + speedUp) * (1 + speedUp);
    }

    /** How the factor follows from the steps that are listed. */
    String formula() {
        return counts()
                ? "(1 + K1 K2 K3)^2, K3 = exp(-%s z/Lh)".formatted(gamma())
                : "1, since the feature does not meet the conditions of 26.8.1";
    }

    void explain(Trace trace, String source) {
        trace.step(
                "H", "height of the feature", Dimension.DISTANCE, hill.height(), "input", "input");
        trace.step(
                "Lh",
                "distance upwind of the crest to half the height",
                Dimension.DISTANCE,
                length,
                "input, at least 2 H",
                source);
        trace.step(
                "x",
                "distance from the crest",
                Dimension.DISTANCE,
                hill.crestDistance(),
                "input",
                "input");
        trace.step(
                "K1",
                "speed-up at the crest of a feature of kind " + hill.feature(),
                Dimension.NONE,
                k1(),
                "%.2f H/Lh, H/Lh at most 0.5".formatted(k1() / slope),
                source);
        trace.step(
                "K2",
                "its fading with the distance from the crest",
                Dimension.NONE,
                k2(),
                "1 - x/(%s Lh), not under 0".formatted(mu()),
                source);
    }
}
