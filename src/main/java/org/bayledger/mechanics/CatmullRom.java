package org.bayledger.mechanics;

/**
 * Cubic interpolation with continuous slopes between equally spaced nodes: in each interval the
 * cubic that has at both ends the value of the node and the slope of the line through its two
 * neighbours. E. Catmull and R. Rom, "A class of local interpolating splines" (1974).
 */
final class CatmullRom {

    private CatmullRom() {}

    /**
     * Catmull-Rom weights of the nodes interval - 1 .. interval + 2 at the fraction s of the
     * interval; a node outside the table is replaced by quadratic extrapolation and has no weight.
     */
    static double[] weights(int interval, double s, int nodes) {
        double s2 = s * s;
        double s3 = s2 * s;
        return inside(
                interval,
                nodes,
                (-s3 + 2.0 * s2 - s) / 2.0,
                (3.0 * s3 - 5.0 * s2 + 2.0) / 2.0,
                (-3.0 * s3 + 4.0 * s2 + s) / 2.0,
                (s3 - s2) / 2.0);
    }

    /** Derivatives of {@link #weights} with respect to s. */
    static double[] slopeWeights(int interval, double s, int nodes) {
        double s2 = s * s;
        return inside(
                interval,
                nodes,
                (-3.0 * s2 + 4.0 * s - 1.0) / 2.0,
                (9.0 * s2 - 10.0 * s) / 2.0,
                (-9.0 * s2 + 8.0 * s + 1.0) / 2.0,
                (3.0 * s2 - 2.0 * s) / 2.0);
    }

    private static double[] inside(
            int interval, int nodes, double w0, double w1, double w2, double w3) {
        if (interval == 0) {
            return new double[] {0.0, w1 + 3.0 * w0, w2 - 3.0 * w0, w3 + w0};
        }
        if (interval == nodes - 2) {
            return new double[] {w0 + w3, w1 - 3.0 * w3, w2 + 3.0 * w3, 0.0};
        }
        return new double[] {w0, w1, w2, w3};
    }
}
