package org.bayledger.bench;

import java.util.concurrent.TimeUnit;
import org.bayledger.mechanics.PlateField;
import org.bayledger.mechanics.PlateSolver;
import org.bayledger.mechanics.PlateTable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The direct non-linear solution of a plate, at loads that bend it by several thicknesses. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class PlateBenchmark {

    static final String PLATE = "plate";

    /** Names of the oracle: aspect ratio and load number. */
    @Param({
        "aspect-1-load-300",
        "aspect-1.5-load-150",
        "aspect-2-load-80",
        "aspect-3-load-60",
        "aspect-5-load-40"
    })
    public String plate;

    private double aspectRatio;
    private double loadNumber;
    private PlateSolver solver;

    /** The plate that the name says. */
    @Setup
    public void setUp() {
        String[] parts = plate.split("-");
        aspectRatio = Double.parseDouble(parts[1]);
        loadNumber = Double.parseDouble(parts[3]);
        solver = PlateSolver.standard(aspectRatio, PlateTable.POISSON_RATIO);
    }

    /** One load on a plate whose aspect ratio is set up. */
    @Benchmark
    public PlateField solve() {
        return solver.solve(loadNumber);
    }

    /** One load on a plate of an aspect ratio not met before. */
    @Benchmark
    public PlateField setUpAndSolve() {
        return PlateSolver.standard(aspectRatio, PlateTable.POISSON_RATIO).solve(loadNumber);
    }
}
