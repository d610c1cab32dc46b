package org.bayledger.seals;

import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A joint as it was found on site.
 *
 * @param type kind of joint
 * @param condition what was found
 * @param location where it is, in words
 * @param column column of the lite next to it, from 1 at the left as seen from outside
 * @param row row of the lite next to it, from 1 at the sill
 * @param gap width of the opening, m, at most 25 mm; nothing is computed where absent
 * @param length length that is open, m; zero once it has been repaired; where absent the bead of
 *     one joint of its kind, and for a kind that runs along the frame nothing is computed
 */
public record ObservedJoint(
        JointType type,
        ObservedCondition condition,
        @Size(max = 200) @Nullable String location,
        @Min(1) @Nullable Integer column,
        @Min(1) @Nullable Integer row,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 0.025) @Nullable Double gap,
        @Measured(value = Dimension.LENGTH, sign = Sign.NOT_NEGATIVE, max = 100)
                @Nullable Double length) {

    /** Whether it has been repaired over its whole length. */
    boolean repaired() {
        return length != null && length == 0;
    }

    ObservedJoint withLength(double other) {
        return new ObservedJoint(type, condition, location, column, row, gap, other);
    }
}
