package org.bayledger.bench;

import java.util.Random;
import org.bayledger.mechanics.Plate;
import org.bayledger.mechanics.PlateTable;
import org.bayledger.mechanics.SurfaceFailure;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The non-factored load of a sheet of glass on four edges from the table, another size each time.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class GlassLoadBenchmark {

    private static final int SIZES = 1 << 16;

    private static final double[] THICKNESSES = {0.00556, 0.00742, 0.00902, 0.01191};

    /** E, nu and k of glass (ASTM E1300-16, from memory). */
    private static final double E = 71.7e9;

    private static final double FLAWS = 2.86e-53;

    private final double[] widths = new double[SIZES];
    private final double[] heights = new double[SIZES];
    private final double[] thicknesses = new double[SIZES];
    private PlateTable table;
    private int next;

    /** Random sizes, of which none repeats for a long while. */
    @Setup
    public void setUp() {
        table = PlateTable.standard();
        Random random = new Random(1L);
        for (int i = 0; i < SIZES; i++) {
            widths[i] = 0.6 + 1.2 * random.nextDouble();
            heights[i] = 0.6 + 1.8 * random.nextDouble();
            thicknesses[i] = THICKNESSES[random.nextInt(THICKNESSES.length)];
        }
    }

    /** Annealed, 3 s, 8 of 1000. */
    @Benchmark
    public double nonFactoredLoads() {
        int i = next++ & (SIZES - 1);
        Plate plate = Plate.of(widths[i], heights[i], thicknesses[i], E, PlateTable.POISSON_RATIO);
        double integral = SurfaceFailure.failureIntegralFor(0.008, FLAWS, 3.0);
        return table.pressureForFailureIntegral(plate, integral);
    }
}
