package org.bayledger.mechanics;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.bayledger.mechanics.PlateField.Face;

/**
 * Makes the resource behind {@link PlateTable} from {@link PlateSolver}. From the top of the
 * repository (some minutes):
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=org.bayledger.mechanics.PlateTableGenerator \
 *     -Dexec.args=src/main/resources/org/bayledger/mechanics/plate-table-nu-0.22.csv
 * </pre>
 */
public final class PlateTableGenerator {

    /** Load number that stands for the linear limit at the first node. */
    private static final double LINEAR = 1e-7;

    private PlateTableGenerator() {}

    /** Writes the table to the file named by the only argument. */
    public static void main(String[] arguments) throws IOException {
        try (PrintStream out = new PrintStream(arguments[0], StandardCharsets.US_ASCII)) {
            out.print("# Plate on four edges held flat, turning and sliding freely\n");
            out.print("# Poisson's ratio 0.22, exponent 7; made by PlateTableGenerator\n");
            out.print("# aspect ratio, load number Q, W/Q, S/Q, J/Q as in PlateTable\n");
            for (int i = 0; i < PlateTable.ASPECT_NODES; i++) {
                double aspectRatio = PlateTable.aspectRatioAt(i);
                PlateSolver solver = solver(aspectRatio);
                PlateField field = solver.solve(LINEAR);
                write(out, aspectRatio, 0.0, secants(field, LINEAR));
                for (int j = 1; j < PlateTable.LOAD_NODES; j++) {
                    double load = PlateTable.loadNumberAt(aspectRatio, j);
                    field = j == 1 ? solver.solve(load) : solver.solve(load, field);
                    write(out, aspectRatio, load, secants(field, load));
                }
            }
        }
    }

    private static void write(PrintStream out, double aspectRatio, double load, double[] s) {
        out.printf(Locale.ROOT, "%.6f,%.6g,%.7g,%.7g,%.7g\n", aspectRatio, load, s[0], s[1], s[2]);
    }

    /** A little more than the standard number of functions. */
    static PlateSolver solver(double aspectRatio) {
        int orderX = 19 + (int) Math.round(20.0 * Math.log10(aspectRatio));
        return new PlateSolver(aspectRatio, PlateTable.POISSON_RATIO, orderX, 18);
    }

    /** W/Q, S/Q and J/Q of a state. */
    static double[] secants(PlateField field, double loadNumber) {
        double tension =
                Math.max(
                        field.greatestTension(Face.LOADED),
                        field.greatestTension(Face.AWAY_FROM_LOAD));
        double integral =
                field.failureIntegral(Face.LOADED) + field.failureIntegral(Face.AWAY_FROM_LOAD);
        return new double[] {
            field.centreDeflection() / loadNumber,
            tension / loadNumber,
            Math.pow(integral, 1.0 / SurfaceFailure.EXPONENT) / loadNumber
        };
    }
}
