package org.bayledger.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The table of units against the conversion factors of NIST Special Publication 811 (2008),
 * appendix B, to the seven digits printed there; exact ones in full. All from memory.
 */
class UnitsTest {

    private static final Map<String, Double> SI_FACTORS = new TreeMap<>();

    static {
        // lengths; the inch is exact
        SI_FACTORS.putAll(Map.of("mm", 1e-3, "cm", 1e-2, "m", 1.0, "in", 0.0254, "ft", 0.3048));
        // areas, section moduli, second moments
        SI_FACTORS.putAll(Map.of("mm2", 1e-6, "m2", 1.0, "in2", 6.4516e-4, "ft2", 9.290304e-2));
        SI_FACTORS.putAll(Map.of("mm3", 1e-9, "m3", 1.0, "in3", 1.6387064e-5));
        SI_FACTORS.putAll(Map.of("mm4", 1e-12, "cm4", 1e-8, "in4", 4.162314e-7));
        SI_FACTORS.putAll(Map.of("mm6", 1e-18, "cm6", 1e-12, "in6", 2.685359e-10));
        SI_FACTORS.putAll(Map.of("L", 1e-3, "mL", 1e-6));
        // pressures and stresses
        SI_FACTORS.putAll(Map.of("Pa", 1.0, "kPa", 1e3, "MPa", 1e6, "GPa", 1e9));
        SI_FACTORS.putAll(Map.of("psf", 47.88026, "psi", 6.894757e3, "ksi", 6.894757e6));
        // forces, loads per length, moments
        SI_FACTORS.putAll(Map.of("N", 1.0, "kN", 1e3, "lbf", 4.448222, "kip", 4.448222e3));
        SI_FACTORS.putAll(Map.of("N/m", 1.0, "kN/m", 1e3, "lbf/ft", 14.59390, "plf", 14.59390));
        SI_FACTORS.putAll(
                Map.of(
                        "N*m", 1.0, "kN*m", 1e3, "lbf*in", 0.1129848, "lbf*ft", 1.355818, "kip*in",
                        112.9848));
        // masses
        SI_FACTORS.putAll(Map.of("kg", 1.0, "lb", 0.45359237, "kg/m", 1.0, "lb/ft", 1.488164));
        SI_FACTORS.putAll(Map.of("kg/m2", 1.0, "lb/ft2", 4.882428));
        SI_FACTORS.putAll(Map.of("m/s", 1.0, "km/h", 0.2777778, "mph", 0.44704));
        SI_FACTORS.putAll(
                Map.of(
                        "degC",
                        1.0,
                        "degF",
                        0.5555556,
                        "delta_degC",
                        1.0,
                        "delta_degF",
                        0.5555556,
                        "deg",
                        1.745329e-2));
        // flows; the gallon is that of the US
        SI_FACTORS.putAll(
                Map.of(
                        "L/s",
                        1e-3,
                        "L/min",
                        1.666667e-5,
                        "gal/min",
                        6.309020e-5,
                        "cfm",
                        4.719474e-4));
        SI_FACTORS.putAll(
                Map.of(
                        "L/s/m2",
                        1e-3,
                        "cfm/ft2",
                        5.08e-3,
                        "L/min/m2",
                        1.666667e-5,
                        "gal/h/ft2",
                        3.785412e-3 / 3600 / 9.290304e-2));
        SI_FACTORS.putAll(Map.of("s", 1.0, "min", 60.0, "h", 3600.0, "d", 86_400.0, "1", 1.0));
    }

    @Test
    void everySymbolOfEveryDimensionHasAPublishedFactor() {
        Set<String> symbols =
                Arrays.stream(Dimension.values())
                        .flatMap(dimension -> dimension.symbols().stream())
                        .collect(Collectors.toCollection(TreeSet::new));
        assertThat(symbols).isEqualTo(SI_FACTORS.keySet());
    }

    @Test
    void convertsByThePublishedFactors() {
        SI_FACTORS.forEach(
                (symbol, factor) -> {
                    double measured = Units.get(symbol).toSi(1) - Units.get(symbol).toSi(0);
                    assertThat(measured).as(symbol).isCloseTo(factor, within(factor * 4e-7));
                });
    }

    @Test
    void convertsThereAndBack() {
        for (String symbol : SI_FACTORS.keySet()) {
            for (double value : new double[] {0, 1, -1, 0.1, 32, 212, 1e-6, 123_456.789}) {
                assertThat(Units.get(symbol).fromSi(Units.get(symbol).toSi(value)))
                        .as("%s %s", value, symbol)
                        .isCloseTo(value, within(1e-12 * Math.max(300, Math.abs(value))));
            }
        }
    }

    @Test
    void temperaturesHaveAnOffsetAndDifferencesHaveNone() {
        assertThat(QuantityParser.parse("32 degF", Dimension.TEMPERATURE))
                .isCloseTo(273.15, within(1e-9));
        assertThat(QuantityParser.parse("212 degF", Dimension.TEMPERATURE))
                .isCloseTo(373.15, within(1e-9));
        assertThat(QuantityParser.parse("-40 degF", Dimension.TEMPERATURE))
                .isCloseTo(QuantityParser.parse("-40 degC", Dimension.TEMPERATURE), within(1e-9));
        assertThat(QuantityParser.parse("180 delta_degF", Dimension.TEMPERATURE_DIFFERENCE))
                .isCloseTo(100, within(1e-9));
    }

    @Test
    void everyDimensionIsReportedInASymbolThatItAccepts() {
        for (Dimension dimension : Dimension.values()) {
            for (UnitSystem system : UnitSystem.values()) {
                assertThat(dimension.symbols()).contains(dimension.symbol(system));
                assertThat(Quantity.of(dimension, 1).unit(system))
                        .isEqualTo(dimension.symbol(system));
            }
        }
    }

    @Test
    void whatIsReportedCanBeReadBackToItsDigits() {
        for (Dimension dimension : Dimension.values()) {
            for (UnitSystem system : UnitSystem.values()) {
                for (double si : new double[] {0, 1, 250, 0.001234567}) {
                    Quantity quantity = Quantity.of(dimension, si);
                    double back =
                            QuantityParser.parse(
                                    quantity.value(system).doubleValue(),
                                    quantity.unit(system),
                                    dimension);
                    assertThat(back)
                            .as("%s %s", dimension, si)
                            .isCloseTo(
                                    si,
                                    within(
                                            5e-6
                                                    * Math.max(
                                                            si,
                                                            dimension == Dimension.TEMPERATURE
                                                                    ? 500
                                                                    : 1e-9)));
                }
            }
        }
    }

    @Test
    void onlyFiniteNumbersAreQuantities() {
        assertThat(Dimension.LENGTH.isAbsurd(Double.NaN)).isTrue();
        assertThat(Dimension.LENGTH.isAbsurd(1e6)).isTrue();
        assertThat(Dimension.LENGTH.isAbsurd(-1e6)).isTrue();
        assertThat(Dimension.LENGTH.isAbsurd(100)).isFalse();
        org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
                .isThrownBy(() -> Quantity.of(Dimension.LENGTH, Double.POSITIVE_INFINITY));
    }
}
