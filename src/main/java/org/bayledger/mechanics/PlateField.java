package org.bayledger.mechanics;

/**
 * A solved state of a plate: deflection and stresses everywhere, and what is read from them.
 * Dimensionless: deflection in thicknesses t, stress in E t^2/(b/2)^2, failure integral in that
 * stress^7 (b/2)^2. Places are fractions of the half sides from the centre: xi along the long side,
 * eta along the short side, each from -1 to 1.
 *
 * <pre>
 * membrane  s_x = Phi_yy,  s_y = Phi_xx,  s_xy = -Phi_xy
 * bending   b_x = (W_xx + nu W_yy) / (2 (1 - nu^2)),  b_xy = W_xy / (2 (1 + nu)), at the loaded face;
 *           opposite at the face away from the load
 * </pre>
 */
public final class PlateField {

    /** A face of the plate. */
    public enum Face {
        LOADED(1.0),
        AWAY_FROM_LOAD(-1.0);

        private final double sign;

        Face(double sign) {
            this.sign = sign;
        }
    }

    /**
     * Principal stresses at a point of a face, in E t^2/(b/2)^2, tension positive.
     *
     * @param greater the greater one
     * @param lesser the lesser one
     */
    public record PrincipalStresses(double greater, double lesser) {}

    private static final int SEARCH_ROUNDS = 5;

    private final PlateEquations equations;
    private final PlateGrid surface;
    private final double[] deflection;
    private final double[] stressFunction;

    PlateField(PlateEquations equations, PlateGrid surface, double[] deflection) {
        this.equations = equations;
        this.surface = surface;
        this.deflection = deflection;
        this.stressFunction = equations.stressFunction(deflection);
    }

    double[] deflectionCoefficients() {
        return deflection;
    }

    /** Deflection over thickness at the centre. */
    public double centreDeflection() {
        return deflectionAt(0.0, 0.0);
    }

    /** Deflection over thickness at a place. */
    public double deflectionAt(double xi, double eta) {
        PlateGrid at = gridAt(new double[] {xi}, new double[] {eta});
        return PlateGrid.field(deflection, at.deflectionX[0], at.deflectionY[0])[0][0];
    }

    /** Principal stresses at a place of a face. */
    public PrincipalStresses principalStresses(Face face, double xi, double eta) {
        return new Stresses(gridAt(new double[] {xi}, new double[] {eta})).at(face, 0, 0);
    }

    /** Greatest principal tensile stress anywhere on a face; zero where there is no tension. */
    public double greatestTension(Face face) {
        double stepX = 0.5 / equations.orderX;
        double stepY = 0.5 / equations.orderY;
        double[] best = greatest(face, withEnds(surface.xi), withEnds(surface.eta));
        // The grid is finer toward the edges, so a small neighbourhood holds the peak.
        for (int round = 0; round < SEARCH_ROUNDS; round++) {
            double[] refined = greatest(face, around(best[1], stepX), around(best[2], stepY));
            if (refined[0] > best[0]) {
                best = refined;
            }
            stepX /= 3.0;
            stepY /= 3.0;
        }
        return best[0];
    }

    /** Integral of (c sigma)^7 over a face, see {@link SurfaceFailure}. */
    public double failureIntegral(Face face) {
        Stresses stresses = new Stresses(surface);
        double sum = 0.0;
        for (int p = 0; p < surface.xi.length; p++) {
            for (int q = 0; q < surface.eta.length; q++) {
                PrincipalStresses s = stresses.at(face, p, q);
                sum +=
                        surface.weightX[p]
                                * surface.weightY[q]
                                * SurfaceFailure.weightedStress(s.greater(), s.lesser());
            }
        }
        return 4.0 * sum;
    }

    /**
     * This state as that of a plate in metres and pascals; the plate must have its aspect ratio.
     */
    public PlateResponse response(Plate plate) {
        if (Math.abs(plate.aspectRatio() / equations.aspectRatio - 1.0) > 1e-9
                || plate.poissonRatio() != equations.poissonRatio) {
            throw new IllegalArgumentException(
                    "the plate's aspect ratio "
                            + plate.aspectRatio()
                            + " or Poisson's ratio "
                            + plate.poissonRatio()
                            + " is not that of the solution");
        }
        double tension =
                Math.max(greatestTension(Face.LOADED), greatestTension(Face.AWAY_FROM_LOAD));
        double integral = failureIntegral(Face.LOADED) + failureIntegral(Face.AWAY_FROM_LOAD);
        return new PlateResponse(
                centreDeflection() * plate.thickness(),
                tension * plate.stressUnit(),
                integral * plate.failureIntegralUnit());
    }

    /** {greatest tension, xi, eta} over the product of these places. */
    private double[] greatest(Face face, double[] xi, double[] eta) {
        Stresses stresses = new Stresses(gridAt(xi, eta));
        double[] best = {0.0, 0.0, 0.0};
        for (int p = 0; p < xi.length; p++) {
            for (int q = 0; q < eta.length; q++) {
                double s = stresses.at(face, p, q).greater();
                if (s > best[0]) {
                    best = new double[] {s, xi[p], eta[q]};
                }
            }
        }
        return best;
    }

    private static double[] withEnds(double[] gauss) {
        double[] result = new double[gauss.length + 2];
        System.arraycopy(gauss, 0, result, 1, gauss.length);
        result[gauss.length + 1] = 1.0;
        return result;
    }

    private static double[] around(double centre, double step) {
        double[] result = new double[5];
        for (int i = 0; i < result.length; i++) {
            result[i] = Math.max(0.0, Math.min(1.0, centre + (i - 2) * step / 2.0));
        }
        return result;
    }

    private PlateGrid gridAt(double[] xi, double[] eta) {
        return PlateGrid.points(equations.aspectRatio, equations.orderX, equations.orderY, xi, eta);
    }

    /** Membrane and bending stresses at the points of a grid. */
    private final class Stresses {
        private final double[][] membraneX;
        private final double[][] membraneY;
        private final double[][] membraneXy;
        private final double[][] curvatureX;
        private final double[][] curvatureY;
        private final double[][] twist;

        Stresses(PlateGrid g) {
            membraneX = PlateGrid.field(stressFunction, g.stressX[0], g.stressY[2]);
            membraneY = PlateGrid.field(stressFunction, g.stressX[2], g.stressY[0]);
            membraneXy = PlateGrid.field(stressFunction, g.stressX[1], g.stressY[1]);
            curvatureX = PlateGrid.field(deflection, g.deflectionX[2], g.deflectionY[0]);
            curvatureY = PlateGrid.field(deflection, g.deflectionX[0], g.deflectionY[2]);
            twist = PlateGrid.field(deflection, g.deflectionX[1], g.deflectionY[1]);
        }

        PrincipalStresses at(Face face, int p, int q) {
            double nu = equations.poissonRatio;
            double bending = face.sign / (2.0 * (1.0 - nu * nu));
            double sx = membraneX[p][q] + bending * (curvatureX[p][q] + nu * curvatureY[p][q]);
            double sy = membraneY[p][q] + bending * (curvatureY[p][q] + nu * curvatureX[p][q]);
            double sxy = -membraneXy[p][q] + bending * (1.0 - nu) * twist[p][q];
            double mean = (sx + sy) / 2.0;
            double radius = Math.hypot((sx - sy) / 2.0, sxy);
            return new PrincipalStresses(mean + radius, mean - radius);
        }
    }
}
