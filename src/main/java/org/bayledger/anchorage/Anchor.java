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
                @Nullable Double allowableDeadLoadForce) {

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
}
