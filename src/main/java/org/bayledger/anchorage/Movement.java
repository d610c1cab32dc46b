package org.bayledger.anchorage;

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
                @Nullable Double sectionArea) {

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

    /**
     * The force that temperature locks into a mullion held at both ends, N, or null where it is not
     * known: N = E A alpha dT, the greater of warming and cooling, ends that do not give.
     */
    @Nullable Double lockedInForce() {
        Double warming = warmingStrain();
        Double cooling = coolingStrain();
        return material == null || sectionArea == null || warming == null || cooling == null
                ? null
                : material.elasticModulus() * sectionArea * Math.max(warming, cooling);
    }
}
