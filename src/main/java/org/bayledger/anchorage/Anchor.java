package org.bayledger.anchorage;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * One anchor of a run of vertical mullions.
 *
 * @param id the caller's name for it, once in a request
 * @param elevation above the building datum, m
 * @param role whether it carries the weight or lets the mullion slide
 * @param slabLiveLoadDeflection how far the slab that holds it goes down when its live load comes,
 *     m
 * @param slotUp room that its slot leaves the mullion to move up from the installed position, m;
 *     only looked at on a WIND_LOAD anchor
 * @param slotDown likewise down, m
 * @param windReactionPositive force on it under positive wind pressure, N, allowable-stress level
 * @param windReactionNegative force on it under negative wind pressure, N, allowable-stress level
 * @param deadLoadReaction weight that it carries, N
 * @param allowableWindForce what it may carry from wind, N
 * @param allowableDeadLoadForce what it may carry of weight, N
 * @param slabCreepDeflection how far the slab that holds it goes down after installation under what
 *     stays on it (creep, long-term deflection), m; absent: not in the numbers
 * @param boltDiameter of the bolt in its slot, m: for the length of the slot from end to end; only
 *     looked at on a WIND_LOAD anchor
 * @param stiffness force up or down over the movement of the mullion at it, N/m; only looked at
 *     where a piece has several DEAD_LOAD anchors; absent: it does not give
 * @param bracket how it is bolted to the structure
 */
public record Anchor(
        @NotBlank @Size(max = 100) String id,
        @Measured(Dimension.DISTANCE) double elevation,
        Role role,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double slabLiveLoadDeflection,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double slotUp,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double slotDown,
        @Measured(Dimension.FORCE) @Nullable Double windReactionPositive,
        @Measured(Dimension.FORCE) @Nullable Double windReactionNegative,
        @Measured(value = Dimension.FORCE, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double deadLoadReaction,
        @Measured(value = Dimension.FORCE, sign = Measured.Sign.POSITIVE)
                @Nullable Double allowableWindForce,
        @Measured(value = Dimension.FORCE, sign = Measured.Sign.POSITIVE)
                @Nullable Double allowableDeadLoadForce,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double slabCreepDeflection,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double boltDiameter,
        @Measured(value = Dimension.LINE_LOAD, sign = Measured.Sign.POSITIVE)
                @Nullable Double stiffness,
        @Nullable Bracket bracket) {

    /** What an anchor does for the mullion. */
    public enum Role {
        /** Fixed: carries the weight, and the wind as well. */
        DEAD_LOAD,
        /** Slotted: carries wind only and lets the mullion move up and down. */
        WIND_LOAD
    }

    public Anchor {
        if (role == Role.WIND_LOAD && deadLoadReaction != null && deadLoadReaction > 0) {
            throw FaultsException.outOfRange(
                    "/deadLoadReaction", "must be zero or absent: a WIND_LOAD anchor is slotted");
        }
    }

    boolean isFixed() {
        return role == Role.DEAD_LOAD;
    }

    /** The same anchor doing something else for the mullion, with the weight that it then has. */
    Anchor withRole(Role other, @Nullable Double weight) {
        return with(
                other,
                slotUp,
                slotDown,
                windReactionPositive,
                windReactionNegative,
                weight,
                allowableWindForce,
                allowableDeadLoadForce,
                bracket);
    }

    /** The same anchor with another slot. */
    Anchor withSlot(@Nullable Double up, @Nullable Double down) {
        return with(
                role,
                up,
                down,
                windReactionPositive,
                windReactionNegative,
                deadLoadReaction,
                allowableWindForce,
                allowableDeadLoadForce,
                bracket);
    }

    /** The same anchor, strong enough for other forces. */
    Anchor withAllowables(@Nullable Double wind, @Nullable Double dead) {
        return with(
                role,
                slotUp,
                slotDown,
                windReactionPositive,
                windReactionNegative,
                deadLoadReaction,
                wind,
                dead,
                bracket);
    }

    /** The same anchor on another bracket. */
    Anchor withBracket(Bracket other) {
        return with(
                role,
                slotUp,
                slotDown,
                windReactionPositive,
                windReactionNegative,
                deadLoadReaction,
                allowableWindForce,
                allowableDeadLoadForce,
                other);
    }

    /**
     * The same anchor under other forces.
     *
     * @param positive under positive wind pressure, N
     * @param negative under negative wind pressure, N
     * @param weight N
     */
    public Anchor withReactions(
            @Nullable Double positive, @Nullable Double negative, @Nullable Double weight) {
        return with(
                role,
                slotUp,
                slotDown,
                positive,
                negative,
                weight,
                allowableWindForce,
                allowableDeadLoadForce,
                bracket);
    }

    private Anchor with(
            Role newRole,
            @Nullable Double up,
            @Nullable Double down,
            @Nullable Double positive,
            @Nullable Double negative,
            @Nullable Double weight,
            @Nullable Double allowableWind,
            @Nullable Double allowableDead,
            @Nullable Bracket newBracket) {
        return new Anchor(
                id,
                elevation,
                newRole,
                slabLiveLoadDeflection,
                up,
                down,
                positive,
                negative,
                weight,
                allowableWind,
                allowableDead,
                slabCreepDeflection,
                boltDiameter,
                stiffness,
                newBracket);
    }
}
