package org.bayledger.bench;

import java.util.List;
import java.util.Random;
import org.bayledger.mechanics.Beam;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.BeamModel;
import org.bayledger.mechanics.BeamSolution;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** A mullion over three storeys with two splices under wind, other storeys each time. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 5, time = 1)
public class MullionBenchmark {

    private static final int MULLIONS = 1 << 14;

    private final double[] storeys = new double[MULLIONS];
    private final double[] splices = new double[MULLIONS];
    private final double[] winds = new double[MULLIONS];
    private int next;

    /** Random storeys, splices and winds. */
    @Setup
    public void setUp() {
        Random random = new Random(1L);
        for (int i = 0; i < MULLIONS; i++) {
            storeys[i] = 2.8 + 1.6 * random.nextDouble();
            splices[i] = 0.15 + 0.1 * random.nextDouble();
            winds[i] = 500.0 + 3000.0 * random.nextDouble();
        }
    }

    /** Reactions, greatest moment, shear and deflection. */
    @Benchmark
    public void threeSpansTwoSplices(Blackhole blackhole) {
        int i = next++ & (MULLIONS - 1);
        double h = storeys[i];
        double length = 3.0 * h;
        BeamModel model =
                BeamModel.uniform(
                        length,
                        List.of(0.0, h, 2.0 * h, length),
                        List.of(h * (1.0 + splices[i]), h * (2.0 + splices[i])),
                        1.9e5,
                        List.of(new BeamLoad.Distributed(0.0, length, winds[i], winds[i])));
        BeamSolution solution = Beam.solve(model);
        blackhole.consume(solution.reactions());
        blackhole.consume(solution.greatestMoment());
        blackhole.consume(solution.greatestShear());
        blackhole.consume(solution.greatestDeflection());
    }
}
