package org.bayledger.mechanics;

import java.util.List;

/**
 * A straight bar under torques, both ends held against twist and free to warp: St. Venant's torsion
 * and, where a warping rigidity is given, restrained warping (Vlasov).
 *
 * <pre>
 *   G J phi'' - E Cw phi'''' = -t      phi = phi'' = 0 at both ends; k = sqrt(G J / (E Cw))
 *   one torque T at a, x up to a:
 *     phi = T / (G J) x [(L - a) x / L - sinh(k (L - a)) sinh(k x) / (k sinh(k L))]
 *   without warping rigidity:  phi = T (L - a) x / (L G J)
 *   torque at the support at x = 0:  T (L - a) / L
 * </pre>
 *
 * <p>Source: textbook closed forms of Vlasov's theory for thin-walled bars; superposition for
 * several torques. Valid for small angles, linear elastic material and a cross-section that keeps
 * its shape. All torques turn the same way, so that phi is concave and has one greatest value.
 *
 * @param length L, m
 * @param torsionalRigidity G J, N m2
 * @param warpingRigidity E Cw, N m4; zero where warping adds nothing
 * @param torques in any order
 */
public record TwistedBar(
        double length, double torsionalRigidity, double warpingRigidity, List<Torque> torques) {

    /**
     * Below this k L the bracket of the closed form cancels; warping then carries all but k2 L2.
     */
    private static final double WARPING_ONLY = 1e-3;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** Narrows the place of the greatest value to a ten-millionth of the length. */
    private static final int STEPS = 34;

    /**
     * A torque at one place.
     *
     * @param at position, m from the bar's start
     * @param torque N m
     */
    public record Torque(double at, double torque) {}

    public TwistedBar {
        torques = List.copyOf(torques);
        if (!(length > 0 && torsionalRigidity > 0 && warpingRigidity >= 0)) {
            throw new IllegalArgumentException("length and torsional rigidity must be above zero");
        }
        boolean onward = torques.stream().anyMatch(one -> one.torque() > 0);
        for (Torque one : torques) {
            if (!(one.at() >= 0 && one.at() <= length)) {
                throw new IllegalArgumentException("a torque must stand on the bar");
            }
            if (one.torque() < 0 == onward && one.torque() != 0) {
                throw new IllegalArgumentException("all torques must turn the same way");
            }
        }
    }

    /** Angle of twist at a position in m, rad. */
    public double rotation(double at) {
        double sum = 0;
        for (Torque one : torques) {
            sum += one.torque() * unit(one.at(), at);
        }
        return sum;
    }

    /** The greatest angle of twist, rad, and where it is. */
    public BeamExtreme greatestRotation() {
        if (warpingRigidity == 0) {
            // straight between torques: the greatest is at one of them
            return torques.stream()
                    .map(one -> new BeamExtreme(one.at(), rotation(one.at())))
                    .reduce(
                            new BeamExtreme(0, 0),
                            (a, b) -> Math.abs(b.value()) > Math.abs(a.value()) ? b : a);
        }
        double low = 0;
        double high = length;
        for (int i = 0; i < STEPS; i++) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            if (Math.abs(rotation(left)) < Math.abs(rotation(right))) {
                low = left;
            } else {
                high = right;
            }
        }
        double at = (low + high) / 2;
        return new BeamExtreme(at, rotation(at));
    }

    /** Torque on the support at the bar's start, N m. */
    public double startTorque() {
        return torques.stream()
                .mapToDouble(one -> one.torque() * (length - one.at()) / length)
                .sum();
    }

    /** Torque on the support at the bar's end, N m. */
    public double endTorque() {
        return torques.stream().mapToDouble(one -> one.torque() * one.at() / length).sum();
    }

    /** Angle at x under a unit torque at a, rad/(N m). */
    private double unit(double a, double x) {
        double beyond = x <= a ? length - a : a;
        double near = x <= a ? x : length - x;
        double pure = beyond * near / length;
        if (warpingRigidity == 0) {
            return pure / torsionalRigidity;
        }
        double k = Math.sqrt(torsionalRigidity / warpingRigidity);
        if (k * length < WARPING_ONLY) {
            return pure * (length * length - beyond * beyond - near * near) / (6 * warpingRigidity);
        }
        double restrained =
                Math.exp(k * (beyond + near - length))
                        * Math.expm1(-2 * k * beyond)
                        * Math.expm1(-2 * k * near)
                        / (-2 * Math.expm1(-2 * k * length) * k);
        return (pure - restrained) / torsionalRigidity;
    }
}
