package org.bayledger.mechanics;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.bayledger.mechanics.PlateField.Face;
import org.bayledger.mechanics.PlateField.Part;

/**
 * Makes the resource behind {@link PlateTable} from {@link PlateSolver}. From the top of the
 * repository (about two minutes):
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
            out.print(
                    "# aspect ratio, load number Q, W/Q, S/Q middle, S/Q corner, S/Q loaded face,"
                            + " J/Q, V/Q, P/Q^2 long edges, P/Q^2 short edges\n");
            for (int i = 0; i < PlateTable.ASPECT_NODES; i++) {
                double aspectRatio = PlateTable.aspectRatioAt(i);
                PlateSolver solver = PlateSolver.standard(aspectRatio, PlateTable.POISSON_RATIO);
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
        out.printf(Locale.ROOT, "%.6f,%.6g", aspectRatio, load);
        for (double secant : s) {
            out.printf(Locale.ROOT, ",%.7g", secant);
        }
        out.print("\n");
    }

    /** W/Q, the three S/Q, J/Q, V/Q and the two P/Q^2 of a state. */
    static double[] secants(PlateField field, double loadNumber) {
        double integral =
                field.failureIntegral(Face.LOADED) + field.failureIntegral(Face.AWAY_FROM_LOAD);
        return new double[] {
            field.centreDeflection() / loadNumber,
            field.greatestTension(Face.AWAY_FROM_LOAD, Part.MIDDLE) / loadNumber,
            field.greatestTension(Face.AWAY_FROM_LOAD, Part.CORNER) / loadNumber,
            field.greatestTension(Face.LOADED) / loadNumber,
            Math.pow(integral, 1.0 / SurfaceFailure.EXPONENT) / loadNumber,
            field.meanDeflection() / loadNumber,
            field.longEdgePullIn(0.0) / (loadNumber * loadNumber),
            field.shortEdgePullIn(0.0) / (loadNumber * loadNumber)
        };
    }
}
