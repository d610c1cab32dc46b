package org.bayledger.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.bayledger.check.FaultsException;
import org.bayledger.check.LoadBasis;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Hand-worked examples, figure end points and limits of ASCE/SEI 7 walls, all from memory. */
@NullMarked
class AsceWallsTest {

    private static final double FT2 = Wind.FOOT * Wind.FOOT;

    private static void assertPsf(
            SitePressures pressures,
            String zone,
            double areaFt2,
            double heightFt,
            double positive,
            double negative) {
        ZonePressure p = pressures.pressure(zone, areaFt2 * FT2, heightFt * Wind.FOOT);
        assertThat(p.positive() / Wind.PSF).isCloseTo(positive, within(0.002));
        assertThat(p.negative() / Wind.PSF).isCloseTo(negative, within(0.002));
    }

    /**
     * 7-16, above 60 ft; hand-worked. V 120 mph, B, h 160 ft, enclosed, at sea level, strength.
     *
     * <ol>
     *   <li>Kh = 2.01 (160/1200)^(2/7) = 1.13026; qh = 0.00256 x 1.13026 x 0.85 x 120^2 = 35.416
     *       psf
     *   <li>at 155 ft Kz = 1.12006; qz = 35.096 psf
     *   <li>mullion 13 ft by 5 ft: A = 13 x max(5, 13/3) = 65 ft2; share of the line from 20 to 500
     *       ft2 = log(65/20)/log(25) = 0.36617
     *   <li>GCp = +0.9 - 0.3 x 0.36617 = 0.79015; zone 4 -0.9 + 0.2 x 0.36617 = -0.82677; zone 5
     *       -1.8 + 0.8 x 0.36617 = -1.50706
     *   <li>p = 35.096 x 0.79015 + 35.416 x 0.18 = 34.106; -35.416 x (0.82677 + 0.18) = -35.656;
     *       -35.416 x (1.50706 + 0.18) = -59.749 psf
     * </ol>
     */
    @Test
    void tallBuildingOf2016() {
        SitePressures pressures = Wind.pressures(Wind.TALL);
        assertThat(pressures.velocityPressureAtRoof() / Wind.PSF).isCloseTo(35.416, within(0.002));
        assertThat(pressures.zoneWidth()).isCloseTo(10 * Wind.FOOT, within(1e-9));
        assertThat(pressures.effectiveWindArea(13 * Wind.FOOT, 5 * Wind.FOOT))
                .isCloseTo(65 * FT2, within(1e-9));
        assertPsf(pressures, "4", 65, 155, 34.106, -35.656);
        assertPsf(pressures, "5", 65, 155, 34.106, -59.749);
        assertPsf(pressures, "4", 20, 155, 37.961, -38.249);
        assertPsf(pressures, "5", 20, 155, 37.961, -70.124);
        assertThat(pressures.basis()).isEqualTo(LoadBasis.STRENGTH);
    }

    /**
     * 7-10, up to 60 ft, allowable stress; hand-worked. V 115 mph, C, h 25 ft, roof 5 degrees.
     *
     * <ol>
     *   <li>Kh = 2.01 (25/900)^(2/9.5) = 0.94526; qh = 0.00256 x 0.94526 x 0.85 x 115^2 = 27.202
     *       psf
     *   <li>mullion 12 ft by 5 ft: A = 12 x max(5, 4) = 60 ft2; share = log(6)/log(50) = 0.45801
     *   <li>GCp, 10 % less: 0.9 (1.0 - 0.3 x 0.45801) = 0.77634; zone 4 0.9 (-1.1 + 0.3 x 0.45801)
     *       = -0.86634; zone 5 0.9 (-1.4 + 0.6 x 0.45801) = -1.01267
     *   <li>strength: 27.202 x 0.95634 = 26.015; -27.202 x 1.04634 = -28.463; -27.202 x 1.19267 =
     *       -32.443 psf
     *   <li>0.6 W: 15.609; -17.078; -19.466 psf
     * </ol>
     */
    @Test
    void lowBuildingOf2010() {
        SitePressures pressures = Wind.pressures(Wind.LOW);
        assertThat(pressures.velocityPressureAtRoof() / Wind.PSF).isCloseTo(27.202, within(0.002));
        assertThat(pressures.zoneWidth()).isCloseTo(10 * Wind.FOOT, within(1e-9));
        assertPsf(pressures, "4", 60, 20, 15.609, -17.078);
        assertPsf(pressures, "5", 60, 20, 15.609, -19.466);
        assertThat(pressures.basis()).isEqualTo(LoadBasis.ALLOWABLE_STRESS);
    }

    /**
     * 7-22, up to 60 ft; hand-worked. V 130 mph, D, h 45 ft, least dimension 80 ft, roof 20
     * degrees, partially enclosed, ground at 1000 ft, 10 ft2.
     *
     * <ol>
     *   <li>Kh = 2.41 (45/1935)^(2/11.5) = 1.25296; Ke = exp(-0.0362) = 0.96445
     *   <li>qh = 0.00256 x 1.25296 x 0.96445 x 130^2 = 52.281 psf, without Kd
     *   <li>p = 0.85 x 52.281 (1.0 + 0.55) = 68.880; zone 4 0.85 x 52.281 (-1.1 - 0.55) = -73.324;
     *       zone 5 0.85 x 52.281 (-1.4 - 0.55) = -86.655 psf
     *   <li>a = min(8, 18) = 8 ft
     * </ol>
     */
    @Test
    void partiallyEnclosedBuildingOf2022() {
        SitePressures pressures =
                Wind.pressures(
                        Wind.TALL,
                        "standard",
                        "\"ASCE_7_22\"",
                        "basicWindSpeed",
                        "\"130 mph\"",
                        "exposureCategory",
                        "\"D\"",
                        "meanRoofHeight",
                        "\"45 ft\"",
                        "leastHorizontalDimension",
                        "\"80 ft\"",
                        "roofSlope",
                        "\"20 deg\"",
                        "enclosureClassification",
                        "\"PARTIALLY_ENCLOSED\"",
                        "groundElevation",
                        "\"1000 ft\"");
        assertThat(pressures.velocityPressureAtRoof() / Wind.PSF).isCloseTo(52.281, within(0.002));
        assertThat(pressures.zoneWidth()).isCloseTo(8 * Wind.FOOT, within(1e-9));
        assertPsf(pressures, "4", 10, 40, 68.880, -73.324);
        assertPsf(pressures, "5", 10, 40, 68.880, -86.655);
    }

    /** End points of the low-rise figure and its flat ends, through p / qh -+ GCpi. */
    @Test
    void endPointsOfTheLowRiseFigure() {
        String[] steep = {"roofSlope", "\"20 deg\"", "designBasis", "\"STRENGTH\""};
        assertCoefficients(steep, "4", 10, 1.0, -1.1);
        assertCoefficients(steep, "4", 500, 0.7, -0.8);
        assertCoefficients(steep, "5", 10, 1.0, -1.4);
        assertCoefficients(steep, "5", 500, 0.7, -0.8);
        assertCoefficients(steep, "5", 1, 1.0, -1.4);
        assertCoefficients(steep, "5", 5000, 0.7, -0.8);
        // 100 ft2: the formulas beside the figure give 1.1766 - 0.1766 log A and so on
        assertCoefficients(steep, "4", 100, 1.1766 - 0.3532, -1.2766 + 0.3532);
        assertCoefficients(steep, "5", 100, 1.1766 - 0.3532, -1.7532 + 0.7064);
        String[] flat = {"roofSlope", "\"10 deg\"", "designBasis", "\"STRENGTH\""};
        assertCoefficients(flat, "5", 10, 0.9, -1.26);
        String[] beyond = {"roofSlope", "\"10.1 deg\"", "designBasis", "\"STRENGTH\""};
        assertCoefficients(beyond, "5", 10, 1.0, -1.4);
    }

    /** End points of the figure above 60 ft; no reduction for a flat roof there. */
    @Test
    void endPointsOfTheFigureForTallBuildings() {
        String[] tall = {"meanRoofHeight", "\"160 ft\"", "designBasis", "\"STRENGTH\""};
        assertCoefficients(tall, "4", 20, 0.9, -0.9);
        assertCoefficients(tall, "4", 500, 0.6, -0.7);
        assertCoefficients(tall, "5", 20, 0.9, -1.8);
        assertCoefficients(tall, "5", 500, 0.6, -1.0);
        assertCoefficients(tall, "5", 10, 0.9, -1.8);
        assertCoefficients(tall, "5", 900, 0.6, -1.0);
        assertCoefficients(tall, "5", 100, 0.75, -1.4);
    }

    /** For a component whose top is at the roof, where q is qh. */
    private static void assertCoefficients(
            String[] changes, String zone, double areaFt2, double positive, double negative) {
        Site site = Wind.site(Wind.LOW, changes);
        SitePressures pressures = SitePressures.of(site);
        ZonePressure p = pressures.pressure(zone, areaFt2 * FT2, site.meanRoofHeight());
        double qh = pressures.velocityPressureAtRoof();
        assertThat(p.positive() / qh - 0.18).isCloseTo(positive, within(2e-4));
        assertThat(p.negative() / qh + 0.18).isCloseTo(negative, within(2e-4));
    }

    /** 60 ft itself still follows the low-rise figure, in feet and in metres. */
    @Test
    void sixtyFeetIsLowRise() {
        for (String sixty : new String[] {"\"60 ft\"", "\"18.288 m\""}) {
            SitePressures pressures =
                    Wind.pressures(
                            Wind.LOW, "meanRoofHeight", sixty, "designBasis", "\"STRENGTH\"");
            double qh = pressures.velocityPressureAtRoof();
            assertThat(pressures.pressure("5", 10 * FT2, 5).negative() / qh)
                    .isCloseTo(-0.9 * 1.4 - 0.18, within(1e-9));
        }
    }

    /** The low-rise coefficients, with qh, for 60 to 90 ft and no taller than wide. */
    @Test
    void lowRiseAlternative() {
        SitePressures pressures =
                Wind.pressures(
                        Wind.LOW,
                        "meanRoofHeight",
                        "\"80 ft\"",
                        "lowRiseAlternative",
                        "true",
                        "designBasis",
                        "\"STRENGTH\"");
        double qh = pressures.velocityPressureAtRoof();
        ZonePressure p = pressures.pressure("5", 10 * FT2, 10 * Wind.FOOT);
        assertThat(p.positive() / qh).isCloseTo(0.9 + 0.18, within(1e-9));
        assertThat(p.negative() / qh).isCloseTo(-0.9 * 1.4 - 0.18, within(1e-9));

        assertAlternativeRefused("\"90 ft\"", "\"100 ft\"");
        assertAlternativeRefused("\"60 ft\"", "\"100 ft\"");
        assertAlternativeRefused("\"80 ft\"", "\"79 ft\"");
    }

    private static void assertAlternativeRefused(String height, String width) {
        assertThatThrownBy(
                        () ->
                                Wind.site(
                                        Wind.LOW,
                                        "meanRoofHeight",
                                        height,
                                        "leastHorizontalDimension",
                                        width,
                                        "lowRiseAlternative",
                                        "true"))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining("/lowRiseAlternative");
    }

    /**
     * Width of the end zones: 0.1 of the least dimension, 0.4 h, 0.04 of the least dimension, 3 ft,
     * and 0.8 h for wide low buildings (7-16; the bound is not taken in 7-10).
     */
    @Test
    void widthOfEndZones() {
        assertWidth("ASCE_7_16", "\"40 ft\"", "\"100 ft\"", "\"0 deg\"", 10);
        assertWidth("ASCE_7_16", "\"15 ft\"", "\"100 ft\"", "\"0 deg\"", 6);
        assertWidth("ASCE_7_16", "\"15 ft\"", "\"200 ft\"", "\"0 deg\"", 8);
        assertWidth("ASCE_7_16", "\"15 ft\"", "\"20 ft\"", "\"0 deg\"", 3);
        assertWidth("ASCE_7_16", "\"15 ft\"", "\"300 ft\"", "\"0 deg\"", 12);
        assertWidth("ASCE_7_16", "\"15 ft\"", "\"400 ft\"", "\"0 deg\"", 12);
        assertWidth("ASCE_7_16", "\"15 ft\"", "\"400 ft\"", "\"7 deg\"", 12);
        assertWidth("ASCE_7_16", "\"15 ft\"", "\"400 ft\"", "\"8 deg\"", 16);
        assertWidth("ASCE_7_10", "\"15 ft\"", "\"400 ft\"", "\"0 deg\"", 16);
        assertWidth("ASCE_7_16", "\"160 ft\"", "\"20 ft\"", "\"0 deg\"", 3);
        assertWidth("ASCE_7_16", "\"100 ft\"", "\"500 ft\"", "\"0 deg\"", 50);
    }

    private static void assertWidth(
            String standard, String height, String width, String slope, double feet) {
        SitePressures pressures =
                Wind.pressures(
                        Wind.LOW,
                        "standard",
                        "\"" + standard + "\"",
                        "meanRoofHeight",
                        height,
                        "leastHorizontalDimension",
                        width,
                        "roofSlope",
                        slope);
        assertThat(pressures.zoneWidth() / Wind.FOOT).isCloseTo(feet, within(1e-9));
    }

    /** 30.2.2: not less than 16 psf in either direction, before the 0.6. */
    @Test
    void leastPressure() {
        ZonePressure strength =
                Wind.pressures(
                                Wind.LOW,
                                "basicWindSpeed",
                                "\"60 mph\"",
                                "designBasis",
                                "\"STRENGTH\"")
                        .pressure("4", 500 * FT2, 5);
        assertThat(strength.positive() / Wind.PSF).isCloseTo(16, within(1e-9));
        assertThat(strength.negative() / Wind.PSF).isCloseTo(-16, within(1e-9));
        ZonePressure allowable =
                Wind.pressures(Wind.LOW, "basicWindSpeed", "\"60 mph\"")
                        .pressure("4", 500 * FT2, 5);
        assertThat(allowable.positive() / Wind.PSF).isCloseTo(9.6, within(1e-9));
        assertThat(allowable.negative() / Wind.PSF).isCloseTo(-9.6, within(1e-9));
    }

    /** Kd stands in q through 2016 and with p in 2022; neither loses nor doubles it. */
    @Test
    void directionalityIsAppliedOnceInEachEdition() {
        String[] d = {"exposureCategory", "\"D\"", "designBasis", "\"STRENGTH\""};
        for (String standard : new String[] {"ASCE_7_10", "ASCE_7_16", "ASCE_7_22"}) {
            Site site =
                    Wind.site(
                            Wind.LOW,
                            d[0],
                            d[1],
                            d[2],
                            d[3],
                            "roofSlope",
                            "\"20 deg\"",
                            "standard",
                            "\"" + standard + "\"");
            double kh =
                    standard.equals("ASCE_7_22")
                            ? 2.41 * Math.pow(25.0 / 1935, 2 / 11.5)
                            : 2.01 * Math.pow(25.0 / 700, 2 / 11.5);
            double expected = 0.00256 * kh * 0.85 * 115 * 115 * (1.4 + 0.18);
            ZonePressure p = SitePressures.of(site).pressure("5", 10 * FT2, 5);
            assertThat(-p.negative() / Wind.PSF).as(standard).isCloseTo(expected, within(1e-6));
        }
    }

    @Test
    void topographicFactorMultipliesThePressure() {
        ZonePressure flat = Wind.pressures(Wind.TALL).pressure("5", 5, 30);
        ZonePressure hill =
                Wind.pressures(Wind.TALL, "topographicFactor", "1.5").pressure("5", 5, 30);
        assertThat(hill.positive()).isCloseTo(1.5 * flat.positive(), within(1e-9));
        assertThat(hill.negative()).isCloseTo(1.5 * flat.negative(), within(1e-9));
    }

    /** What stands above the roof has the velocity pressure of its own height, both ways. */
    @Test
    void aboveTheRoofNothingIsSmallerThanBelow() {
        SitePressures pressures = Wind.pressures(Wind.TALL);
        ZonePressure atRoof = pressures.pressure("5", 5, 160 * Wind.FOOT);
        ZonePressure above = pressures.pressure("5", 5, 164 * Wind.FOOT);
        double ratio = Math.pow(164.0 / 160, 2.0 / 7);
        assertThat(above.positive()).isCloseTo(ratio * atRoof.positive(), within(1e-6));
        assertThat(above.negative()).isCloseTo(ratio * atRoof.negative(), within(1e-6));
    }
}
