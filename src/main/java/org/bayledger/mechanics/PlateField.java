package org.bayledger.mechanics;

import java.util.Arrays;

/**
 * A solved state of a plate: deflection and stresses everywhere, and what is read from them.
 * Dimensionless: deflection in thicknesses t, stress in E t^2/(b/2)^2, failure integral in that
 * stress^7 (b/2)^2, movement of an edge in its plane in t^2/(b/2). Places are fractions of the half
 * sides from the centre: xi along the long side, eta along the short side, each from -1 to 1.
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
     * The parts of a face in which the greatest tension moves smoothly with the load: it may jump
     * from one to the other.
     */
    enum Part {
        WHOLE,
        /** Within a quarter of the shorter side of a corner, along both sides. */
        CORNER,
        /** The rest. */
        MIDDLE;

        private boolean contains(double xi, double eta, double aspectRatio) {
            boolean corner = (1.0 - xi) * aspectRatio <= 0.5 && 1.0 - eta <= 0.5;
            return this == WHOLE || (this == CORNER) == corner;
        }
    }

    /**
     * Principal stresses at a point of a face, in E t^2/(b/2)^2, tension positive.
     *
     * @param greater the greater one
     * @param lesser the lesser one
     */
    public record PrincipalStresses(double greater, double lesser) {}

    /** A grid point below this share of the greatest is not climbed from. */
    private static final double NEARLY_GREATEST = 0.97;

    private static final int CLIMBING_ROUNDS = 6;

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

    /** Mean deflection over thickness: the volume between plate and chord plane over a b t. */
    public double meanDeflection() {
        double[][] w = PlateGrid.field(deflection, surface.deflectionX[0], surface.deflectionY[0]);
        double sum = 0.0;
        for (int p = 0; p < surface.xi.length; p++) {
            for (int q = 0; q < surface.eta.length; q++) {
                sum += surface.weightX[p] * surface.weightY[q] * w[p][q];
            }
        }
        return sum / equations.aspectRatio;
    }

    /** How far the long edges move in at a place along them, see {@link PlatePullIn}. */
    public double longEdgePullIn(double xi) {
        PlateGrid line = gridAt(new double[] {xi}, surface.eta);
        return new PlatePullIn(line, deflection, stressFunction, equations.poissonRatio)
                .longEdge(surface.weightY);
    }

    /** How far the short edges move in at a place along them, see {@link PlatePullIn}. */
    public double shortEdgePullIn(double eta) {
        PlateGrid line = gridAt(surface.xi, new double[] {eta});
        return new PlatePullIn(line, deflection, stressFunction, equations.poissonRatio)
                .shortEdge(surface.weightX);
    }

    /** Principal stresses at a place of a face. */
    public PrincipalStresses principalStresses(Face face, double xi, double eta) {
        return new Stresses(gridAt(new double[] {xi}, new double[] {eta})).at(face, 0, 0);
    }

    /** Greatest principal tensile stress anywhere on a face; zero where there is no tension. */
    public double greatestTension(Face face) {
        return greatestTension(face, Part.WHOLE);
    }

    double greatestTension(Face face, Part part) {
        double[] xi = withEnds(surface.xi);
        double[] eta = withEnds(surface.eta);
        double[][] tension = tension(face, part, xi, eta);
        double onGrid = 0.0;
        for (double[] row : tension) {
            onGrid = Math.max(onGrid, Arrays.stream(row).max().orElse(0.0));
        }
        // Peaks of nearly equal height stand near a corner; climb each that may be the highest.
        double greatest = onGrid;
        for (int p = 0; p < xi.length; p++) {
            for (int q = 0; q < eta.length; q++) {
                if (tension[p][q] >= NEARLY_GREATEST * onGrid && isPeak(tension, p, q)) {
                    greatest = Math.max(greatest, climb(face, part, xi[p], eta[q]));
                }
            }
        }
        return greatest;
    }

    /** Greatest tension around a place, by ever narrower grids around the highest point so far. */
    private double climb(Face face, Part part, double xi, double eta) {
        double greatest = 0.0;
        double atXi = xi;
        double atEta = eta;
        double stepX = 0.5 / equations.orderX;
        double stepY = 0.5 / equations.orderY;
        for (int round = 0; round < CLIMBING_ROUNDS; round++) {
            double[] x = around(atXi, stepX);
            double[] y = around(atEta, stepY);
            double[][] tension = tension(face, part, x, y);
            for (int p = 0; p < x.length; p++) {
                for (int q = 0; q < y.length; q++) {
                    if (tension[p][q] > greatest) {
                        greatest = tension[p][q];
                        atXi = x[p];
                        atEta = y[q];
                    }
                }
            }
            stepX /= 2.0;
            stepY /= 2.0;
        }
        return greatest;
    }

    private static boolean isPeak(double[][] tension, int p, int q) {
        for (int i = Math.max(0, p - 1); i <= Math.min(tension.length - 1, p + 1); i++) {
            for (int j = Math.max(0, q - 1); j <= Math.min(tension[i].length - 1, q + 1); j++) {
                if (tension[i][j] > tension[p][q]) {
                    return false;
                }
            }
        }
        return true;
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
                integral * plate.failureIntegralUnit(),
                meanDeflection() * plate.volumeUnit(),
                longEdgePullIn(0.0) * plate.pullInUnit(),
                shortEdgePullIn(0.0) * plate.pullInUnit());
    }

    /** Greater principal stress over the product of these places; zero outside the part. */
    private double[][] tension(Face face, Part part, double[] xi, double[] eta) {
        Stresses stresses = new Stresses(gridAt(xi, eta));
        double[][] result = new double[xi.length][eta.length];
        for (int p = 0; p < xi.length; p++) {
            for (int q = 0; q < eta.length; q++) {
                if (part.contains(xi[p], eta[q], equations.aspectRatio)) {
                    result[p][q] = Math.max(0.0, stresses.at(face, p, q).greater());
                }
            }
        }
        return result;
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
