package org.bayledger.glass;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.bayledger.glazing.InterlayerMaterial;

/**
 * Shear modulus of interlayers by temperature and load duration, from the table {@code
 * interlayer-shear-modulus.csv}, which names its sources (from memory; the interlayer's maker has
 * the figures that count).
 *
 * <p>Between the points of the table the compliance 1/G is linear in the temperature and in the
 * logarithm of the duration. The modulus falls steeply and then levels off, so that this harmonic
 * mean, which lies below the geometric and the arithmetic one, keeps to the softer side. Outside
 * the table there is no value.
 */
final class InterlayerModulus {

    /** Temperature taken where none is given: the practice's for wind at 3 s, K (from memory). */
    static final double USUAL_TEMPERATURE = 273.15 + 50;

    /** Longest duration covered: ten years, s. */
    static final double LONGEST = 10 * 365.25 * 86_400;

    private static final String RESOURCE = "interlayer-shear-modulus.csv";
    private static final double ZERO_CELSIUS = 273.15;
    private static final double MEGAPASCAL = 1e6;

    /** A point beyond an end of the table by rounding only still belongs to it. */
    private static final double ROUNDING = 1e-6;

    private static final InterlayerModulus TABLE = new InterlayerModulus();

    private final double[] logDurations;

    /** Rows of degrees Celsius and then MPa by duration, the coldest first. */
    private final Map<InterlayerMaterial, List<double[]>> rows =
            new EnumMap<>(InterlayerMaterial.class);

    /** Lowest temperature covered, K. */
    static double coldest(InterlayerMaterial material) {
        return TABLE.of(material).get(0)[0] + ZERO_CELSIUS;
    }

    /** Highest temperature covered, K. */
    static double hottest(InterlayerMaterial material) {
        List<double[]> rows = TABLE.of(material);
        return rows.get(rows.size() - 1)[0] + ZERO_CELSIUS;
    }

    /**
     * Shear modulus G, Pa.
     *
     * @param material of the interlayer
     * @param temperature K, from {@link #coldest} to {@link #hottest}
     * @param duration s, from 3 s to {@link #LONGEST}
     */
    static double of(InterlayerMaterial material, double temperature, double duration) {
        List<double[]> rows = TABLE.of(material);
        double[] temperatures = rows.stream().mapToDouble(row -> row[0]).toArray();
        double row = place(temperatures, temperature - ZERO_CELSIUS);
        double column = place(TABLE.logDurations, Math.log(duration));
        int upper = Math.min((int) row, temperatures.length - 2);
        double softer = row - upper;
        double compliance =
                (1 - softer) * compliance(rows.get(upper), column)
                        + softer * compliance(rows.get(upper + 1), column);
        return MEGAPASCAL / compliance;
    }

    /** 1/G of one row, 1/MPa, at a place among its durations. */
    private static double compliance(double[] row, double place) {
        int left = Math.min((int) place, row.length - 3);
        double longer = place - left;
        return (1 - longer) / row[left + 1] + longer / row[left + 2];
    }

    /** Where a value lies among rising nodes: 0 at the first, 1 at the second. */
    private static double place(double[] nodes, double value) {
        int last = nodes.length - 1;
        if (!(value >= nodes[0] - ROUNDING && value <= nodes[last] + ROUNDING)) {
            throw new IllegalArgumentException("no shear modulus on record there");
        }
        int node = 0;
        while (node < last - 1 && value > nodes[node + 1]) {
            node++;
        }
        double share = (value - nodes[node]) / (nodes[node + 1] - nodes[node]);
        return node + Math.min(1, Math.max(0, share));
    }

    private List<double[]> of(InterlayerMaterial material) {
        List<double[]> found = rows.get(material);
        if (found == null) {
            throw new IllegalStateException(RESOURCE + " has no " + material);
        }
        return found;
    }

    private InterlayerModulus() {
        try (InputStream stream = InterlayerModulus.class.getResourceAsStream(RESOURCE)) {
            if (stream == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            String text = new String(stream.readAllBytes(), StandardCharsets.US_ASCII);
            List<String> lines = text.lines().filter(line -> !line.startsWith("#")).toList();
            double[] header = numbers(lines.get(0).split(",", -1), 2);
            logDurations = Arrays.stream(header).map(Math::log).toArray();
            for (String line : lines.subList(1, lines.size())) {
                String[] columns = line.split(",", -1);
                rows.computeIfAbsent(
                                InterlayerMaterial.valueOf(columns[0]), key -> new ArrayList<>())
                        .add(numbers(columns, 1));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double[] numbers(String[] columns, int from) {
        double[] numbers = new double[columns.length - from];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Double.parseDouble(columns[from + i]);
        }
        return numbers;
    }
}
