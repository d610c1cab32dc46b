package org.bayledger.blocks;

import static org.bayledger.quantity.Constants.PSI;
import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What the setting blocks rest on. A property of the member that is left out leaves its deflection
 * undetermined; a sill that is shimmed has none of them.
 *
 * @param kind whether the blocks rest on a member that bends or on a sill that is shimmed
 * @param span distance between the member's supports, m, the glass centered on it unless
 *     glassOffset says where it stands
 * @param secondMomentOfArea of the member, m4, for bending in the plane of the wall
 * @param elasticModulus of the member, Pa
 * @param massPerLength of the member, kg/m; without it the member's own weight is left out, and
 *     said so
 * @param glassOffset from the member's left support to the left corner of the glass, m, negative
 *     where the glass reaches beyond it; absent: the glass is centered
 * @param midSupport whether the member is propped at mid-span by something that does not yield;
 *     absent: no. The prop is not counted on against twist
 * @param steelSecondMomentOfArea of steel inside the member over all of its span, m4, for bending
 *     in the plane of the wall; E 200 GPa (29 000 ksi). It is not counted on against twist
 * @param steelMassPerLength of that steel, kg/m, beside massPerLength
 * @param torsionConstant J of the member, m4; without it twist is not looked at, and said so
 * @param shearModulus G of the member, Pa; absent: that of aluminum from the elastic modulus,
 *     Poisson's ratio 0.33, and said so
 * @param warpingConstant Cw of the member, m6; absent: twist without help from warping
 * @param eccentricity horizontal distance from the member's shear center to the center of gravity
 *     of the glass, m; needed for twist
 * @param rotationLimit greatest rotation of the member under the glass; absent: 1 degree
 * @param endReactionAllowable what the shear block at one end and its fasteners may carry, N;
 *     without it the end reaction is given and not judged
 * @param endTorqueAllowable the torque about the member's axis that they may carry, N m; with
 *     endReactionAllowable the two shares are added
 */
public record BlockSupport(
        Kind kind,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, max = 30)
                @Nullable Double span,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Measured.Sign.POSITIVE)
                @Nullable Double secondMomentOfArea,
        @Measured(value = Dimension.STRESS, sign = Measured.Sign.POSITIVE)
                @Nullable Double elasticModulus,
        @Measured(value = Dimension.LINE_MASS, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double massPerLength,
        @Measured(value = Dimension.DISTANCE, min = -2, max = 30) @Nullable Double glassOffset,
        @Nullable Boolean midSupport,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Measured.Sign.POSITIVE)
                @Nullable Double steelSecondMomentOfArea,
        @Measured(value = Dimension.LINE_MASS, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double steelMassPerLength,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Measured.Sign.POSITIVE)
                @Nullable Double torsionConstant,
        @Measured(value = Dimension.STRESS, sign = Measured.Sign.POSITIVE)
                @Nullable Double shearModulus,
        @Measured(value = Dimension.WARPING_CONSTANT, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double warpingConstant,
        @Measured(value = Dimension.LENGTH, min = -1, max = 1) @Nullable Double eccentricity,
        @Measured(value = Dimension.ANGLE, sign = Measured.Sign.POSITIVE, max = 0.2)
                @Nullable Double rotationLimit,
        @Measured(value = Dimension.FORCE, sign = Measured.Sign.POSITIVE)
                @Nullable Double endReactionAllowable,
        @Measured(value = Dimension.MOMENT, sign = Measured.Sign.POSITIVE)
                @Nullable Double endTorqueAllowable) {

    /**
     * Rotation of a horizontal under the glass, rad: 1 degree between its ends and mid-span
     * (curtain-wall specification practice, from memory; common practice, no source).
     */
    static final double USUAL_ROTATION_LIMIT = Math.toRadians(1);

    /** Poisson's ratio of aluminum (Aluminum Design Manual, from memory). */
    private static final double ALUMINUM_POISSON = 0.33;

    /** E of structural steel, 29 000 ksi in Pa (AISC 360-16; from memory). */
    private static final double STEEL_MODULUS = 29_000_000 * PSI;

    /** What is under the blocks. */
    public enum Kind {
        /** A horizontal that spans freely and bends under the lite. */
        MEMBER,
        /** A sill on the slab that is shimmed under each block. */
        SHIMMED_SILL
    }

    public BlockSupport {
        Faults faults = new Faults();
        if (kind == Kind.SHIMMED_SILL) {
            String detail = "belongs to a MEMBER; a SHIMMED_SILL does not span";
            faults.require(span == null, "/span", detail);
            faults.require(secondMomentOfArea == null, "/secondMomentOfArea", detail);
            faults.require(elasticModulus == null, "/elasticModulus", detail);
            faults.require(massPerLength == null, "/massPerLength", detail);
            faults.require(glassOffset == null, "/glassOffset", detail);
            faults.require(midSupport == null, "/midSupport", detail);
            faults.require(steelSecondMomentOfArea == null, "/steelSecondMomentOfArea", detail);
            faults.require(torsionConstant == null, "/torsionConstant", detail);
            faults.require(shearModulus == null, "/shearModulus", detail);
            faults.require(warpingConstant == null, "/warpingConstant", detail);
            faults.require(eccentricity == null, "/eccentricity", detail);
            faults.require(rotationLimit == null, "/rotationLimit", detail);
            faults.require(endReactionAllowable == null, "/endReactionAllowable", detail);
            faults.require(endTorqueAllowable == null, "/endTorqueAllowable", detail);
        }
        faults.require(
                steelMassPerLength == null || steelSecondMomentOfArea != null,
                "/steelMassPerLength",
                "belongs to steel inside the member; give steelSecondMomentOfArea");
        faults.throwIfAny();
    }

    /** A sill that is shimmed under each block. */
    public static BlockSupport shimmedSill() {
        return new BlockSupport(
                Kind.SHIMMED_SILL,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    /** A member of which only its bending is known; the values as in the record. */
    public static BlockSupport member(
            @Nullable Double span,
            @Nullable Double secondMomentOfArea,
            @Nullable Double elasticModulus,
            @Nullable Double massPerLength) {
        return new BlockSupport(
                Kind.MEMBER,
                span,
                secondMomentOfArea,
                elasticModulus,
                massPerLength,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    boolean propped() {
        return Boolean.TRUE.equals(midSupport);
    }

    /** Greatest distance between neighbouring supports of a span, m. */
    double clear(double span) {
        return propped() ? span / 2 : span;
    }

    /** E I of the steel inside, N m2. */
    double steelRigidity() {
        return steelSecondMomentOfArea == null ? 0 : STEEL_MODULUS * steelSecondMomentOfArea;
    }

    /** Weight of the member and of the steel inside, as far as they are known, N/m. */
    double ownWeight() {
        double mass = massPerLength == null ? 0 : massPerLength;
        double steel = steelMassPerLength == null ? 0 : steelMassPerLength;
        return (mass + steel) * STANDARD_GRAVITY;
    }

    /** G J, N m2, or null where it is not known. */
    @Nullable Double torsionalRigidity() {
        if (torsionConstant == null) {
            return null;
        }
        if (shearModulus != null) {
            return shearModulus * torsionConstant;
        }
        return elasticModulus == null
                ? null
                : (Double) (elasticModulus / (2 * (1 + ALUMINUM_POISSON)) * torsionConstant);
    }

    /** E Cw, N m4; zero where it is not known. */
    double warpingRigidity() {
        return warpingConstant == null || elasticModulus == null
                ? 0
                : elasticModulus * warpingConstant;
    }

    /** The limit of the rotation in force, rad. */
    double rotationAllowed() {
        return rotationLimit == null ? USUAL_ROTATION_LIMIT : rotationLimit;
    }

    BlockSupport withSecondMomentOfArea(double changed) {
        return with(changed, midSupport, steelSecondMomentOfArea, steelMassPerLength);
    }

    BlockSupport withMidSupport() {
        return with(secondMomentOfArea, true, steelSecondMomentOfArea, steelMassPerLength);
    }

    BlockSupport withSteel(double secondMoment, double mass) {
        return with(secondMomentOfArea, midSupport, secondMoment, mass);
    }

    private BlockSupport with(
            @Nullable Double secondMoment,
            @Nullable Boolean prop,
            @Nullable Double steel,
            @Nullable Double steelMass) {
        return new BlockSupport(
                kind,
                span,
                secondMoment,
                elasticModulus,
                massPerLength,
                glassOffset,
                prop,
                steel,
                steelMass,
                torsionConstant,
                shearModulus,
                warpingConstant,
                eccentricity,
                rotationLimit,
                endReactionAllowable,
                endTorqueAllowable);
    }
}
