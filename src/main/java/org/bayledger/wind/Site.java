package org.bayledger.wind;

import static org.bayledger.wind.Imperial.FOOT;

import org.bayledger.check.Faults;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The building and its wind climate: everything that a wall pressure needs apart from the
 * component.
 *
 * @param standard standard whose rules apply
 * @param basicWindSpeed basic wind speed with the standard's own meaning, m/s: ASCE/SEI 7, 3 s gust
 *     at 33 ft in exposure C, mapped for the building's risk category (strength level); EN
 *     1991-1-4, the basic wind velocity vb, 10 min mean at 10 m in terrain II, direction and season
 *     factors included
 * @param exposureCategory exposure upwind; required by ASCE/SEI 7, refused by EN
 * @param terrainCategory terrain upwind; required by EN 1991-1-4, refused by ASCE
 * @param meanRoofHeight h, m: ASCE/SEI 7, mean roof height above ground (eave height for roof
 *     slopes up to 10 degrees); EN 1991-1-4, height of the building above ground with its parapet
 * @param leastHorizontalDimension least horizontal dimension of the building, m; in EN also the
 *     depth d, which makes the ratio h/d the greatest
 * @param crosswindBreadth EN 1991-1-4 only, required there: greatest horizontal dimension of the
 *     building, m, taken as the breadth b for every wind direction, which makes the end zones the
 *     widest
 * @param roofSlope slope of the roof above the horizontal, rad; required by ASCE/SEI 7 where walls
 *     follow the low-rise figure
 * @param enclosureClassification enclosure of the building; required by ASCE/SEI 7. EN 1991-1-4
 *     covers buildings without a dominant opening: ENCLOSED or absent
 * @param groundElevation elevation of the ground above sea level, m; where absent ASCE/SEI 7-16 and
 *     7-22 permit a factor of 1; not used by ASCE/SEI 7-10 and EN
 * @param topographicFactor the standard's own factor for hills, ridges and escarpments: ASCE/SEI 7,
 *     Kzt on the pressure; EN 1991-1-4, c0 on the speed; 1 on flat ground. Where absent pressures
 *     are those of flat ground and the verdict is UNDETERMINED
 * @param designBasis ASCE/SEI 7: STRENGTH for W, ALLOWABLE_STRESS for 0.6 W, required; EN 1991-1-4:
 *     CHARACTERISTIC or absent
 * @param lowRiseAlternative true uses the low-rise coefficients for a building of more than 60 ft
 *     and less than 90 ft that is no taller than its least width (an exception in ASCE/SEI 7)
 * @param windborneDebrisRegion whether the site lies in a wind-borne debris region (ASCE/SEI 7);
 *     asked for where the basic wind speed reaches 130 mph
 */
public record Site(
        WindStandard standard,
        @Measured(value = Dimension.SPEED, sign = Measured.Sign.POSITIVE, max = 134.112)
                double basicWindSpeed,
        @Nullable ExposureCategory exposureCategory,
        @Nullable TerrainCategory terrainCategory,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE) double meanRoofHeight,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE)
                double leastHorizontalDimension,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE)
                @Nullable Double crosswindBreadth,
        @Measured(value = Dimension.ANGLE, sign = Measured.Sign.NOT_NEGATIVE, max = 0.7854)
                @Nullable Double roofSlope,
        @Nullable EnclosureClassification enclosureClassification,
        @Measured(value = Dimension.DISTANCE, min = -500, max = 6000)
                @Nullable Double groundElevation,
        @Measured(value = Dimension.NONE, min = 1, max = 3) @Nullable Double topographicFactor,
        @Nullable LoadBasis designBasis,
        @Nullable Boolean lowRiseAlternative,
        @Nullable Boolean windborneDebrisRegion) {

    /**
     * Greatest reference height of EN 1991-1-4, m (1.1(2) and 4.3.2(1); from memory). It is below
     * every height for which ASCE/SEI 7 defines its profile.
     */
    static final double EN_GREATEST_HEIGHT = 200;

    /** Greatest ratio h/d of EN 1991-1-4 Table 7.1. */
    private static final double EN_GREATEST_SLENDERNESS = 5;

    /** Greatest orography factor that the bounds of EN 1991-1-4 A.3 lead to, rounded up. */
    private static final double EN_GREATEST_OROGRAPHY = 2;

    public Site {
        Faults faults = new Faults();
        if (standard.isAsce()) {
            required(faults, exposureCategory, standard, "exposureCategory");
            required(faults, enclosureClassification, standard, "enclosureClassification");
            required(faults, designBasis, standard, "designBasis");
            absent(faults, terrainCategory, standard, "terrainCategory", "exposureCategory");
            absent(faults, crosswindBreadth, standard, "crosswindBreadth", "none of it");
            faults.require(
                    designBasis != LoadBasis.CHARACTERISTIC,
                    "/designBasis",
                    "ASCE/SEI 7 gives STRENGTH or ALLOWABLE_STRESS pressures");
            faults.require(
                    standard != WindStandard.ASCE_7_10
                            || enclosureClassification != EnclosureClassification.PARTIALLY_OPEN,
                    "/enclosureClassification",
                    "ASCE/SEI 7-10 does not know PARTIALLY_OPEN; it came with 7-16");
            boolean alternative = Boolean.TRUE.equals(lowRiseAlternative);
            if (alternative || Imperial.atMost(meanRoofHeight, AsceWalls.LOW_RISE_HEIGHT)) {
                required(faults, roofSlope, standard, "roofSlope");
            }
            if (alternative) {
                faults.require(
                        Imperial.lessThan(AsceWalls.LOW_RISE_HEIGHT, meanRoofHeight)
                                && Imperial.lessThan(meanRoofHeight, 90 * FOOT)
                                && Imperial.atMost(meanRoofHeight, leastHorizontalDimension),
                        "/lowRiseAlternative",
                        "is for a mean roof height above 60 ft and below 90 ft that does not exceed"
                                + " the least horizontal dimension");
            }
            if (exposureCategory != null) {
                double top = AsceEdition.of(standard).gradientHeight(exposureCategory);
                faults.require(
                        meanRoofHeight <= top,
                        "/meanRoofHeight",
                        "exceeds the height up to which the standard defines its profile, "
                                + Math.round(top / FOOT)
                                + " ft in this exposure");
            }
        } else {
            required(faults, terrainCategory, standard, "terrainCategory");
            required(faults, crosswindBreadth, standard, "crosswindBreadth");
            absent(faults, exposureCategory, standard, "exposureCategory", "terrainCategory");
            absent(faults, lowRiseAlternative, standard, "lowRiseAlternative", "none of it");
            absent(faults, windborneDebrisRegion, standard, "windborneDebrisRegion", "none of it");
            faults.require(
                    designBasis == null || designBasis == LoadBasis.CHARACTERISTIC,
                    "/designBasis",
                    "EN 1991-1-4 gives CHARACTERISTIC pressures; partial factors are the caller's");
            faults.require(
                    enclosureClassification == null
                            || enclosureClassification == EnclosureClassification.ENCLOSED,
                    "/enclosureClassification",
                    "a face with dominant openings (EN 1991-1-4, 7.2.9(5)) is not covered");
            faults.require(
                    topographicFactor == null || topographicFactor <= EN_GREATEST_OROGRAPHY,
                    "/topographicFactor",
                    "must be at most 2: in EN 1991-1-4 it is the factor c0 on the wind speed");
            faults.require(
                    meanRoofHeight <= EN_GREATEST_HEIGHT,
                    "/meanRoofHeight",
                    "must be at most 200 m, the limit of EN 1991-1-4");
            faults.require(
                    Imperial.atMost(
                            meanRoofHeight, EN_GREATEST_SLENDERNESS * leastHorizontalDimension),
                    "/meanRoofHeight",
                    "must be at most 5 times the least horizontal dimension, where EN 1991-1-4"
                            + " Table 7.1 ends");
            faults.require(
                    crosswindBreadth == null
                            || Imperial.atMost(leastHorizontalDimension, crosswindBreadth),
                    "/crosswindBreadth",
                    "is the greatest horizontal dimension: at least leastHorizontalDimension");
        }
        faults.throwIfAny();
    }

    /**
     * The same for a part of the building with a mean roof height of its own, m.
     *
     * @throws org.bayledger.check.FaultsException where the standard's rules do not hold for it
     */
    public Site withMeanRoofHeight(double height) {
        return new Site(
                standard,
                basicWindSpeed,
                exposureCategory,
                terrainCategory,
                height,
                leastHorizontalDimension,
                crosswindBreadth,
                roofSlope,
                enclosureClassification,
                groundElevation,
                topographicFactor,
                designBasis,
                lowRiseAlternative,
                windborneDebrisRegion);
    }

    /** Level of the pressures that this site leads to. */
    public LoadBasis basis() {
        return designBasis == null ? LoadBasis.CHARACTERISTIC : designBasis;
    }

    /** The factor for topography that is computed with: that of flat ground where none is given. */
    double topography() {
        return topographicFactor == null ? 1 : topographicFactor;
    }

    /** Greatest height of a component, m, for which the standard defines its profile. */
    double greatestHeight() {
        return exposureCategory == null
                ? EN_GREATEST_HEIGHT
                : AsceEdition.of(standard).gradientHeight(exposureCategory);
    }

    private static void required(
            Faults faults, @Nullable Object value, WindStandard standard, String name) {
        if (value == null) {
            faults.malformed("/" + name, "is required for " + standard);
        }
    }

    private static void absent(
            Faults faults,
            @Nullable Object value,
            WindStandard standard,
            String name,
            String instead) {
        if (value != null) {
            faults.outOfRange(
                    "/" + name, "does not belong to " + standard + ", which takes " + instead);
        }
    }
}
