package org.bayledger.mechanics;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;

/**
 * Response of a uniformly loaded plate on four edges, interpolated from a table that {@link
 * PlateSolver} made; the theory and the edge conditions are given there.
 *
 * <p>In dimensionless form the response depends on two numbers, the aspect ratio r = a/b and the
 * load number Q = q (b/2)^4/(E t^4). The table holds, for Poisson's ratio {@link #POISSON_RATIO},
 * the logarithms of secants that vary slowly: W/Q, S/Q and J/Q with W the centre deflection over t,
 * S the greatest principal tension over E t^2/(b/2)^2, and J the seventh root of the failure
 * integral of both faces over that stress unit^7 (b/2)^2. S is held three times, for the middle and
 * for the corners of the face away from the load and for the loaded face, since the greatest of
 * them has kinks where it passes from one place to another. V/Q is held for the mean deflection V
 * over t, and P/Q^2 for the movement P of the middle of the long and of the short edges over
 * t^2/(b/2), which begins with the square of the load ({@link PlatePullIn}). Nodes are equally
 * spaced in ln r and, for each r, in ln(1 + Q) from 0 to ln(1 + Q_max(r)); between them a
 * Catmull-Rom cubic in both directions has continuous slopes. The first load node is linear theory
 * itself, so small loads tend to linear theory without a seam.
 *
 * <p>Limits: 1 &lt;= r &lt;= 10 and Q &lt;= Q_max(r) = (640 + 750/r^3)/r. Somewhat above Q_max the
 * ring of compression along the edges buckles, and the smooth state that the table describes is no
 * longer the plate's. That load, found from the stability of the solver's own states in all four
 * classes of symmetry, is Q = 1550, 640, 407, 241, 143 and over 130 for r = 1, 1.5, 2, 3, 5 and 10.
 * Outside the limits every method refuses. Thin-plate theory itself takes slopes as small: it holds
 * while the deflection is small against the shorter side, which is for the caller to judge.
 */
public final class PlateTable {

    /** Poisson's ratio of the table. */
    public static final double POISSON_RATIO = 0.22;

    /** Greatest aspect ratio of the table. */
    public static final double MAX_ASPECT_RATIO = 10.0;

    static final int ASPECT_NODES = 41;
    static final int LOAD_NODES = 61;
    static final String RESOURCE = "plate-table-nu-0.22.csv";

    private static final double ASPECT_STEP = Math.log(MAX_ASPECT_RATIO) / (ASPECT_NODES - 1);

    /** A ratio beyond an end of the table by rounding only still belongs to it. */
    private static final double ROUNDING = 1e-12;

    private static final int MAX_ITERATIONS = 60;

    /**
     * ln(W/Q), three ln(S/Q), ln(J/Q), ln(V/Q) and two ln(P/Q^2), each [aspect node][load node].
     */
    private final double[][] deflection = new double[ASPECT_NODES][LOAD_NODES];

    private final double[][] tensionMiddle = new double[ASPECT_NODES][LOAD_NODES];
    private final double[][] tensionCorner = new double[ASPECT_NODES][LOAD_NODES];
    private final double[][] tensionLoaded = new double[ASPECT_NODES][LOAD_NODES];
    private final double[][] failure = new double[ASPECT_NODES][LOAD_NODES];
    private final double[][] volume = new double[ASPECT_NODES][LOAD_NODES];
    private final double[][] longEdge = new double[ASPECT_NODES][LOAD_NODES];
    private final double[][] shortEdge = new double[ASPECT_NODES][LOAD_NODES];

    /** The table for Poisson's ratio 0.22 and surface flaw exponent 7. */
    public static PlateTable standard() {
        return Standard.TABLE;
    }

    /** Read when first asked for, so that the generator can run without the resource. */
    private static final class Standard {
        static final PlateTable TABLE = new PlateTable();
    }

    /**
     * Response of a plate.
     *
     * @param pressure uniform pressure, Pa, not negative
     * @throws IllegalArgumentException outside the limits of the table
     */
    public PlateResponse respond(Plate plate, double pressure) {
        Plate.requireNotNegative(pressure, "pressure");
        Row row = new Row(plate);
        double q = plate.loadNumber(pressure);
        if (q > row.greatestLoad * (1.0 + ROUNDING)) {
            throw beyond(plate, row, "pressure " + pressure + " Pa");
        }
        if (pressure == 0.0) {
            return PlateResponse.NONE;
        }
        Place place = row.at(q);
        double tension =
                Math.max(
                        place.value(tensionMiddle),
                        Math.max(place.value(tensionCorner), place.value(tensionLoaded)));
        double root = q * Math.exp(place.value(failure));
        double movement = q * q * plate.pullInUnit();
        return new PlateResponse(
                q * Math.exp(place.value(deflection)) * plate.thickness(),
                q * Math.exp(tension) * plate.stressUnit(),
                Math.pow(root, SurfaceFailure.EXPONENT) * plate.failureIntegralUnit(),
                q * Math.exp(place.value(volume)) * plate.volumeUnit(),
                Math.exp(place.value(longEdge)) * movement,
                Math.exp(place.value(shortEdge)) * movement);
    }

    /**
     * Pressure in Pa at which the failure integral is reached.
     *
     * @param integral Pa^7 m^2, not negative
     * @throws IllegalArgumentException outside the limits of the table
     */
    public double pressureForFailureIntegral(Plate plate, double integral) {
        Plate.requireNotNegative(integral, "integral");
        double root =
                Math.pow(integral / plate.failureIntegralUnit(), 1.0 / SurfaceFailure.EXPONENT);
        return inverse(plate, failure, root, () -> "failure integral " + integral + " Pa^7 m^2");
    }

    /**
     * Pressure in Pa at which the centre deflection is reached.
     *
     * @param centreDeflection m, not negative
     * @throws IllegalArgumentException outside the limits of the table
     */
    public double pressureForDeflection(Plate plate, double centreDeflection) {
        Plate.requireNotNegative(centreDeflection, "centreDeflection");
        double ratio = centreDeflection / plate.thickness();
        return inverse(plate, deflection, ratio, () -> "deflection " + centreDeflection + " m");
    }

    /**
     * Greatest pressure in Pa that the table covers for this plate.
     *
     * @throws IllegalArgumentException where the plate itself is outside the limits of the table
     */
    public double greatestPressure(Plate plate) {
        return new Row(plate).greatestLoad * plate.pressureUnit();
    }

    /** Greatest load number of the table at an aspect ratio. */
    static double greatestLoadNumber(double aspectRatio) {
        return (640.0 + 750.0 / (aspectRatio * aspectRatio * aspectRatio)) / aspectRatio;
    }

    static double aspectRatioAt(int node) {
        return Math.exp(node * ASPECT_STEP);
    }

    static double loadNumberAt(double aspectRatio, int node) {
        return Math.expm1(Math.log1p(greatestLoadNumber(aspectRatio)) * node / (LOAD_NODES - 1));
    }

    /** Newton's method for z = ln Q in z + ln(secant) = ln(target), kept inside a bracket. */
    private double inverse(Plate plate, double[][] secant, double target, Supplier<String> what) {
        Row row = new Row(plate);
        if (target == 0.0) {
            return 0.0;
        }
        double goal = Math.log(target);
        double upper = Math.log(row.greatestLoad);
        double excess = goal - upper - row.node(LOAD_NODES - 1.0).value(secant);
        if (excess > ROUNDING) {
            throw beyond(plate, row, what.get());
        }
        double z = Math.min(goal - row.node(0.0).value(secant), upper);
        double lower = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < MAX_ITERATIONS; i++) {
            double q = Math.exp(z);
            Place place = row.at(q);
            double difference = z + place.value(secant) - goal;
            if (difference > 0.0) {
                upper = Math.min(upper, z);
            } else {
                lower = Math.max(lower, z);
            }
            double slope = 1.0 + place.slope(secant) * q / ((1.0 + q) * row.loadStep);
            double next = z - difference / slope;
            if (!(next >= lower && next <= upper)) {
                next = Double.isInfinite(lower) ? z - 1.0 : (lower + upper) / 2.0;
            }
            if (Math.abs(next - z) <= 1e-12) {
                return Math.exp(next) * plate.pressureUnit();
            }
            z = next;
        }
        return Math.exp(z) * plate.pressureUnit();
    }

    private static IllegalArgumentException beyond(Plate plate, Row row, String what) {
        return new IllegalArgumentException(
                what
                        + " is beyond what the plate solution covers: at most "
                        + row.greatestLoad * plate.pressureUnit()
                        + " Pa on this plate, past which its edges would buckle");
    }

    /** The table at one aspect ratio: four neighbouring aspect nodes with their weights. */
    private static final class Row {
        final double greatestLoad;

        /** Distance of load nodes in ln(1 + Q). */
        final double loadStep;

        private final int firstNode;
        private final double[] weights;

        Row(Plate plate) {
            double r = plate.aspectRatio();
            if (plate.poissonRatio() != POISSON_RATIO) {
                throw new IllegalArgumentException(
                        "the plate solution is tabulated for Poisson's ratio "
                                + POISSON_RATIO
                                + ", not "
                                + plate.poissonRatio());
            }
            if (r > MAX_ASPECT_RATIO * (1.0 + ROUNDING)) {
                throw new IllegalArgumentException(
                        "aspect ratio "
                                + r
                                + " is over "
                                + MAX_ASPECT_RATIO
                                + ", the greatest the plate solution covers");
            }
            greatestLoad = greatestLoadNumber(r);
            loadStep = Math.log1p(greatestLoad) / (LOAD_NODES - 1);
            double place = Math.log(r) / ASPECT_STEP;
            int interval = Math.min((int) place, ASPECT_NODES - 2);
            firstNode = interval - 1;
            weights = CatmullRom.weights(interval, place - interval, ASPECT_NODES);
        }

        /** The place of a load number among the load nodes. */
        Place at(double q) {
            return node(Math.log1p(q) / loadStep);
        }

        /** A place among the load nodes, 0 to LOAD_NODES - 1. */
        Place node(double place) {
            int interval = Math.min((int) place, LOAD_NODES - 2);
            return new Place(this, interval, place - interval);
        }

        double sum(double[][] secant, int interval, double[] loadWeights) {
            double total = 0.0;
            for (int i = 0; i < 4; i++) {
                if (weights[i] != 0.0) {
                    double[] row = secant[firstNode + i];
                    double along = 0.0;
                    for (int j = 0; j < 4; j++) {
                        if (loadWeights[j] != 0.0) {
                            along += loadWeights[j] * row[interval - 1 + j];
                        }
                    }
                    total += weights[i] * along;
                }
            }
            return total;
        }
    }

    /** One aspect ratio and one load: the weights are the same for all columns of the table. */
    private static final class Place {
        private final Row row;
        private final int interval;
        private final double fraction;
        private final double[] weights;

        Place(Row row, int interval, double fraction) {
            this.row = row;
            this.interval = interval;
            this.fraction = fraction;
            weights = CatmullRom.weights(interval, fraction, LOAD_NODES);
        }

        double value(double[][] secant) {
            return row.sum(secant, interval, weights);
        }

        /** Derivative of {@link #value} with respect to the place. */
        double slope(double[][] secant) {
            return row.sum(
                    secant, interval, CatmullRom.slopeWeights(interval, fraction, LOAD_NODES));
        }
    }

    private PlateTable() {
        try (InputStream stream = PlateTable.class.getResourceAsStream(RESOURCE)) {
            if (stream == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            String text = new String(stream.readAllBytes(), StandardCharsets.US_ASCII);
            List<String> lines = text.lines().filter(line -> !line.startsWith("#")).toList();
            if (lines.size() != ASPECT_NODES * LOAD_NODES) {
                throw new IllegalStateException(RESOURCE + " has " + lines.size() + " nodes");
            }
            for (int node = 0; node < lines.size(); node++) {
                String[] columns = lines.get(node).split(",", -1);
                int i = node / LOAD_NODES;
                int j = node % LOAD_NODES;
                deflection[i][j] = Math.log(Double.parseDouble(columns[2]));
                tensionMiddle[i][j] = Math.log(Double.parseDouble(columns[3]));
                tensionCorner[i][j] = Math.log(Double.parseDouble(columns[4]));
                tensionLoaded[i][j] = Math.log(Double.parseDouble(columns[5]));
                failure[i][j] = Math.log(Double.parseDouble(columns[6]));
                volume[i][j] = Math.log(Double.parseDouble(columns[7]));
                longEdge[i][j] = Math.log(Double.parseDouble(columns[8]));
                shortEdge[i][j] = Math.log(Double.parseDouble(columns[9]));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
