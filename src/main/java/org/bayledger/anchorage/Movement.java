package org.bayledger.anchorage;

import java.util.Arrays;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What moves the metal and the building. Whatever is left out is said in a finding and leaves the
 * verdict undetermined; zero says that there is none.
 *
 * @param material metal of the mullions
 * @param temperature of the metal when installed and in service
 * @param erectionTolerance by which a joint may be built too narrow or an anchor off its place, m
 * @param metalClearance to be left between the metal of a joint when it is closed, m; none asked
 *     for where absent
 * @param columnShortening by which the building's columns shorten after installation, m: the
 *     greatest between two neighboring dead-load anchors and between any anchor and the dead-load
 *     anchor of its piece
 * @param interstoryDrift Dp over the story height, design seismic story drift in the plane of the
 *     wall, m
 * @param storyHeight over which the drift takes place, m
 * @param drift the lite that has to follow the drift
 * @param sectionArea of the mullion, m2: for the force that temperature locks in between two
 *     dead-load anchors
 * @param columnCreep by which the columns go on shortening under what stays on them, m, counted as
 *     columnShortening is; absent: not in the numbers, unless columnShortening holds it
 * @param fabricationTolerance by which a piece may be cut too long or too short, m; absent: none
 *     besides erectionTolerance
 * @param structureTolerance by which the structure may be off its place after the anchors' own
 *     adjustment, m; absent: none besides erectionTolerance
 * @param combination how the tolerances are added to one another; absent: SUM
 */
public record Movement(
        @Nullable MullionMaterial material,
        @Nullable MetalTemperature temperature,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double erectionTolerance,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double metalClearance,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double columnShortening,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 10)
                @Nullable Double interstoryDrift,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, max = 100)
                @Nullable Double storyHeight,
        @Nullable DriftClearance drift,
        @Measured(value = Dimension.SECTION_AREA, sign = Measured.Sign.POSITIVE)
                @Nullable Double sectionArea,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double columnCreep,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double fabricationTolerance,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double structureTolerance,
        @Nullable Combination combination) {

    /** Nothing known of what moves. */
    public static final Movement NOTHING_SAID =
            new Movement(
                    null, null, null, null, null, null, null, null, null, null, null, null, null);

    /** How tolerances are added to one another; movements are always added as a plain sum. */
    public enum Combination {
        /** Plain sum: all of them at their worst at once. */
        SUM,
        /**
         * Root of the sum of the squares of the tolerances, which are taken as independent of one
         * another.
         */
        RSS_TOLERANCES
    }

    /** t, m: the tolerances that were given, added as asked; 0 where none was. */
    double tolerance() {
        double sum = 0;
        double squares = 0;
        for (Double each :
                Arrays.asList(erectionTolerance, fabricationTolerance, structureTolerance)) {
            if (each != null) {
                sum += each;
                squares += each * each;
            }
        }
        return combination == Combination.RSS_TOLERANCES ? Math.sqrt(squares) : sum;
    }

    /** How t was found, for the trace. */
    String toleranceFormula() {
        return combination == Combination.RSS_TOLERANCES
                ? "root of the sum of the squares of erection, fabrication and structure"
                : "erection + fabrication + structure";
    }

    Movement withDrift(DriftClearance lite) {
        return new Movement(
                material,
                temperature,
                erectionTolerance,
                metalClearance,
                columnShortening,
                interstoryDrift,
                storyHeight,
                lite,
                sectionArea,
                columnCreep,
                fabricationTolerance,
                structureTolerance,
                combination);
    }

    /** Strain from installation to the hottest, or null where it is not known. */
    @Nullable Double warmingStrain() {
        return material == null || temperature == null
                ? null
                : material.expansion() * temperature.warming();
    }

    /** Strain from installation to the coldest, as a positive number, or null likewise. */
    @Nullable Double coolingStrain() {
        return material == null || temperature == null
                ? null
                : material.expansion() * temperature.cooling();
    }
}
