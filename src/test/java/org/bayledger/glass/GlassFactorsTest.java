package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.glazing.InterlayerMaterial;
import org.bayledger.glazing.Pane;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of ASTM E1300 (from memory): glass type, duration, load share; moduli of interlayers. */
@NullMarked
class GlassFactorsTest {

    private static double factor(String treatments, int index, double duration) {
        List<Pane> panes = new ArrayList<>();
        for (String code : treatments.split("/", -1)) {
            panes.add(
                    Pane.monolithic(
                            0.006,
                            switch (code) {
                                case "AN" -> HeatTreatment.ANNEALED;
                                case "HS" -> HeatTreatment.HEAT_STRENGTHENED;
                                default -> HeatTreatment.FULLY_TEMPERED;
                            }));
        }
        return GlassTypeFactor.of(panes, index, duration);
    }

    /** Single lites and double units at 3 s: E1300 tables of glass type factors. */
    @ParameterizedTest
    @CsvSource({
        "AN, 1.0",
        "HS, 2.0",
        "FT, 4.0",
        "AN/AN, 0.9",
        "HS/HS, 1.8",
        "FT/FT, 3.6",
        "AN/HS, 1.0",
        "HS/AN, 1.9",
        "AN/FT, 1.0",
        "FT/AN, 3.8",
        "HS/FT, 1.9",
        "FT/HS, 3.8",
        "AN/AN/AN, 0.81",
        "HS/HS/HS, 1.62",
        "FT/AN/FT, 3.24"
    })
    void hasTheShortFactors(String treatments, double expected) {
        assertThat(factor(treatments, 0, 3)).isCloseTo(expected, within(1e-12));
    }

    /** At 30 d: E1300 tables of single lites and double units; triple units on the safe side. */
    @ParameterizedTest
    @CsvSource({
        "AN, 0.43",
        "HS, 1.3",
        "FT, 3.0",
        "AN/AN, 0.39",
        "AN/HS, 0.43",
        "AN/FT, 0.43",
        "HS/AN, 1.25",
        "HS/HS, 1.25",
        "HS/FT, 1.25",
        "FT/AN, 2.85",
        "FT/HS, 2.85",
        "FT/FT, 2.85",
        "AN/AN/AN, 0.34",
        "HS/AN/HS, 1.053",
        "FT/FT/FT, 2.43"
    })
    void hasTheLongFactors(String treatments, double expected) {
        assertThat(factor(treatments, 0, 30 * 86400.0)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void hasNoOtherDurationForHeatTreatedGlass() {
        assertThatThrownBy(() -> factor("HS", 0, 60)).isInstanceOf(IllegalArgumentException.class);
    }

    /** E1300, load duration factors for annealed glass. */
    @ParameterizedTest
    @CsvSource({
        "3, 1.00",
        "10, 0.93",
        "60, 0.83",
        "600, 0.72",
        "3600, 0.64",
        "43200, 0.55",
        "86400, 0.53",
        "604800, 0.47",
        "2592000, 0.43",
        "31557600, 0.36"
    })
    void hasTheDurationFactors(double seconds, double expected) {
        assertThat(LoadDuration.annealedFactor(seconds)).isCloseTo(expected, within(1e-12));
    }

    /** E1300, load share factors of double units: 6 with 6 mm, and 6 with 10 mm. */
    @Test
    void sharesLoadByStiffness() {
        EffectiveThickness six = EffectiveThickness.monolithic(0.00556);
        EffectiveThickness ten = EffectiveThickness.monolithic(0.00902);
        assertThat(PaneSums.loadShare(List.of(six, six), 0)).isCloseTo(2.0, within(1e-12));
        assertThat(PaneSums.loadShare(List.of(six, ten), 0)).isCloseTo(5.27, within(0.005));
        assertThat(PaneSums.loadShare(List.of(six, ten), 1)).isCloseTo(1.23, within(0.005));
        assertThat(PaneSums.loadShare(List.of(six, six, six), 1)).isCloseTo(3.0, within(1e-12));
        assertThat(PaneSums.loadShare(List.of(ten), 0)).isCloseTo(1.0, within(1e-12));
    }

    /** A laminated pane draws load when its film is stiff and leaves it to the other when soft. */
    @Test
    void boundsTheShareOfLaminatedPanes() {
        EffectiveThickness mono = EffectiveThickness.monolithic(0.00556);
        EffectiveThickness laminate = EffectiveThickness.twoPlies(0.00292, 0.00292, 0.00076, 1, 1);
        double drawn = PaneSums.loadShare(List.of(laminate, mono), 0);
        double left = PaneSums.loadShare(List.of(laminate, mono), 1);
        assertThat(1 / drawn + 1 / left).isGreaterThan(1.2);
        double rigid = Math.pow(laminate.onePiece(), 3);
        assertThat(drawn).isCloseTo((rigid + Math.pow(0.00556, 3)) / rigid, within(1e-9));
        double soft = 2 * Math.pow(0.00292, 3);
        assertThat(left).isCloseTo(1 + soft / Math.pow(0.00556, 3), within(1e-5));
    }

    @Test
    void readsTheModulusAndKeepsToTheSofterSideBetween() {
        double kelvin = 273.15;
        InterlayerMaterial pvb = InterlayerMaterial.PVB;
        assertThat(InterlayerModulus.of(pvb, kelvin + 50, 3)).isCloseTo(0.44e6, within(1.0));
        assertThat(InterlayerModulus.of(pvb, kelvin + 20, 3)).isCloseTo(8.06e6, within(1.0));
        assertThat(InterlayerModulus.of(pvb, kelvin + 30, 60)).isCloseTo(0.753e6, within(1.0));
        assertThat(InterlayerModulus.of(pvb, kelvin + 20, InterlayerModulus.LONGEST))
                .isCloseTo(0.266e6, within(1.0));
        assertThat(InterlayerModulus.of(InterlayerMaterial.IONOMER, kelvin + 60, 86_400))
                .isCloseTo(1.29e6, within(1.0));
        // harmonic means, by hand: 2/(1/0.971 + 1/0.610) and 2/(1/8.06 + 1/1.64) at sqrt(3 x 60) s
        assertThat(InterlayerModulus.of(pvb, kelvin + 35, 3)).isCloseTo(0.74929e6, within(10.0));
        assertThat(InterlayerModulus.of(pvb, kelvin + 20, Math.sqrt(180)))
                .isCloseTo(2.72544e6, within(10.0));
        for (InterlayerMaterial material : InterlayerMaterial.values()) {
            double before = Double.POSITIVE_INFINITY;
            for (double t = InterlayerModulus.coldest(material);
                    t <= InterlayerModulus.hottest(material);
                    t += 1) {
                double longer = Double.POSITIVE_INFINITY;
                for (double d = 3; d < InterlayerModulus.LONGEST; d *= 2) {
                    double g = InterlayerModulus.of(material, t, d);
                    assertThat(g).isLessThanOrEqualTo(longer * (1 + 1e-12));
                    longer = g;
                }
                double g = InterlayerModulus.of(material, t, 3);
                assertThat(g).isLessThanOrEqualTo(before * (1 + 1e-12));
                before = g;
            }
        }
        assertThatThrownBy(() -> InterlayerModulus.of(pvb, kelvin + 51, 3))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> InterlayerModulus.of(pvb, kelvin + 19, 3))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> InterlayerModulus.of(pvb, kelvin + 20, 4e8))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
