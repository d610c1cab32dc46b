package org.bayledger.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.TraceStep;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Parapets: both load cases of ASCE/SEI 7 and Table 7.9 of EN 1991-1-4, by hand. */
@NullMarked
class ParapetTest {

    private static final double FT2 = Wind.FOOT * Wind.FOOT;
    private static final String AT_163 =
            "[{\"id\":\"P\",\"effectiveWindArea\":\"20 ft2\",\"height\":\"163 ft\"}]";

    /**
     * Hand-worked from 7-16, 30.8: V 120 mph, B, h 160 ft, parapet 4 ft, 20 ft2.
     *
     * <ol>
     *   <li>at its top, 164 ft: Kz = 2.01 (164/1200)^(2/7) = 1.13826; qp = 0.00256 x 1.13826 x 0.85
     *       x 14400 = 35.667 psf
     *   <li>roof zone 2 (a parapet of 3 ft or more), h above 60 ft: -2.3 + 0.7 log(20/10)/log(50) =
     *       -2.17597
     *   <li>case A: 35.667 (0.9 + 2.17597) = 109.71 psf
     *   <li>case B: zone 4 35.667 (-0.9 - 0.9) = -64.201; zone 5 35.667 (-1.8 - 0.9) = -96.301 psf
     * </ol>
     */
    @Test
    void tallParapetByHand() {
        SitePressures pressures = Wind.pressures(Wind.TALL, "parapetHeight", "\"4 ft\"");
        for (double top : new double[] {160.5, 163, 164}) {
            assertPsf(pressures.pressure("4", 20 * FT2, top * Wind.FOOT), 109.71, -64.201);
            assertPsf(pressures.pressure("5", 20 * FT2, top * Wind.FOOT), 109.71, -96.301);
        }
    }

    /**
     * A parapet under 3 ft leaves the roof its corners: zone 3, -3.2 + 0.9 x 0.17719 = -3.04053.
     */
    @Test
    void lowParapetOnATallBuilding() {
        SitePressures pressures = Wind.pressures(Wind.TALL, "parapetHeight", "\"2 ft\"");
        double qp = 0.00256 * 2.01 * Math.pow(162.0 / 1200, 2.0 / 7) * 0.85 * 14400;
        assertPsf(
                pressures.pressure("4", 20 * FT2, 162 * Wind.FOOT),
                qp * (0.9 + 3.04053),
                -qp * 1.8);
    }

    /**
     * Flat low-rise roofs, walls with 10 % less: roof zones 2 and 3 of 7-10 (-1.8, -2.8), of 7-16
     * and 7-22 (-2.3, -3.2), through p / qp; at 500 ft2 -1.1 (7-10, from 100 ft2 on) and -1.4. From
     * memory.
     */
    @Test
    void roofsOfLowBuildings() {
        assertRoof("ASCE_7_10", "3 ft", 10, -1.8);
        assertRoof("ASCE_7_10", "2.9 ft", 10, -2.8);
        assertRoof("ASCE_7_10", "3 ft", 100, -1.1);
        assertRoof("ASCE_7_10", "2.9 ft", 500, -1.1);
        assertRoof("ASCE_7_16", "3 ft", 10, -2.3);
        assertRoof("ASCE_7_16", "2.9 ft", 10, -3.2);
        assertRoof("ASCE_7_22", "3 ft", 500, -1.4);
        assertRoof("ASCE_7_22", "2.9 ft", 500, -1.4);
    }

    private static void assertRoof(String standard, String parapet, double area, double roof) {
        Site site =
                Wind.site(
                        Wind.LOW,
                        "standard",
                        "\"" + standard + "\"",
                        "designBasis",
                        "\"STRENGTH\"",
                        "parapetHeight",
                        "\"" + parapet + "\"");
        AsceWalls walls = new AsceWalls(site);
        double kd = standard.equals("ASCE_7_22") ? 0.85 : 1;
        double positive = walls.pressure("4", area * FT2, 27 * Wind.FOOT).positive();
        double toward = 0.9 * Math.max(0.7, 1 - 0.3 * Math.log(area / 10) / Math.log(50));
        assertThat(toward - positive / (kd * walls.atParapetTop()))
                .as("%s, %s, %s ft2", standard, parapet, area)
                .isCloseTo(roof, within(1e-9));
    }

    private static void assertPsf(ZonePressure p, double positive, double negative) {
        assertThat(p.positive() / Wind.PSF).isCloseTo(positive, within(0.006));
        assertThat(p.negative() / Wind.PSF).isCloseTo(negative, within(0.006));
    }

    /** Below the roof nothing changes; what reaches above is never given less than the wall. */
    @Test
    void aParapetOnlyAddsAndOnlyAboveTheRoof() {
        for (String json : List.of(Wind.TALL, Wind.LOW, Wind.EN)) {
            SitePressures plain = Wind.pressures(json);
            SitePressures with = Wind.pressures(json, "parapetHeight", "\"1 m\"");
            Site site = Wind.site(json);
            double roof = site.meanRoofHeight() - (json.equals(Wind.EN) ? 1 : 0);
            for (String zone : plain.zones()) {
                for (double area = 0.2; area < 60; area *= 1.5) {
                    assertThat(with.pressure(zone, area, roof))
                            .isEqualTo(plain.pressure(zone, area, roof));
                    ZonePressure above = with.pressure(zone, area, roof + 0.9);
                    ZonePressure wall = plain.pressure(zone, area, roof + 0.9);
                    assertThat(above.positive()).isGreaterThanOrEqualTo(wall.positive());
                    assertThat(above.negative()).isLessThanOrEqualTo(wall.negative());
                }
            }
        }
    }

    @Test
    void traceOfTheParapetCanBeRedoneByHand() {
        WindResult result = Wind.run(Wind.request(Wind.TALL, AT_163, "parapetHeight", "\"4 ft\""));
        double qp = step(result, "qp");
        assertThat(step(result, "p+"))
                .isCloseTo(qp * (step(result, "GCp+") - step(result, "GCp,r")), within(1e-9));
        assertThat(step(result, "p-"))
                .isCloseTo(qp * (step(result, "GCp-") - step(result, "GCp+")), within(1e-9));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.outcome().findings())
                .extracting(Finding::code)
                .containsExactly("PARAPET_PRESSURES");
    }

    private static double step(WindResult result, String symbol) {
        return result.outcome().trace().stream()
                .filter(s -> s.symbol().equals(symbol))
                .map(TraceStep::value)
                .findFirst()
                .orElseThrow()
                .si();
    }

    /** A steep or unstated roof, and what stands above the parapet, are left open. */
    @Test
    void whatIsNotCoveredIsLeftOpen() {
        assertOpen("PARAPET_NOT_COVERED", "4 ft", "\"11 deg\"");
        assertOpen("PARAPET_NOT_COVERED", "4 ft", "null");
        assertOpen("ABOVE_ROOF", "2 ft", "\"0 deg\"");
    }

    private static void assertOpen(String code, String parapet, String slope) {
        WindResult result =
                Wind.run(
                        Wind.request(
                                Wind.TALL,
                                AT_163,
                                "parapetHeight",
                                "\"" + parapet + "\"",
                                "roofSlope",
                                slope));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(result.outcome().findings()).extracting(Finding::code).containsExactly(code);
    }

    /**
     * EN 1991-1-4 Table 7.9 (from memory), solid with return corners: 2.1 to 0.3 hp, 1.8 to 2 hp,
     * 1.4 to 4 hp, 1.2 beyond. e = 30 m: zone B begins at 6 m, zone C at 30 m. h 40 m: qp(h) 1140.6
     * Pa (EnWallsTest).
     */
    @Test
    void parapetOfEn() {
        SitePressures high = Wind.pressures(Wind.EN, "parapetHeight", "\"4 m\"");
        ZonePressure a = high.pressure("A", 10, 38);
        assertThat(a.positive()).isCloseTo(1140.57 * 2.1, within(0.1));
        assertThat(a.negative()).isCloseTo(-1140.57 * 2.1, within(0.1));
        assertThat(high.pressure("B", 10, 38).positive()).isCloseTo(1140.57 * 1.8, within(0.1));
        assertThat(high.pressure("C", 10, 38).positive()).isCloseTo(1140.57 * 1.2, within(0.1));
        SitePressures low = Wind.pressures(Wind.EN, "parapetHeight", "\"1.6 m\"");
        assertThat(low.pressure("B", 10, 39).positive()).isCloseTo(1140.57 * 1.4, within(0.1));
        // the wall itself governs: 1.0 + 0.3 over 1.2, on 1 m2
        assertThat(low.pressure("C", 1, 39).positive()).isCloseTo(1140.57 * 1.3, within(0.1));
        assertThatThrownBy(
                        () ->
                                Wind.site(
                                        Wind.EN,
                                        "parapetHeight",
                                        "\"40 m\"",
                                        "meanRoofHeight",
                                        "\"30 m\""))
                .isInstanceOf(FaultsException.class);
    }
}
