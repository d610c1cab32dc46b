package org.bayledger.mechanics;

/**
 * How far the edges of a deflected plate move in, in their plane, at its middle surface.
 *
 * <p>The edges slide freely, and the middle of the plate stays where it is by symmetry. From von
 * Karman's strains, e_x = u_x + w_x^2/2, the movement of a short edge toward the middle is
 *
 * <pre>
 * -u = Integral_0^(a/2) [ w_x^2/2 - (s_x - nu s_y)/E ] dx
 * </pre>
 *
 * and that of a long edge the same with x and y exchanged. The first part is the shortening of the
 * chord of the bent line, the second what the membrane stresses s (Phi_yy and Phi_xx) stretch back.
 * Rotation about the edge moves nothing at the middle surface; the faces move by t/2 times it.
 * Dimensionless, in t^2/(b/2). Source: S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and
 * Shells, 2nd ed., section 100 (from memory).
 */
final class PlatePullIn {

    private final double[][] stressX;
    private final double[][] stressY;
    private final double[][] slopeX;
    private final double[][] slopeY;
    private final double poissonRatio;

    /**
     * The fields along a line.
     *
     * @param line points of a line through the plate, with the basis functions there
     * @param deflection coefficients of the deflection
     * @param stressFunction coefficients of the stress function
     */
    PlatePullIn(PlateGrid line, double[] deflection, double[] stressFunction, double poissonRatio) {
        stressX = PlateGrid.field(stressFunction, line.stressX[0], line.stressY[2]);
        stressY = PlateGrid.field(stressFunction, line.stressX[2], line.stressY[0]);
        slopeX = PlateGrid.field(deflection, line.deflectionX[1], line.deflectionY[0]);
        slopeY = PlateGrid.field(deflection, line.deflectionX[0], line.deflectionY[1]);
        this.poissonRatio = poissonRatio;
    }

    /** Of the short edges, from a line along x with the weights of its points. */
    double shortEdge(double[] weights) {
        double sum = 0.0;
        for (int p = 0; p < weights.length; p++) {
            double strain = stressX[p][0] - poissonRatio * stressY[p][0];
            sum += weights[p] * (slopeX[p][0] * slopeX[p][0] / 2.0 - strain);
        }
        return sum;
    }

    /** Of the long edges, from a line along y with the weights of its points. */
    double longEdge(double[] weights) {
        double sum = 0.0;
        for (int q = 0; q < weights.length; q++) {
            double strain = stressY[0][q] - poissonRatio * stressX[0][q];
            sum += weights[q] * (slopeY[0][q] * slopeY[0][q] / 2.0 - strain);
        }
        return sum;
    }
}
