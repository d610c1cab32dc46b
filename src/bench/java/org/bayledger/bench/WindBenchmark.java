package org.bayledger.bench;

import java.util.Random;
import org.bayledger.check.LoadBasis;
import org.bayledger.wind.EnclosureClassification;
import org.bayledger.wind.ExposureCategory;
import org.bayledger.wind.GoverningPressure;
import org.bayledger.wind.Site;
import org.bayledger.wind.SitePressures;
import org.bayledger.wind.TerrainCategory;
import org.bayledger.wind.WindStandard;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Both pressures of a component in every zone of the wall, another component each time. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 5, time = 1)
public class WindBenchmark {

    private static final int COMPONENTS = 1 << 16;

    /** Standard whose rules apply. */
    @Param({"ASCE_7_16", "EN_1991_1_4"})
    public WindStandard standard;

    private final double[] spans = new double[COMPONENTS];
    private final double[] widths = new double[COMPONENTS];
    private final double[] heights = new double[COMPONENTS];
    private SitePressures pressures;
    private int next;

    /** A tower, and random members of its wall. */
    @Setup
    public void setUp() {
        Site site =
                standard.isAsce()
                        ? new Site(
                                standard,
                                53.6,
                                ExposureCategory.B,
                                null,
                                50.0,
                                30.0,
                                null,
                                0.0,
                                EnclosureClassification.ENCLOSED,
                                0.0,
                                1.0,
                                LoadBasis.STRENGTH,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null)
                        : new Site(
                                standard,
                                26.0,
                                null,
                                TerrainCategory.II,
                                50.0,
                                30.0,
                                40.0,
                                null,
                                null,
                                null,
                                1.0,
                                LoadBasis.CHARACTERISTIC,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null);
        pressures = SitePressures.of(site);
        Random random = new Random(1L);
        for (int i = 0; i < COMPONENTS; i++) {
            spans[i] = 1.0 + 5.0 * random.nextDouble();
            widths[i] = 0.5 + 2.0 * random.nextDouble();
            heights[i] = 1.0 + 48.0 * random.nextDouble();
        }
    }

    /** Effective area, all zones, the governing of each sign. */
    @Benchmark
    public GoverningPressure componentPressures() {
        int i = next++ & (COMPONENTS - 1);
        double area = pressures.effectiveWindArea(spans[i], widths[i]);
        return pressures.governing(pressures.zones(), area, heights[i]);
    }
}
