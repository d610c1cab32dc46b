package org.bayledger.framing;

import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What holds the glass in against suction.
 *
 * @param kind how the edges are held
 * @param fastenerSpacing spacing of the pressure plate's screws along the member, m; for
 *     PRESSURE_PLATE
 * @param allowableFastenerTension allowable tension of one screw, pull-out and pull-over included,
 *     N; for PRESSURE_PLATE
 * @param siliconeBite width of the structural silicone joint that is bonded to glass and metal, m;
 *     for STRUCTURAL_SILICONE
 * @param allowableSiliconeStress allowable tensile stress of the structural silicone, Pa; absent:
 *     20 psi (ASTM C1401 practice, from memory)
 * @param gasketBite nominal width of glass edge that the gaskets of a pressure plate cover, m; for
 *     PRESSURE_PLATE, with minimumGasketBite; without them the bite is not checked
 * @param biteLoss what may be lost of it at once, m: the glass set to one side, its and the frame's
 *     tolerances, the edge drawing in as the glass bends, the member bending away; absent: nothing
 * @param minimumGasketBite least bite that the glazing system's maker accepts in that state, m
 */
public record Retention(
        Kind kind,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 2)
                @Nullable Double fastenerSpacing,
        @Measured(value = Dimension.FORCE, sign = Sign.POSITIVE)
                @Nullable Double allowableFastenerTension,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 0.2)
                @Nullable Double siliconeBite,
        @Measured(value = Dimension.STRESS, sign = Sign.POSITIVE)
                @Nullable Double allowableSiliconeStress,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 0.2)
                @Nullable Double gasketBite,
        @Measured(value = Dimension.LENGTH, sign = Sign.NOT_NEGATIVE, max = 0.2)
                @Nullable Double biteLoss,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 0.2)
                @Nullable Double minimumGasketBite) {

    /** How the edges of the glass are held. */
    public enum Kind {
        /** A pressure plate screwed to the members over the edges of the glass. */
        PRESSURE_PLATE,
        /** Structural silicone between glass and member. */
        STRUCTURAL_SILICONE
    }

    public Retention {
        Faults faults = new Faults();
        boolean plate = kind == Kind.PRESSURE_PLATE;
        faults.require(
                plate == (fastenerSpacing != null),
                "/fastenerSpacing",
                "is needed for PRESSURE_PLATE and for nothing else");
        faults.require(
                plate == (allowableFastenerTension != null),
                "/allowableFastenerTension",
                "is needed for PRESSURE_PLATE and for nothing else");
        faults.require(
                plate == (siliconeBite == null),
                "/siliconeBite",
                "is needed for STRUCTURAL_SILICONE and for nothing else");
        faults.require(
                !plate || allowableSiliconeStress == null,
                "/allowableSiliconeStress",
                "belongs to STRUCTURAL_SILICONE");
        faults.require(plate || gasketBite == null, "/gasketBite", "belongs to PRESSURE_PLATE");
        faults.require(
                (gasketBite == null) == (minimumGasketBite == null),
                gasketBite == null ? "/gasketBite" : "/minimumGasketBite",
                "is needed: gasketBite and minimumGasketBite go together");
        faults.require(
                biteLoss == null || gasketBite != null,
                "/biteLoss",
                "is lost of gasketBite, which was not given");
        faults.throwIfAny();
    }
}
